package piecewright.ensemble;

import piecewright.plan.PhaseKind;
import piecewright.process.couch.Ignition;

/** What a hot couch's thermometer would have told: when it caught, its peak, when it left the heat; scratch of one run. */
final class Pile {
    private final Crossing caught = new Crossing(Ignition.CAUGHT_C);
    private final Crossing dropped = new Crossing(-Ignition.CAUGHT_C);
    private double peakC = Double.NEGATIVE_INFINITY;
    private double peakMinutes = Double.NaN;

    /** Told the temperatures at the two ends of a step of that phase. */
    void saw(PhaseKind phase, double fromC, double toC, double from, double to) {
        if (phase != PhaseKind.COUCHING && phase != PhaseKind.COOLING) return;
        caught.rose(fromC, toC, from, to);
        if (caught.happened() && toC < fromC) dropped.rose(-fromC, -toC, from, to);
        if (phase == PhaseKind.COUCHING && toC > peakC) {
            peakC = toC;
            peakMinutes = to;
        }
    }

    /** When it passed 45 °C. */
    Crossing caught() {
        return caught;
    }

    /** When it was below that again, by itself or because it was unpacked. */
    Crossing dropped() {
        return dropped;
    }

    /** Minus infinity where nothing was packed. */
    double peakC() {
        return peakC;
    }

    /** NaN where nothing was packed. */
    double peakMinutes() {
        return peakMinutes;
    }
}
