package piecewright.assess;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import piecewright.grain.GerminationCount;
import piecewright.grain.GrainLot;

/**
 * The dishes of a lot, pooled.
 *
 * @param energy germinated in about 4 mL
 * @param wet germinated in about 8 mL
 * @param rangeCorns spread among the dishes of about 4 mL, in corns of 100
 * @param toleratedCorns greatest spread that chance explains, where published
 * @param indexRatio germination index, 10 when all come on the first day
 */
public record LotCounts(
        Optional<Counted> energy,
        Optional<Counted> wet,
        OptionalInt rangeCorns,
        OptionalInt toleratedCorns,
        OptionalDouble indexRatio) {
    /** Judgement: between 4 mL and 8 mL of water. */
    private static final double DRY_UNTIL_ML = 6;

    public static LotCounts of(GrainLot lot) {
        List<GerminationCount> dry = lot.dishes().stream()
                .filter(dish -> dish.waterMl() <= DRY_UNTIL_ML)
                .toList();
        List<GerminationCount> wet = lot.dishes().stream()
                .filter(dish -> dish.waterMl() > DRY_UNTIL_ML)
                .toList();
        Optional<Counted> energy = pooled(dry);
        OptionalInt range = range(dry);
        OptionalInt tolerated = energy.isPresent() && range.isPresent()
                ? ReplicateTolerance.corns(energy.get().shareFraction(), dry.size())
                : OptionalInt.empty();
        return new LotCounts(energy, pooled(wet), range, tolerated, index(dry));
    }

    /** Points lost in more water, with Newcombe's interval; empty unless both were tested. */
    public Optional<Lost> lostInWater() {
        if (energy.isEmpty() || wet.isEmpty()) return Optional.empty();
        double lost = energy.get().shareFraction() - wet.get().shareFraction();
        return Optional.of(new Lost(lost, energy.get().less(wet.get()), SensitivityClass.of(lost)));
    }

    public boolean dishesDisagree() {
        return rangeCorns.isPresent()
                && toleratedCorns.isPresent()
                && rangeCorns.getAsInt() > toleratedCorns.getAsInt();
    }

    /** Share of corns lost in more water. */
    public record Lost(double lostFraction, Interval interval, SensitivityClass sensitivity) {}

    private static Optional<Counted> pooled(List<GerminationCount> dishes) {
        int corns = dishes.stream().mapToInt(GerminationCount::corns).sum();
        int found = dishes.stream().mapToInt(GerminationCount::germinated).sum();
        return corns == 0 ? Optional.empty() : Optional.of(new Counted(found, corns));
    }

    private static OptionalInt range(List<GerminationCount> dishes) {
        boolean hundreds = dishes.stream().allMatch(dish -> dish.corns() == 100);
        if (dishes.size() < 2 || !hundreds) return OptionalInt.empty();
        var counts = dishes.stream().mapToInt(GerminationCount::germinated).summaryStatistics();
        return OptionalInt.of(counts.getMax() - counts.getMin());
    }

    /** Judgement of the formula: 10 (n1 + n2 + n3) / (n1 + 2 n2 + 3 n3), daily counts, from memory. */
    private static OptionalDouble index(List<GerminationCount> dishes) {
        double all = 0;
        double days = 0;
        for (GerminationCount dish : dishes) {
            if (dish.by24Hours().isEmpty()
                    || dish.by48Hours().isEmpty()
                    || dish.by72Hours().isEmpty()) continue;
            int first = dish.by24Hours().getAsInt();
            int second = dish.by48Hours().getAsInt();
            int third = dish.by72Hours().getAsInt();
            all += third;
            days += first + 2.0 * (second - first) + 3.0 * (third - second);
        }
        return days == 0 ? OptionalDouble.empty() : OptionalDouble.of(10 * all / days);
    }
}
