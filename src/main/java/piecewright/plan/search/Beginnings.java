package piecewright.plan.search;

import java.time.Instant;
import java.util.Optional;

/** Which act can begin at which candidate, and what it costs by itself there; worked out once per search. */
final class Beginnings {
    private final boolean[][] can;
    private final double[][] costMinutes;

    /**
     * @param mostNights night acts allowed in the whole plan
     * @param nearby where acts may begin at all; anywhere when empty
     */
    Beginnings(Stops stops, TimeGrid grid, int mostNights, Held held, Optional<Nearby> nearby) {
        this.can = new boolean[stops.count()][grid.size()];
        this.costMinutes = new double[stops.count()][grid.size()];
        for (int stop = 0; stop < stops.count(); stop++) {
            boolean nights = mostNights > 0 && !stops.attendedBlock(stop);
            int work = stops.workMinutes(stop);
            String id = stops.firstId(stop);
            for (int at = 0; at < grid.size(); at++) {
                Instant instant = grid.instant(at);
                boolean near = nearby.isEmpty() || nearby.get().lets(id, instant);
                boolean onGrid = stop > stops.lastCoarse() || grid.coarse(at);
                can[stop][at] = near && onGrid && grid.fits(at, work) && (nights || !grid.night(at));
                costMinutes[stop][at] = work + grid.unsociableCostMinutes(at) + held.costMinutes(stop, grid.minute(at));
            }
        }
    }

    /** Whether the act of this stop can begin at this candidate. */
    boolean can(int stop, int at) {
        return can[stop][at];
    }

    /** What an act costs by itself at a candidate: its work, its hour, and its move where somebody counts on it. */
    double costMinutes(int stop, int at) {
        return costMinutes[stop][at];
    }
}
