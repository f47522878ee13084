package piecewright.cli;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import piecewright.app.GrainPurchase;
import piecewright.grain.GrainKind;
import piecewright.plan.PlanRequest.Amount;
import piecewright.store.StoreException;
import piecewright.store.StyleLibrary;
import piecewright.text.DisplayUnits;

/** Works out the grain for malt, or the malt from grain, and what to buy. */
@Command(
        name = "buy",
        mixinStandardHelpOptions = true,
        sortOptions = false,
        description = "Works out the grain that malt takes, loss by loss, and what to carry home.",
        footer = {"", "Ends with 0 worked out, 2 something given is wrong."})
final class BuyCommand implements Callable<Integer> {
    private final Surroundings surroundings;

    @Option(
            names = "--malt",
            paramLabel = "STYLE=WEIGHT",
            description = "Malt wanted, such as \"pale=5 kg\"; once for each batch.")
    private List<String> malts = new ArrayList<>();

    @Option(
            names = "--grain",
            paramLabel = "STYLE=WEIGHT",
            description = "Grain there is, such as \"pale=10 lb\": says what malt it gives.")
    private List<String> grains = new ArrayList<>();

    @Option(names = "--lot", paramLabel = "FILE", description = "The lot, if there is one; else usual grain.")
    private @Nullable Path lot;

    @Option(
            names = "--house",
            paramLabel = "FILE",
            description = "The household: the figures are then those of a plan there. Left out: a usual course.")
    private @Nullable Path house;

    @Option(names = "--start", paramLabel = "DATE", description = "With a house: first steep on this day, or today.")
    private @Nullable String start;

    @Option(
            names = "--owned",
            paramLabel = "GRAIN=WEIGHT",
            description = "Grain at home already, such as \"barley=3 kg\".")
    private List<String> owned = new ArrayList<>();

    @Mixin
    private final WorkspaceOptions workspaceOptions = new WorkspaceOptions();

    @Mixin
    private final SackOption sackOption = new SackOption();

    @Mixin
    private final StyleOption styleOption = new StyleOption();

    @Mixin
    private final UnitOptions unitOptions = new UnitOptions();

    @Option(names = "--json", description = "Print it as JSON instead of lines.")
    private boolean json;

    BuyCommand(Surroundings surroundings) {
        this.surroundings = surroundings;
    }

    @Override
    public Integer call() throws OptionException, StoreException {
        DisplayUnits units = unitOptions.displayUnits(surroundings.locale());
        StyleLibrary library = styleOption.library();
        List<GrainPurchase.Wish> wishes = new ArrayList<>();
        for (String typed : malts) {
            NamedValue pair = NamedValue.of("--malt", typed);
            Amount amount = new Amount.FinishedMalt(pair.massKg("--malt", units));
            wishes.add(new GrainPurchase.Wish(library.style(pair.name()), amount));
        }
        for (String typed : grains) {
            NamedValue pair = NamedValue.of("--grain", typed);
            Amount amount = new Amount.RawGrain(pair.massKg("--grain", units));
            wishes.add(new GrainPurchase.Wish(library.style(pair.name()), amount));
        }
        if (wishes.isEmpty()) throw new OptionException("--malt", "is missing; give one such as \"pale=5 kg\"");
        SackOption.Offers offers = sackOption.offers(units);
        GrainPurchase.Shop shop = new GrainPurchase.Shop(ownedKg(units), offers.sacks(), offers.currency());
        Optional<Path> lotFile = lot == null ? Optional.empty() : Optional.of(workspaceOptions.lot(lot, surroundings));
        GrainPurchase purchase = GrainPurchase.of(wishes, lotFile, there(), shop);
        surroundings.streams().out().print(json ? purchase.json(units) : purchase.page(units));
        return Ending.DONE;
    }

    private Optional<GrainPurchase.There> there() throws OptionException {
        LocalDate today = LocalDate.now(surroundings.clock());
        LocalDate day = start == null ? today : WishOptions.date("--start", start);
        if (house != null) return Optional.of(new GrainPurchase.There(house, day, surroundings.planner()));
        if (start != null) throw new OptionException("--start", "needs --house beside it");
        return Optional.empty();
    }

    private Map<GrainKind, Double> ownedKg(DisplayUnits units) throws OptionException {
        Map<GrainKind, Double> all = new EnumMap<>(GrainKind.class);
        for (String typed : owned) {
            NamedValue pair = NamedValue.of("--owned", typed);
            all.merge(pair.grain("--owned"), pair.massKg("--owned", units), Double::sum);
        }
        return all;
    }
}
