package piecewright.plan;

import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * How a piece is set up where its house leaves a choice; what is empty is as usual.
 *
 * @param growsIn place whose trays it grows on; as usual, the one nearest to 15 °C that holds it
 * @param bedCm depth of the fresh bed, cm, [1, 30]; as usual 5 cm; deeper where the trays are too small for it
 * @param fillC temperature of the steep water as poured, °C, [2, 24]; as usual as it comes in that house
 */
public record Arrangement(Optional<String> growsIn, OptionalDouble bedCm, OptionalDouble fillC) {
    /** Judgement: two corns deep; thinner is no bed, cm. */
    public static final double SHALLOWEST_CM = 1;
    /** Judgement: nobody spreads deeper by hand. */
    public static final double DEEPEST_CM = 30;
    /** Judgement: no steep is colder. */
    public static final double COLDEST_C = 2;
    /** Judgement: practice, no steeping in water above 24 °C. */
    public static final double WARMEST_C = 24;

    private static final Arrangement USUAL =
            new Arrangement(Optional.empty(), OptionalDouble.empty(), OptionalDouble.empty());

    public Arrangement {
        Objects.requireNonNull(growsIn);
        check("bedCm", bedCm, SHALLOWEST_CM, DEEPEST_CM);
        check("fillC", fillC, COLDEST_C, WARMEST_C);
    }

    private static void check(String name, OptionalDouble value, double low, double high) {
        if (value.isPresent() && !(value.getAsDouble() >= low && value.getAsDouble() <= high)) {
            throw new IllegalArgumentException(name + " must be in [" + low + ", " + high + "]: " + value);
        }
    }

    /** Everything as usual. */
    public static Arrangement usual() {
        return USUAL;
    }

    public boolean isUsual() {
        return equals(USUAL);
    }

    public Arrangement growingIn(String place) {
        return new Arrangement(Optional.of(place), bedCm, fillC);
    }

    public Arrangement withBedCm(double changedCm) {
        return new Arrangement(growsIn, OptionalDouble.of(changedCm), fillC);
    }

    public Arrangement withFillC(double changedC) {
        return new Arrangement(growsIn, bedCm, OptionalDouble.of(changedC));
    }
}
