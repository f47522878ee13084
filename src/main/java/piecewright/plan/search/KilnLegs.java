package piecewright.plan.search;

import java.util.Arrays;
import java.util.Optional;
import java.util.function.Consumer;
import piecewright.plan.Rule;
import piecewright.plan.Rules;
import piecewright.plan.Slip;

/** What can follow each act of kilning, and after it. */
final class KilnLegs {
    private static final int STEP_MINUTES = 15;
    private static final int LONGEST_STEPS = 6 * 24 * 60 / STEP_MINUTES;
    private static final int USUAL_STEPS = 2 * 24 * 60 / STEP_MINUTES;
    private static final int WAIT_STEPS = 25 * 60 / STEP_MINUTES;
    /** Judgement: the bed is stirred until it is down to this, wet basis. */
    static final double STIR_ABOVE_FRACTION = 0.23;

    private final Space space;
    private final TurnChains stirs;
    private final Optional<CureColour> colour;

    KilnLegs(Space space, TurnChains stirs) {
        this.space = space;
        this.stirs = stirs;
        this.colour = CureColour.of(space.setup(), space.stops(), space.rules(), roomC(space));
    }

    /** The curer's room in the middle of the time searched. */
    private static double roomC(Space space) {
        TimeGrid grid = space.grid();
        double hours = grid.size() == 0 ? 0 : grid.minute(grid.size() - 1) / 120.0;
        return space.setup().air().curer().airC(hours);
    }

    /** Every raise and every cure that can end drying at the level set at this label. */
    void fromDrying(Label from, Consumer<Label> sink) {
        int level = from.stop() - space.stops().load();
        Drying drying = dry(from, level);
        for (int target = level + 1; target <= space.heat().cureLevel(); target++) {
            int open = drying.openMinute(space.heat().gateRatio(target));
            if (open >= 0) raiseTo(target, from, drying, open, sink);
        }
    }

    /** Minute until which the bed loaded at this label is expected to need stirring. */
    int wetUntilMinute(Label load) {
        return dry(load, 0).wetUntilMinute();
    }

    private void raiseTo(int target, Label from, Drying drying, int openMinute, Consumer<Label> sink) {
        TimeGrid grid = space.grid();
        int stop = space.stops().load() + target;
        int level = from.stop() - space.stops().load();
        int latest = openMinute + (int) (60 * Rules.KILN_WAIT.hardHours());
        if (space.needsSomebody(level)) latest = Math.min(latest, space.attendedUntil(from));
        int wetUntil = drying.wetUntilMinute();
        double[] gained = gainedEbc(level, drying);
        int end = Math.min(grid.size(), grid.firstAtOrAfter(latest + 1));
        for (int at = Math.max(from.at() + 1, grid.firstAtOrAfter(openMinute)); at < end; at++) {
            if (!space.canBegin(stop, at)) continue;
            int minute = grid.minute(at);
            double stirring = level > 0
                    ? 0
                    : stirs.costUntilMinutes(space.notYetDrying(from), Math.min(wetUntil, minute), minute);
            double waiting = space.rules().waitsInTheKiln((minute - openMinute) / 60.0);
            double darkening = colour.map(one -> one.waitingMinutes(drying.at(gained, minute)))
                    .orElse(0.0);
            double cost = space.charged(Rule.KILN_WAIT, waiting) + space.charged(Rule.COLOUR, darkening) + stirring;
            space.arrive(from, stop, at, drying.grainAt(from.grain(), minute), cost, sink);
        }
    }

    /** Every unloading that can end the cure begun at this label. */
    void fromCure(Label from, EndCost endCost, Consumer<Label> sink) {
        TimeGrid grid = space.grid();
        int off = space.stops().off();
        int start = grid.minute(from.at());
        int latest = start + (int) (60 * space.rules().cureSlip().hardHours());
        if (space.needsSomebody(space.heat().cureLevel())) latest = Math.min(latest, space.attendedUntil(from));
        Drying drying = dry(from, space.heat().cureLevel());
        double[] gained = gainedEbc(space.heat().cureLevel(), drying);
        int end = Math.min(grid.size(), grid.firstAtOrAfter(latest + 1));
        for (int at = from.at() + 1; at < end; at++) {
            if (!space.canBegin(off, at)) continue;
            int minute = grid.minute(at);
            double curing = space.rules().curesItsTime((minute - start) / 60.0);
            double coloured = colour.map(one -> one.costMinutes(drying.at(gained, minute)))
                    .orElse(0.0);
            double cost = space.charged(Rule.CURE_LENGTH, curing)
                    + space.charged(Rule.COLOUR, coloured)
                    + restCost(off, endCost, at);
            space.arrive(from, off, at, drying.grainAt(from.grain(), minute), cost, sink);
        }
    }

