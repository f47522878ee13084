package piecewright.grain;

import java.time.LocalDate;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * A sack or heap of one grain, and what is known of it.
 *
 * @param dishes germination test dishes, possibly none
 * @param thousandCornG weight of 1000 corns as they lie, g
 * @param floatersFraction share of the weight that floats off or is sieved out, [0, 0.5]; empty if not known
 * @param treatment as its owner states it; go by {@link #safeTreatment}
 * @param seen what eye and nose found, and the test for life
 * @param learned what earlier batches of this lot taught, or the grain's defaults
 */
public record GrainLot(
        String name,
        GrainKind kind,
        LotMoisture moisture,
        List<GerminationCount> dishes,
        LotSize size,
        Treatment treatment,
        LotTraits learned,
        LotObservations seen) {
    public GrainLot {
        Objects.requireNonNull(name);
        Objects.requireNonNull(kind);
        Objects.requireNonNull(moisture);
        dishes = List.copyOf(dishes);
        Objects.requireNonNull(size);
        Objects.requireNonNull(treatment);
        Objects.requireNonNull(learned);
        Objects.requireNonNull(seen);
    }

    /** A lot that nobody looked at closely. */
    public GrainLot(
            String name,
            GrainKind kind,
            LotMoisture moisture,
            List<GerminationCount> dishes,
            LotSize size,
            Treatment treatment,
            LotTraits learned) {
        this(name, kind, moisture, dishes, size, treatment, learned, LotObservations.none());
    }

    /** The same lot with other traits. */
    public GrainLot withLearned(LotTraits changed) {
        return new GrainLot(name, kind, moisture, dishes, size, treatment, changed, seen);
    }

    /** The same lot, looked at. */
    public GrainLot withSeen(LotObservations changed) {
        return new GrainLot(name, kind, moisture, dishes, size, treatment, learned, changed);
    }

    /** How the seed is to be taken, whatever was stated: suspect seed counts as treated. */
    public Treatment safeTreatment() {
        return seen.safely(treatment);
    }

    /** Germinated share of all corns in dishes of about 4 mL; empty when there is no such dish. */
    public OptionalDouble germinativeEnergyFraction() {
        return shareIn(0, 6);
    }

    /** Points of germination lost in about 8 mL of water, as a fraction; empty unless both were tested. */
    public OptionalDouble waterSensitivityFraction() {
        OptionalDouble wet = shareIn(6, 50);
        OptionalDouble dry = germinativeEnergyFraction();
        return wet.isPresent() && dry.isPresent()
                ? OptionalDouble.of(Math.max(0, dry.getAsDouble() - wet.getAsDouble()))
                : OptionalDouble.empty();
    }

    private OptionalDouble shareIn(double aboveMl, double toMl) {
        int corns = 0;
        int germinated = 0;
        for (GerminationCount dish : dishes) {
            if (dish.waterMl() > aboveMl && dish.waterMl() <= toMl) {
                corns += dish.corns();
                germinated += dish.germinated();
            }
        }
        return corns == 0 ? OptionalDouble.empty() : OptionalDouble.of((double) germinated / corns);
    }

    /**
     * What cleaning and weighing told of the corns.
     *
     * @param thousandCornG weight of 1000 corns as they lie, g, (5, 100)
     * @param floatersFraction share of the weight that floats off or is sieved out, [0, 0.5]
     */
    public record LotSize(
            OptionalDouble thousandCornG, OptionalDouble floatersFraction, Optional<LocalDate> harvested) {
        public LotSize {
            if (thousandCornG.isPresent() && !(thousandCornG.getAsDouble() > 5 && thousandCornG.getAsDouble() < 100)) {
                throw new IllegalArgumentException("thousandCornG must be in (5, 100): " + thousandCornG.getAsDouble());
            }
            if (floatersFraction.isPresent()
                    && !(floatersFraction.getAsDouble() >= 0 && floatersFraction.getAsDouble() <= 0.5)) {
                throw new IllegalArgumentException(
                        "floatersFraction must be in [0, 0.5]: " + floatersFraction.getAsDouble());
            }
        }
    }
}
