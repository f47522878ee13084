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
    private static final String STEEPS_IN = "steepsIn";
    private static final String GROWS_IN = "growsIn";
    private static final String DRYER = "dryer";
    private static final String CURER = "curer";
    private static final String BOX = "box";
    private static final String STEWER = "stewer";
    private static final String BED_CM = "bedCm";
    private static final String FILL_C = "fillC";

    private ArrangementTexts() {}

    static void note(Arrangement arrangement, Map<String, String> wish) {
        Arrangement.Places places = arrangement.places();
        places.steepsIn().ifPresent(place -> wish.put(STEEPS_IN, place));
        places.growsIn().ifPresent(place -> wish.put(GROWS_IN, place));
        places.dryer().ifPresent(heater -> wish.put(DRYER, heater));
        places.curer().ifPresent(heater -> wish.put(CURER, heater));
        places.box().ifPresent(box -> wish.put(BOX, box));
        places.stewer().ifPresent(oven -> wish.put(STEWER, oven));
        arrangement.bedCm().ifPresent(bedCm -> wish.put(BED_CM, Double.toString(bedCm)));
        arrangement.fillC().ifPresent(fillC -> wish.put(FILL_C, Double.toString(fillC)));
    }

    static Arrangement read(Path file, Map<String, String> wish) throws StoreException {
        try {
            Arrangement.Places places = new Arrangement.Places(
                    Optional.ofNullable(wish.get(STEEPS_IN)),
                    Optional.ofNullable(wish.get(GROWS_IN)),
                    Optional.ofNullable(wish.get(DRYER)),
                    Optional.ofNullable(wish.get(CURER)),
                    Optional.ofNullable(wish.get(BOX)),
                    Optional.ofNullable(wish.get(STEWER)));
            return new Arrangement(places, number(wish.get(BED_CM)), number(wish.get(FILL_C)));
        } catch (IllegalArgumentException wrong) {
            throw new StoreException(
                    file, "its wish names no bed depth or water temperature that can be; take it from a copy", wrong);
        }
    }

    private static OptionalDouble number(@Nullable String text) {
        return text == null ? OptionalDouble.empty() : OptionalDouble.of(Double.parseDouble(text));
    }
}
