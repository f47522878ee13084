package piecewright.plan.search;

import java.util.ArrayDeque;
import java.util.Arrays;
import piecewright.process.Metabolism;
import piecewright.process.Surroundings;

/** How soon a piece can be ripe or grown: as if it were always as warm as the warmest water or air of late. */
final class ChitClock {
    private static final int STEP_MINUTES = 15;
    /** Judgement: what a bucket still feels of older air is under a twentieth of a kelvin. */
    private static final int MEMORY_STEPS = 72 * 4;
    /** Judgement: covers what it still feels. */
    private static final double FORGOTTEN_K = 0.05;
    /** Judgement: no steep-out is wetter. */
    private static final double WETTEST_FRACTION = 0.49;

    private final TimeGrid grid;
    private final double ripeChitRatio;
    private final double[] chit;
    private final double[] growth;
    private final double coldestC;

    ChitClock(Space space, double ripeChitRatio, double rawC) {
        this.grid = space.grid();
        this.ripeChitRatio = ripeChitRatio;
        int last = grid.size() == 0 ? 0 : grid.minute(grid.size() - 1);
        this.chit = new double[last / STEP_MINUTES + 2];
        this.growth = new double[chit.length];
        double fillC = space.setup().fillC();
        this.coldestC = tabulate(space, Math.max(fillC, rawC), Math.min(fillC, rawC)) - 1;
    }

    private double tabulate(Space space, double leastC, double mostC) {
        Metabolism metabolism = space.setup().models().metabolism();
        Surroundings air = space.setup().air().steep();
        ArrayDeque<Integer> warmest = new ArrayDeque<>();
        double[] airC = new double[chit.length];
        double coldest = mostC;
        for (int i = 0; i < airC.length; i++) {
            double nowC = air.airC(i * STEP_MINUTES / 60.0);
            coldest = Math.min(coldest, nowC);
            airC[i] = Math.max(leastC, nowC) + FORGOTTEN_K;
            while (!warmest.isEmpty() && airC[warmest.getLast()] <= airC[i]) warmest.removeLast();
            warmest.addLast(i);
            if (warmest.getFirst() < i - MEMORY_STEPS) warmest.removeFirst();
            if (i == 0) continue;
            double warmC = airC[warmest.getFirst()];
            chit[i] = chit[i - 1] + metabolism.chitPerHour(warmC) * STEP_MINUTES / 60;
            growth[i] = growth[i - 1] + metabolism.growthPerHour(warmC, WETTEST_FRACTION) * STEP_MINUTES / 60;
        }
        return coldest;
    }

    /** No steeping grain is ever colder, °C; slips cost less the colder it is. */
    double coldestC() {
        return coldestC;
    }

    /** First candidate at which this piece could be ripe to cast. */
    int earliestRipe(Label label) {
        return grid.firstAtOrAfter(minuteOf(label, ripeChitRatio));
    }

    /** First candidate at which this piece, if still in the vessel, could have grown more than that. */
    int grownAtMost(Label label, double growthRatio) {
        int from = Math.min(growth.length - 1, minuteOf(label, 1) / STEP_MINUTES);
        double more = growth[from] + growthRatio - label.grain().growthRatio();
        int found = Arrays.binarySearch(growth, from, growth.length, more);
        int step = found >= 0 ? found : -found - 2;
        return grid.firstAtOrAfter(Math.max(from, step) * STEP_MINUTES);
    }

    private int minuteOf(Label label, double chitRatio) {
        int minute = grid.minute(label.at());
        double missing = chitRatio - label.grain().chitRatio();
        if (missing <= 0) return minute;
        int from = minute / STEP_MINUTES;
        int found = Arrays.binarySearch(chit, from, chit.length, chit[from] + missing);
        int step = found >= 0 ? found : Math.min(-found - 1, chit.length - 1);
        return Math.max(minute, (step - 1) * STEP_MINUTES);
    }
}
