package piecewright.purchase;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import piecewright.grain.GrainKind;

/**
 * What to carry home for all wishes together: one line per grain.
 *
 * @param needs of every batch whose grain is bought
 * @param there of every batch whose grain is there: told, but nothing is bought for it
 */
public record ShoppingList(List<GrainNeed> needs, List<GrainNeed> there, List<Line> lines) {
    public ShoppingList {
        needs = List.copyOf(needs);
        there = List.copyOf(there);
        lines = List.copyOf(lines);
    }

    /**
     * @param neededKg for all batches, test samples included
     * @param ownedKg there already
     * @param sacks how many of which; empty when none are needed or none are offered
     * @param cost of the sacks, where every one has a price
     * @param costPerMaltKg of the grain that goes into the malt, at the sacks' mean price, per kg of malt
     */
    public record Line(
            GrainKind grain,
            double neededKg,
            double ownedKg,
            Map<Sack, Integer> sacks,
            Optional<BigDecimal> cost,
            Optional<BigDecimal> costPerMaltKg) {
        /** What is missing, kg, 0 or more. */
        public double missingKg() {
            return Math.max(0, neededKg - ownedKg);
        }
    }

    /** The same with batches whose grain is there. */
    public ShoppingList with(List<GrainNeed> grainIsThere) {
        return new ShoppingList(needs, grainIsThere, lines);
    }

    /** Shared grain is bought together; owned grain counts first. */
    public static ShoppingList of(
            List<GrainNeed> needs, Map<GrainKind, Double> ownedKg, Map<GrainKind, List<Sack>> offers) {
        Map<GrainKind, List<GrainNeed>> byGrain = new LinkedHashMap<>();
        for (GrainNeed need : needs) {
            byGrain.computeIfAbsent(need.lot().kind(), kind -> new ArrayList<>())
                    .add(need);
        }
        List<Line> lines = new ArrayList<>();
        byGrain.forEach((grain, shared) -> lines.add(
                line(grain, shared, ownedKg.getOrDefault(grain, 0.0), offers.getOrDefault(grain, List.of()))));
        return new ShoppingList(needs, List.of(), lines);
    }

    private static Line line(GrainKind grain, List<GrainNeed> needs, double ownedKg, List<Sack> offers) {
        double grainKg =
                needs.stream().mapToDouble(need -> need.waterfall().grainKg()).sum();
        double maltKg = needs.stream()
                .mapToDouble(need -> need.waterfall().usefulMaltKg())
                .sum();
        double neededKg = grainKg + GrainNeed.TEST_SAMPLES_KG * needs.size();
        SackChoice choice = SackChoice.of(Math.max(0, neededKg - ownedKg), offers);
        Optional<BigDecimal> perMalt = choice.cost()
                .filter(cost -> choice.boughtKg() > 0)
                .map(cost -> cost.multiply(BigDecimal.valueOf(neededKg / choice.boughtKg() / maltKg))
                        .setScale(2, RoundingMode.HALF_UP));
        Optional<BigDecimal> cost = choice.cost().filter(sum -> choice.boughtKg() > 0);
        return new Line(grain, neededKg, ownedKg, choice.sacks(), cost, perMalt);
    }
}
