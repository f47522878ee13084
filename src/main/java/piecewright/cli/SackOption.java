package piecewright.cli;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import picocli.CommandLine.Option;
import piecewright.grain.GrainKind;
import piecewright.purchase.Currency;
import piecewright.purchase.Sack;
import piecewright.text.DisplayUnits;
import piecewright.text.PriceReader;
import piecewright.text.Quoted;
import piecewright.text.UnreadableException;

/** The sizes grain is sold in, and their prices, all in one money. */
final class SackOption {
    private static final int MOST_SIZES = 3;

    @Option(
            names = "--sack",
            paramLabel = "GRAIN=WEIGHT[@PRICE]",
            description = "A size it is sold in, such as \"barley=25 kg@38.50 EUR\"; up to three for each grain.")
    private List<String> sacks = new ArrayList<>();

    /** What the shop has, and in which money it says so. */
    record Offers(Map<GrainKind, List<Sack>> sacks, Currency currency) {}

    Offers offers(DisplayUnits units) throws OptionException {
        Map<GrainKind, List<Sack>> all = new EnumMap<>(GrainKind.class);
        List<Currency> currencies = new ArrayList<>();
        for (String typed : sacks) {
            NamedValue pair = NamedValue.of("--sack", typed);
            GrainKind grain = pair.grain("--sack");
            List<Sack> sizes = all.computeIfAbsent(grain, kind -> new ArrayList<>());
            sizes.add(sack(pair.value(), units, currencies));
            long ways = sizes.stream()
                    .map(size -> size.price().isPresent())
                    .distinct()
                    .count();
            if (ways > 1) throw new OptionException("--sack", "give a price with every size of a grain or with none");
            if (sizes.size() > MOST_SIZES) throw new OptionException("--sack", "give three sizes of a grain at most");
        }
        List<Currency> different = currencies.stream().distinct().toList();
        if (different.size() > 1) {
            throw new OptionException(
                    "--sack",
                    "prices stand in different money or are written in different ways; write all of them alike");
        }
        return new Offers(all, different.isEmpty() ? Currency.unsaid() : different.get(0));
    }

    private static Sack sack(String typed, DisplayUnits units, List<Currency> currencies) throws OptionException {
        int at = typed.indexOf('@');
        try {
            double massKg = NamedValue.massKg("--sack", at < 0 ? typed : typed.substring(0, at), units);
            if (at < 0) return new Sack(massKg, Optional.empty());
            PriceReader.Price price = new PriceReader(units.locale()).read(typed.substring(at + 1));
            currencies.add(price.currency());
            return new Sack(massKg, Optional.of(plain(price.amount())));
        } catch (UnreadableException unreadable) {
            throw new OptionException("--sack", String.valueOf(unreadable.getMessage()));
        } catch (IllegalArgumentException unfit) {
            throw new OptionException(
                    "--sack",
                    "\"" + Quoted.shortly(typed) + "\" is no size of 0.5 to 1000 kg with a price; write it like"
                            + " \"25 kg@38.50 EUR\"");
        }
    }

    private static BigDecimal plain(BigDecimal amount) {
        return amount.signum() == 0 ? BigDecimal.ZERO : amount;
    }
}
