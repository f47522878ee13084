package piecewright.app;

import java.nio.file.Path;
import java.time.LocalDate;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.function.Function;
import piecewright.ensemble.Figure;
import piecewright.grain.GrainKind;
import piecewright.grain.GrainLot;
import piecewright.grain.Treatment;
import piecewright.house.House;
import piecewright.plan.ModelParameters;
import piecewright.plan.Obstacle;
import piecewright.plan.Plan;
import piecewright.plan.PlanRequest;
import piecewright.plan.PlanRequest.Amount;
import piecewright.plan.PlanRequest.When;
import piecewright.plan.PlanResult;
import piecewright.purchase.Currency;
import piecewright.purchase.GrainBuyer;
import piecewright.purchase.GrainNeed;
import piecewright.purchase.Sack;
import piecewright.purchase.ShoppingList;
import piecewright.store.HouseFile;
import piecewright.store.LotFile;
import piecewright.store.PurchaseJson;
import piecewright.store.StoreException;
import piecewright.style.MaltStyle;
import piecewright.text.DisplayUnits;
import piecewright.text.PurchasePage;
import piecewright.text.Wording;

/**
 * Works out what several batches take and what to carry home for them.
 *
 * @param unplanned batches that the house cannot make; their figures are those of a usual course
 */
public record GrainPurchase(ShoppingList list, Currency currency, List<Unplanned> unplanned, ZoneId zone) {
    public GrainPurchase {
        unplanned = List.copyOf(unplanned);
    }

    /** One batch, so much malt of a style or from so much grain. */
    public record Wish(MaltStyle style, Amount amount) {
        public Wish {
            Objects.requireNonNull(style);
            Objects.requireNonNull(amount);
        }
    }

    /** What is at home and in the shop, by grain, and the money of its prices. */
    public record Shop(Map<GrainKind, Double> ownedKg, Map<GrainKind, List<Sack>> sacks, Currency currency) {
        public Shop {
            ownedKg = Map.copyOf(ownedKg);
            sacks = Map.copyOf(sacks);
            Objects.requireNonNull(currency);
        }
    }

    /** Where and from which day the batches are planned. */
    public record There(Path houseFile, LocalDate start, Function<PlanRequest, PlanResult> planner) {}

    /** A batch the house cannot make, and why. */
    public record Unplanned(String style, List<Obstacle> obstacles) {
        public Unplanned {
            obstacles = List.copyOf(obstacles);
        }
    }

    /**
     * @param lotFile the lot used for every style its grain suits; others use the grain's usual figures
     * @param there the house whose plans give the figures; empty for a usual course
     */
    public static GrainPurchase of(List<Wish> wishes, Optional<Path> lotFile, Optional<There> there, Shop shop)
            throws StoreException {
        Optional<GrainLot> lot = lotFile.isPresent() ? Optional.of(sound(lotFile.get())) : Optional.empty();
        Optional<House> house =
                there.isPresent() ? Optional.of(HouseFile.read(there.get().houseFile())) : Optional.empty();
        GrainBuyer buyer = new GrainBuyer(ModelParameters.defaults());
        List<GrainNeed> toBuy = new ArrayList<>();
        List<GrainNeed> atHome = new ArrayList<>();
        List<Unplanned> unplanned = new ArrayList<>();
        for (Wish wish : wishes) {
            GrainLot used = lot.filter(read -> wish.style().grains().contains(read.kind()))
                    .orElseGet(() -> GrainBuyer.usual(wish.style().grains().get(0)));
            Optional<GrainNeed> planned = house.flatMap(where -> planned(wish, used, where, there.get(), unplanned));
            List<GrainNeed> needs = wish.amount() instanceof Amount.RawGrain ? atHome : toBuy;
            needs.add(planned.orElseGet(() -> usual(buyer, wish, used)));
        }
        ShoppingList list = ShoppingList.of(toBuy, shop.ownedKg(), shop.sacks()).with(atHome);
        return new GrainPurchase(
                list, shop.currency(), unplanned, house.map(House::zone).orElse(ZoneOffset.UTC));
    }

    private static GrainLot sound(Path lotFile) throws StoreException {
        GrainLot read = LotFile.read(lotFile);
        if (read.safeTreatment() != Treatment.TREATED) return read;
        throw new StoreException(lotFile, "holds treated seed, which is never malted; buy other grain");
    }

    private static Optional<GrainNeed> planned(
            Wish wish, GrainLot lot, House house, There there, List<Unplanned> unplanned) {
        When when = new When.StartOn(there.start());
        PlanRequest request = new PlanRequest(wish.style(), lot, house, wish.amount(), when);
        PlanResult result = there.planner().apply(request);
        return result.match(planned -> Optional.of(refined(request, planned.plan())), not -> {
            unplanned.add(new Unplanned(wish.style().title(), not.obstacles()));
            return Optional.empty();
        });
    }

    private static GrainNeed refined(PlanRequest request, Plan plan) {
        GrainNeed need = GrainNeed.of(plan, request.lot());
        return new HowSure(ModelParameters.defaults())
                .of(request, plan, Figure.MALT_KG)
                .map(malt -> need.likely(malt.p10(), malt.p90()))
                .orElse(need);
    }

    private static GrainNeed usual(GrainBuyer buyer, Wish wish, GrainLot lot) {
        return wish.amount() instanceof Amount.RawGrain raw
                ? buyer.fromGrain(wish.style(), lot, raw.grainKg())
                : buyer.forMalt(wish.style(), lot, ((Amount.FinishedMalt) wish.amount()).maltKg());
    }

    public String page(DisplayUnits units) {
        PurchasePage page = new PurchasePage(units, currency);
        StringBuilder text = new StringBuilder();
        for (Unplanned batch : unplanned) text.append(page.unplanned(batch.style(), sentences(batch, units)));
        return text.append(page.page(list)).toString();
    }

    public String json(DisplayUnits units) {
        PurchaseJson json = new PurchaseJson(currency);
        for (Unplanned batch : unplanned) json.addUnplanned(batch.style(), sentences(batch, units));
        return json.write(list);
    }

    private List<String> sentences(Unplanned batch, DisplayUnits units) {
        Wording wording = new Wording(units, zone);
        return batch.obstacles().stream().map(wording::obstacle).toList();
    }
}
