package piecewright.plan;

import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * How a piece is set up where its house leaves a choice; what is empty is for the plan to choose.
 *
 * @param places where it is steeped and grown, and by which kit heated
 * @param bedCm depth of the fresh bed, cm, [1, 30]; as usual 5 cm; deeper where the trays are too small for it
 * @param fillC temperature of the steep water as poured, °C, [2, 24]; as usual as it comes in that house
 */
public record Arrangement(Places places, OptionalDouble bedCm, OptionalDouble fillC) {
    /** Judgement: two corns deep; thinner is no bed, cm. */
    public static final double SHALLOWEST_CM = 1;
    /** Judgement: nobody spreads deeper by hand. */
    public static final double DEEPEST_CM = 30;
    /** Judgement: no steep is colder. */
    public static final double COLDEST_C = 2;
    /** Judgement: practice, no steeping in water above 24 °C. */
    public static final double WARMEST_C = 24;

    private static final Arrangement USUAL =
            new Arrangement(Places.any(), OptionalDouble.empty(), OptionalDouble.empty());

    public Arrangement {
        Objects.requireNonNull(places);
        check("bedCm", bedCm, SHALLOWEST_CM, DEEPEST_CM);
        check("fillC", fillC, COLDEST_C, WARMEST_C);
    }

    /**
     * Places and kit by name. A name that the house does not know any more counts for nothing.
     *
     * @param steepsIn place whose vessels it is steeped in
     * @param growsIn place whose trays it grows on
     * @param dryer heater that dries it
     * @param curer heater that cures it
     * @param box insulated box it heats itself in
     * @param stewer oven that stews it
     */
    public record Places(
            Optional<String> steepsIn,
            Optional<String> growsIn,
            Optional<String> dryer,
            Optional<String> curer,
            Optional<String> box,
            Optional<String> stewer) {
        private static final Places ANY = new Places(
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty());

        public Places {
            Objects.requireNonNull(steepsIn);
            Objects.requireNonNull(growsIn);
            Objects.requireNonNull(dryer);
            Objects.requireNonNull(curer);
            Objects.requireNonNull(box);
            Objects.requireNonNull(stewer);
        }

        public static Places any() {
            return ANY;
        }

        Places steepingIn(String place) {
            return new Places(Optional.of(place), growsIn, dryer, curer, box, stewer);
        }

        Places growingIn(String place) {
            return new Places(steepsIn, Optional.of(place), dryer, curer, box, stewer);
        }

        Places heatedBy(String dries, String cures) {
            return new Places(steepsIn, growsIn, Optional.of(dries), Optional.of(cures), box, stewer);
        }

        Places packedIn(String name) {
            return new Places(steepsIn, growsIn, dryer, curer, Optional.of(name), stewer);
        }

        Places stewedIn(String oven) {
            return new Places(steepsIn, growsIn, dryer, curer, box, Optional.of(oven));
        }

        /** The kit of this name among some; all where none is asked for or none has it. */
        static <T> List<T> asked(List<T> kit, java.util.function.Function<T, String> name, Optional<String> asked) {
            List<T> found = kit.stream()
                    .filter(one -> name.apply(one).equals(asked.orElse("")))
                    .toList();
            return found.isEmpty() ? kit : found;
        }
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

    Arrangement at(Places changed) {
        return new Arrangement(changed, bedCm, fillC);
    }

    public Arrangement steepingIn(String place) {
        return at(places.steepingIn(place));
    }

    public Arrangement growingIn(String place) {
        return at(places.growingIn(place));
    }

    /** The same with the places and kit of these acts: what a plan has chosen stays so when it goes on. */
    public Arrangement asIn(List<Act> acts) {
        return at(new Places(
                of(acts, ActKind.SOAK, places.steepsIn()),
                of(acts, ActKind.FLOOR, places.growsIn()),
                of(acts, ActKind.LOAD, places.dryer()),
                of(acts, ActKind.CURE, places.curer()),
                of(acts, ActKind.PACK, places.box()),
                of(acts, ActKind.STEW, places.stewer())));
    }

    private static Optional<String> of(List<Act> acts, ActKind kind, Optional<String> otherwise) {
        return acts.stream()
                .filter(act -> act.kind() == kind)
                .findFirst()
                .flatMap(act -> act.setting().place())
                .or(() -> otherwise);
    }

    public Arrangement withBedCm(double changedCm) {
        return new Arrangement(places, OptionalDouble.of(changedCm), fillC);
    }

    public Arrangement withFillC(double changedC) {
        return new Arrangement(places, bedCm, OptionalDouble.of(changedC));
    }
}
