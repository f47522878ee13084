package piecewright.plan.search;

import java.util.Arrays;
import piecewright.plan.CouchRules;
import piecewright.plan.Rules;

/** What the hot couch, the kiln and all after them cost at least. */
final class CouchBound {
    /** Judgement: width of a class of moisture at breaking, wet basis. */
    private static final double CLASS_FRACTION = 0.02;

    private static final int CLASSES = 16;

    private final Space space;
    private final CouchLegs legs;
    private final CouchLegs.Couch couch;
    private final KilnBound kiln;
    private final int goal;
    private final double quickestHours;
    private final double longestHours;
    private final double[][] fromBreak;
    private final double[] fromPack;

    /** @param warmestPackedC no piece is packed warmer, °C */
    CouchBound(Space space, CouchLegs.Couch couch, KilnBound kiln, int goal, double warmestPackedC) {
        this.space = space;
        this.couch = couch;
        this.legs = new CouchLegs(space, couch);
        this.kiln = kiln;
        this.goal = goal;
        var couching = space.setup().couching().orElseThrow();
        double warmestAirC = -50;
        for (int at = 0; at < space.grid().size(); at++) {
            warmestAirC = Math.max(warmestAirC, couching.air().airC(space.grid().minute(at) / 60.0));
        }
        this.quickestHours = couch.curves().quickestHours(warmestPackedC, warmestAirC + 1);
        this.longestHours = couching.schedule().longestHours();
        this.fromBreak = new double[CLASSES][space.grid().size()];
        for (double[] row : fromBreak) Arrays.fill(row, Double.NaN);
        this.fromPack = new double[space.grid().size()];
        Arrays.fill(fromPack, Double.NaN);
    }

    /** Cost-minutes still to come at least from a label at packing: every break it can have is looked at. */
    double fromPack(Label label) {
        if (goal == space.stops().pack()) return 0;
        double[] least = {Double.POSITIVE_INFINITY};
        int stop = space.stops().breakCouch();
        legs.breaks(label, (to, grain, cost) -> {
            double total = cost + space.stepCostMinutes(label.at(), stop, to) + fromBreak(to, grain.moistureFraction());
            least[0] = Math.min(least[0], total);
        });
        return least[0];
    }

    /** The same from packing any piece at a candidate. */
    double fromPackAtLeast(int at) {
        if (Double.isNaN(fromPack[at])) fromPack[at] = leastFromPack(at);
        return fromPack[at];
    }

    private double leastFromPack(int at) {
        if (!space.canBegin(space.stops().pack(), at)) return Double.POSITIVE_INFINITY;
        if (goal == space.stops().pack()) return 0;
        TimeGrid grid = space.grid();
        int stop = space.stops().breakCouch();
        int start = grid.minute(at);
        double least = Double.POSITIVE_INFINITY;
        if (quickestHours > longestHours) return least;
        int end = Math.min(grid.size(), grid.firstAtOrAfter(start + (int) (60 * longestHours) + 1));
        int first = Math.max(at + 1, grid.firstAtOrAfter(start + (int) (60 * quickestHours)));
        for (int to = grid.nextCoarse(first); to < end; to = grid.nextCoarse(to + 1)) {
            double after = fromBreak(to, space.rules().driestFraction());
            if (after == Double.POSITIVE_INFINITY) continue;
            least = Math.min(least, after + couch.checks().costMinutes(at, to) + space.stepCostMinutes(at, stop, to));
        }
        return least;
    }

    /** The same from breaking a couch of that moisture or wetter, wet basis. */
    double fromBreak(int at, double moistureFraction) {
        if (goal == space.stops().breakCouch()) return 0;
        double base = space.rules().driestLoadFraction();
        double driest = moistureFraction - Rules.COUCH_DRIES_FRACTION;
        int row = (int) Math.floor((driest - base) / CLASS_FRACTION);
        row = Math.max(0, Math.min(CLASSES - 1, row));
        if (Double.isNaN(fromBreak[row][at])) fromBreak[row][at] = leastFromBreak(at, base + row * CLASS_FRACTION);
        return fromBreak[row][at];
    }

    private double leastFromBreak(int at, double driestFraction) {
        TimeGrid grid = space.grid();
        int load = space.stops().load();
        double least = Double.POSITIVE_INFINITY;
        if (!space.canBegin(space.stops().breakCouch(), at)) return least;
        int start = grid.minute(at);
        int end = Math.min(grid.size(), grid.firstAtOrAfter(start + (int) (60 * CouchRules.LOAD_HARD_HOURS) + 1));
        for (int to = at + 1; to < end; to++) {
            double slip = CouchRules.loadSlip().costMinutes((grid.minute(to) - start) / 60.0);
            if (slip == Double.POSITIVE_INFINITY || !space.canBegin(load, to)) continue;
            least = Math.min(
                    least, slip + space.stepCostMinutes(at, load, to) + kiln.fromLoadAtLeast(to, driestFraction));
        }
        return least;
    }
}
