package piecewright.store;

import java.util.Arrays;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import piecewright.grain.LotObservations;
import piecewright.grain.LotObservations.Sign;
import piecewright.grain.LotObservations.Viability;
import piecewright.text.Quoted;

/** Reads what was seen of a lot; every key may be left out. */
final class ObservationsReader {
    private ObservationsReader() {}

    static LotObservations read(JsonBlock root) throws StoreException {
        Optional<Viability> viability = Optional.empty();
        if (root.has("alive")) {
            JsonBlock block = root.block("alive");
            block.onlyKeys("corns", "alive");
            int corns = block.whole("corns", 1, 10_000);
            int alive = block.whole("alive", 0, 10_000);
            viability = Optional.of(block.make(() -> new Viability(corns, alive)));
        }
        OptionalDouble brokenPercent = root.optionalNumber("brokenPercent", 0, 100);
        OptionalDouble broken = brokenPercent.isPresent()
                ? OptionalDouble.of(brokenPercent.getAsDouble() / 100)
                : OptionalDouble.empty();
        OptionalDouble ergot = root.optionalNumber("ergotGPerKg", 0, 1000);
        return new LotObservations(viability, broken, ergot, signs(root));
    }

    private static Set<Sign> signs(JsonBlock root) throws StoreException {
        Set<Sign> signs = EnumSet.noneOf(Sign.class);
        if (!root.has("signs")) return signs;
        List<String> words = Arrays.stream(Sign.values()).map(Sign::key).toList();
        for (String word : root.texts("signs")) {
            if (!words.contains(word)) {
                throw root.refused(
                        "signs", "\"" + Quoted.shortly(word) + "\" is not known; " + Nearest.hint(word, words));
            }
            signs.add(Sign.values()[words.indexOf(word)]);
        }
        return signs;
    }
}
