package piecewright.app;

import java.nio.file.Path;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.jspecify.annotations.Nullable;
import piecewright.plan.Arrangement;
import piecewright.store.StoreException;

/** How a piece is arranged, among the texts a batch is kept with; what is as usual is not written. */
final class ArrangementTexts {
    private static final String GROWS_IN = "growsIn";
    private static final String BED_CM = "bedCm";
    private static final String FILL_C = "fillC";

    private ArrangementTexts() {}

    static void note(Arrangement arrangement, Map<String, String> wish) {
        arrangement.growsIn().ifPresent(place -> wish.put(GROWS_IN, place));
        arrangement.bedCm().ifPresent(bedCm -> wish.put(BED_CM, Double.toString(bedCm)));
        arrangement.fillC().ifPresent(fillC -> wish.put(FILL_C, Double.toString(fillC)));
    }

    static Arrangement read(Path file, Map<String, String> wish) throws StoreException {
        try {
            return new Arrangement(
                    Optional.ofNullable(wish.get(GROWS_IN)), number(wish.get(BED_CM)), number(wish.get(FILL_C)));
        } catch (IllegalArgumentException wrong) {
            throw new StoreException(
                    file, "its wish names no bed depth or water temperature that can be; take it from a copy", wrong);
        }
    }

    private static OptionalDouble number(@Nullable String text) {
        return text == null ? OptionalDouble.empty() : OptionalDouble.of(Double.parseDouble(text));
    }
}
