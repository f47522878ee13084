package piecewright.oracle;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/** Steps keep the order in which grain becomes malt, and none is told before the grain is grown for it. */
final class OrderRule {
    /** Kinds by when they come in the making of malt; those not named here may come at any time. */
    private static final Map<String, Integer> RANK = Map.ofEntries(
            Map.entry("soak", 1),
            Map.entry("drain", 1),
            Map.entry("heap", 2),
            Map.entry("floor", 3),
            Map.entry("turn", 4),
            Map.entry("sprinkle", 4),
            Map.entry("pack", 5),
            Map.entry("check", 6),
            Map.entry("break", 7),
            Map.entry("stew", 9),
            Map.entry("load", 10),
            Map.entry("raise", 11),
            Map.entry("lower", 11),
            Map.entry("cure", 11),
            Map.entry("off", 13));

    /** Judgement: the quick forms of the search may be out by so much in mean acrospire and in moisture. */
    private static final double SLACK = 0.0101;

    /** Judgement: a batch under way may have to end its growth somewhat short; far short it is no malt. */
    private static final double UNDER_WAY_SHARE = 0.75;

    private OrderRule() {}

    static List<Fault> faults(Case one) {
        List<Fault> faults = new ArrayList<>();
        List<Told.Step> steps = one.told().steps();
        int rank = 0;
        boolean soaking = false;
        for (Told.Step step : steps) {
            boolean open = !one.done().contains(step.id());
            int its = RANK.getOrDefault(step.kind(), rank);
            if (open && its < rank) faults.add(new Fault("out of order", step.id(), kinds(steps)));
            rank = Math.max(rank, its);
            boolean wrong = step.is("soak") && soaking || step.is("drain") && !soaking || step.is("floor") && soaking;
            if (open && wrong) faults.add(new Fault("soak and drain do not alternate", step.id(), kinds(steps)));
            if (step.is("soak", "drain")) soaking = step.is("soak");
            if (open) grown(one, step, faults);
        }
        return faults;
    }

    private static void grown(Case one, Told.Step step, List<Fault> faults) {
        double least = one.norms().leastAcrospire() * (one.first() ? 1 : UNDER_WAY_SHARE) - SLACK;
        boolean tooSoon = step.is("pack", "stew", "load") && !broken(one, step);
        double acrospire = step.expect().acrospire().orElse(0);
        if (tooSoon && acrospire < least) {
            faults.add(new Fault("loaded or packed ungrown", step.id(), acrospire + " of at least " + least));
        }
        double steeped = one.norms().leastSteepOut() * (one.first() ? 1 : UNDER_WAY_SHARE) - SLACK;
        if (step.is("floor", "heap") && step.expect().moisture() < steeped) {
            faults.add(new Fault("spread unsoaked", step.id(), step.expect().moisture() + " of " + steeped));
        }
    }

    /** Whether the grain came this far already by somebody's own hand: packed or stewed, it must go on. */
    private static boolean broken(Case one, Told.Step step) {
        return one.told().steps().stream()
                .filter(other -> other.is("pack", "stew") && !other.equals(step))
                .anyMatch(other -> one.done().contains(other.id()));
    }

    private static String kinds(List<Told.Step> steps) {
        return steps.stream().map(Told.Step::id).toList().toString();
    }
}
