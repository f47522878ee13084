package piecewright.plan;

import java.util.ArrayList;
import java.util.Collections;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;

/**
 * What the search minimised, taken apart: each act's cost by rule, cost-minutes. Rules that charge nothing are left out.
 *
 * @param items in time order of their acts
 */
public record Bill(List<Item> items) {
    public Bill {
        items = List.copyOf(items);
    }

    /**
     * @param actId lasting name of the act charged; turnings' gaps are charged to the act that ends their phase
     * @param costMinutes above 0
     */
    public record Item(String actId, Rule rule, double costMinutes) {
        public Item {
            Objects.requireNonNull(actId);
            Objects.requireNonNull(rule);
        }
    }

    /** Of a plan that nothing was charged for. */
    public static Bill empty() {
        return new Bill(List.of());
    }

    /** All of it, cost-minutes. */
    public double totalMinutes() {
        return items.stream().mapToDouble(Item::costMinutes).sum();
    }

    /** What one act is charged, dearest rule first. */
    public List<Item> of(String actId) {
        return items.stream()
                .filter(item -> item.actId().equals(actId))
                .sorted((one, other) -> Double.compare(other.costMinutes(), one.costMinutes()))
                .toList();
    }

    /** What each rule charges in all, cost-minutes. */
    public Map<Rule, Double> byRule() {
        Map<Rule, Double> sums = new EnumMap<>(Rule.class);
        items.forEach(item -> sums.merge(item.rule(), item.costMinutes(), Double::sum));
        return Collections.unmodifiableMap(sums);
    }

    /** By how much another plan is charged more under each rule, cost-minutes, below 0 for less; largest first. */
    public List<Difference> against(Bill other) {
        Map<Rule, Double> mine = byRule();
        Map<Rule, Double> theirs = other.byRule();
        List<Difference> differences = new ArrayList<>();
        for (Rule rule : Rule.values()) {
            double more = theirs.getOrDefault(rule, 0.0) - mine.getOrDefault(rule, 0.0);
            if (Math.abs(more) >= WORTH_SAYING_MINUTES) differences.add(new Difference(rule, more));
        }
        differences.sort((one, two) -> Double.compare(Math.abs(two.moreMinutes()), Math.abs(one.moreMinutes())));
        return differences;
    }

    /** Judgement: less than half a minute is no reason. */
    private static final double WORTH_SAYING_MINUTES = 0.5;

    /** One rule under which another plan pays so much more, cost-minutes. */
    public record Difference(Rule rule, double moreMinutes) {}
}
