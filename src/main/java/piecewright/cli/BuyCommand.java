package piecewright.cli;

import java.math.BigDecimal;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
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
import piecewright.purchase.Sack;
import piecewright.store.StoreException;
import piecewright.store.StyleLibrary;
import piecewright.text.DisplayUnits;
import piecewright.text.QuantityParser;
import piecewright.text.Quoted;
import piecewright.text.UnreadableException;

/** Works out the grain for malt, or the malt from grain, and what to buy. */
@Command(
        name = "buy",
        mixinStandardHelpOptions = true,
        sortOptions = false,
        description = "Works out the grain that malt takes, loss by loss, and what to carry home.",
        footer = {"", "Ends with 0 worked out, 2 something given is wrong."})
final class BuyCommand implements Callable<Integer> {
    private static final double MOST_KG = 1000;
    private static final int MOST_SIZES = 3;

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
            names = "--owned",
            paramLabel = "GRAIN=WEIGHT",
            description = "Grain at home already, such as \"barley=3 kg\".")
    private List<String> owned = new ArrayList<>();

    @Option(
            names = "--sack",
            paramLabel = "GRAIN=WEIGHT[@PRICE]",
            description = "A size it is sold in, such as \"barley=25 kg@38.50\"; up to three for each grain.")
    private List<String> sacks = new ArrayList<>();

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
            Pair pair = Pair.of("--malt", typed);
            Amount amount = new Amount.FinishedMalt(massKg("--malt", pair.value(), units));
            wishes.add(new GrainPurchase.Wish(library.style(pair.name()), amount));
        }
        for (String typed : grains) {
            Pair pair = Pair.of("--grain", typed);
            Amount amount = new Amount.RawGrain(massKg("--grain", pair.value(), units));
            wishes.add(new GrainPurchase.Wish(library.style(pair.name()), amount));
        }
        if (wishes.isEmpty()) throw new OptionException("--malt", "is missing; give one such as \"pale=5 kg\"");
        GrainPurchase.Shop shop = new GrainPurchase.Shop(ownedKg(units), sacks(units));
        GrainPurchase purchase = GrainPurchase.of(wishes, Optional.ofNullable(lot), shop);
        surroundings.streams().out().print(json ? purchase.json() : purchase.page(units));
        return Ending.DONE;
    }

    private Map<GrainKind, Double> ownedKg(DisplayUnits units) throws OptionException {
        Map<GrainKind, Double> all = new EnumMap<>(GrainKind.class);
        for (String typed : owned) {
            Pair pair = Pair.of("--owned", typed);
            all.merge(grain("--owned", pair.name()), massKg("--owned", pair.value(), units), Double::sum);
        }
        return all;
    }

    private Map<GrainKind, List<Sack>> sacks(DisplayUnits units) throws OptionException {
        Map<GrainKind, List<Sack>> all = new EnumMap<>(GrainKind.class);
        for (String typed : sacks) {
            Pair pair = Pair.of("--sack", typed);
            List<Sack> sizes = all.computeIfAbsent(grain("--sack", pair.name()), kind -> new ArrayList<>());
            sizes.add(sack(pair.value(), units));
            boolean mixed = sizes.stream()
                            .map(size -> size.price().isPresent())
                            .distinct()
                            .count()
                    > 1;
            if (mixed) throw new OptionException("--sack", "give a price with every size of a grain or with none");
            if (sizes.size() > MOST_SIZES) throw new OptionException("--sack", "give three sizes of a grain at most");
        }
        return all;
    }

    private static Sack sack(String typed, DisplayUnits units) throws OptionException {
        int at = typed.indexOf('@');
        try {
            Optional<BigDecimal> price = at < 0
                    ? Optional.empty()
                    : Optional.of(new BigDecimal(typed.substring(at + 1).strip().replace(',', '.')));
            return new Sack(massKg("--sack", at < 0 ? typed : typed.substring(0, at), units), price);
        } catch (IllegalArgumentException unfit) {
            throw new OptionException(
                    "--sack",
                    "\"" + Quoted.shortly(typed) + "\" is no size of 0.5 to 1000 kg with a price; write it like"
                            + " \"25 kg@38.50\"");
        }
    }

    private static GrainKind grain(String option, String word) throws OptionException {
        for (GrainKind kind : GrainKind.values()) if (kind.key().equals(word)) return kind;
        throw new OptionException(option, "\"" + Quoted.shortly(word) + "\" is no grain; write one such as barley");
    }

    private static double massKg(String option, String typed, DisplayUnits units) throws OptionException {
        try {
            double massKg = QuantityParser.forPerson(units).massKg(typed);
            if (massKg > 0 && massKg <= MOST_KG) return massKg;
            throw new OptionException(option, "must be more than nothing and at most 1000 kg");
        } catch (UnreadableException unreadable) {
            throw new OptionException(option, String.valueOf(unreadable.getMessage()));
        }
    }

    /** A name and what stands behind its equals sign. */
    private record Pair(String name, String value) {
        static Pair of(String option, String typed) throws OptionException {
            int at = typed.indexOf('=');
            if (at < 1) {
                throw new OptionException(
                        option, "\"" + Quoted.shortly(typed) + "\" lacks a name and \"=\"; see buy --help");
            }
            return new Pair(typed.substring(0, at).strip().toLowerCase(Locale.ROOT), typed.substring(at + 1));
        }
    }
}