    /** Colour gained at this heat, by quarters of an hour, EBC; zeros where kiln heat does not make it. */
    private double[] gainedEbc(int level, Drying drying) {
        return colour.filter(one -> level > 0)
                .map(one -> one.gainedEbc(level, drying.expectedRatio(), STEP_MINUTES / 60.0))
                .orElseGet(() -> new double[drying.expectedRatio().length]);
    }

    /** Every de-rooting after the unloading of this label. */
    void fromOff(Label from, Consumer<Label> sink) {
        TimeGrid grid = space.grid();
        int deroot = space.stops().deroot();
        int start = grid.minute(from.at());
        int end = Math.min(grid.size(), grid.firstAtOrAfter(start + (int) (60 * Rules.DEROOT_HARD_HOURS) + 1));
        for (int at = from.at() + 1; at < end; at++) {
            if (!space.canBegin(deroot, at)) continue;
            double cost = space.charged(Rule.DEROOTING, space.rules().derootsSoon((grid.minute(at) - start) / 60.0));
            space.arrive(from, deroot, at, from.grain(), cost, sink);
        }
    }

    /** Every roast of the next load after the de-rooting or the roast of this label. */
    void fromLoose(Label from, EndCost endCost, Consumer<Label> sink) {
        int roast = from.stop() + 1;
        if (roast > space.stops().last()) return;
        TimeGrid grid = space.grid();
        Slip slip = space.rules().roastSlip(space.stops().workMinutes(from.stop()));
        int start = grid.minute(from.at());
        int end = Math.min(grid.size(), grid.firstAtOrAfter(start + (int) (60 * slip.hardHours()) + 1));
        for (int at = from.at() + 1; at < end; at++) {
            if (!space.canBegin(roast, at)) continue;
            double waiting = slip.costMinutes((grid.minute(at) - start) / 60.0);
            double cost = space.charged(Rule.ROAST_WAIT, waiting) + restCost(roast, endCost, at);
            space.arrive(from, roast, at, from.grain(), cost, sink);
        }
    }

    private double restCost(int stop, EndCost endCost, int at) {
        return stop == space.stops().restFrom() ? space.charged(Rule.READY_BY, endCost.atMinutes(at)) : 0;
    }

    /** What it costs that the malt begins to rest at a candidate: rest lost or idle days before ready-by. */
    interface EndCost {
        double atMinutes(int at);
    }

    private Drying dry(Label from, int level) {
        double last = level == space.heat().cureLevel()
                ? 0
                : space.heat().gateRatio(space.heat().cureLevel());
        double[] expected = new double[USUAL_STEPS];
        double[] slow = new double[USUAL_STEPS];
        int start = level == 0 ? space.dryingFromMinute(from) : space.grid().minute(from.at());
        double dry = from.grain().dryFraction();
        expected[0] = from.grain().waterRatio() / dry;
        slow[0] = from.grain().slowWaterRatio() / dry;
        int steps = LONGEST_STEPS;
        for (int i = 1; i < steps; i++) {
            if (i == expected.length) {
                expected = Arrays.copyOf(expected, 2 * i);
                slow = Arrays.copyOf(slow, 2 * i);
            }
            int minute = start + (i - 1) * STEP_MINUTES;
            expected[i] = space.heat().expected(level).dried(expected[i - 1], minute, minute + STEP_MINUTES);
            slow[i] = space.heat().slow(level).dried(slow[i - 1], minute, minute + STEP_MINUTES);
            if (slow[i] <= last) steps = Math.min(steps, i + WAIT_STEPS);
        }
        return new Drying(start, Arrays.copyOf(expected, steps), Arrays.copyOf(slow, steps));
    }

    /** Expected and slow moisture, kg per kg dry, every quarter of an hour from a start. */
    private record Drying(int startMinute, double[] expectedRatio, double[] slowRatio) {
        /** First minute at which the slow kiln is at or below a moisture; -1 if never. */
        int openMinute(double gateRatio) {
            for (int i = 0; i < slowRatio.length; i++) {
                if (slowRatio[i] <= gateRatio) return startMinute + i * STEP_MINUTES;
            }
            return -1;
        }

        int wetUntilMinute() {
            double ratio = KilnHeat.ratioOf(STIR_ABOVE_FRACTION);
            for (int i = 0; i < expectedRatio.length; i++) {
                if (expectedRatio[i] <= ratio) return startMinute + i * STEP_MINUTES;
            }
            return Integer.MAX_VALUE / 2;
        }

        Grain grainAt(Grain before, int minute) {
            double dry = before.dryFraction();
            double water = at(expectedRatio, minute) * dry;
            return before.dried(water, at(slowRatio, minute) * dry);
        }

        private double at(double[] ratio, int minute) {
            double position = Math.min(ratio.length - 1.001, (minute - startMinute) / (double) STEP_MINUTES);
            int below = (int) position;
            return ratio[below] + (position - below) * (ratio[below + 1] - ratio[below]);
        }
    }
}
