package piecewright.app;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import piecewright.grain.GrainKind;
import piecewright.grain.GrainLot;
import piecewright.grain.Treatment;
import piecewright.plan.ModelParameters;
import piecewright.plan.PlanRequest.Amount;
import piecewright.purchase.GrainBuyer;
import piecewright.purchase.GrainNeed;
import piecewright.purchase.Sack;
import piecewright.purchase.ShoppingList;
import piecewright.store.LotFile;
import piecewright.store.PurchaseJson;
import piecewright.store.StoreException;
import piecewright.style.MaltStyle;
import piecewright.text.DisplayUnits;
import piecewright.text.PurchasePage;

/** Works out what several batches take and what to carry home for them. */
public record GrainPurchase(ShoppingList list) {
    /** One batch, so much malt of a style or from so much grain. */
    public record Wish(MaltStyle style, Amount amount) {
        public Wish {
            Objects.requireNonNull(style);
            Objects.requireNonNull(amount);
        }
    }

    /** What is at home and in the shop, by grain. */
    public record Shop(Map<GrainKind, Double> ownedKg, Map<GrainKind, List<Sack>> sacks) {
        public Shop {
            ownedKg = Map.copyOf(ownedKg);
            sacks = Map.copyOf(sacks);
        }
    }

    /**
     * @param lotFile the lot used for every style its grain suits; others use the grain's usual figures
     */
    public static GrainPurchase of(List<Wish> wishes, Optional<Path> lotFile, Shop shop) throws StoreException {
        Optional<GrainLot> lot = Optional.empty();
        if (lotFile.isPresent()) {
            GrainLot read = LotFile.read(lotFile.get());
            if (read.treatment() == Treatment.TREATED) {
                throw new StoreException(lotFile.get(), "holds treated seed, which is never malted; buy other grain");
            }
            lot = Optional.of(read);
        }
        GrainBuyer buyer = new GrainBuyer(ModelParameters.defaults());
        List<GrainNeed> needs = new ArrayList<>();
        for (Wish wish : wishes) needs.add(need(buyer, wish, lot));
        return new GrainPurchase(ShoppingList.of(needs, shop.ownedKg(), shop.sacks()));
    }

    private static GrainNeed need(GrainBuyer buyer, Wish wish, Optional<GrainLot> lot) {
        List<GrainKind> grains = wish.style().grains();
        GrainLot used =
                lot.filter(read -> grains.contains(read.kind())).orElseGet(() -> GrainBuyer.usual(grains.get(0)));
        return wish.amount() instanceof Amount.RawGrain raw
                ? buyer.fromGrain(wish.style(), used, raw.grainKg())
                : buyer.forMalt(wish.style(), used, ((Amount.FinishedMalt) wish.amount()).maltKg());
    }

    public String page(DisplayUnits units) {
        return new PurchasePage(units).page(list);
    }

    public String json() {
        return PurchaseJson.write(list);
    }
}
