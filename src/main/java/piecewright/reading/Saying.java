package piecewright.reading;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import piecewright.journal.Report;
import piecewright.journal.Report.HeatSet;
import piecewright.journal.Report.TemperatureRead;
import piecewright.journal.Report.Weighed;

/**
 * One thing a line says.
 *
 * @param timed whether its time was said
 */
record Saying(Instant at, Report report, boolean timed) {
    /** Judgement: weights and temperatures as near as this are one figure. */
    private static final double KG = 0.002;

    private static final double K = 0.05;

    /** A report that is one step. */
    Optional<piecewright.plan.ActKind> act() {
        if (report instanceof Report.Did did) return Optional.of(did.act());
        if (report instanceof Report.Started started) return Optional.of(started.act());
        return Optional.empty();
    }

    Saying with(Report other) {
        return new Saying(at, other, timed);
    }

    /** The same at another time. */
    Saying at(Instant other) {
        return new Saying(other, report, true);
    }

    static List<Saying> at(List<Saying> sayings, Instant other) {
        List<Saying> moved = new ArrayList<>();
        sayings.forEach(saying -> moved.add(saying.at(other)));
        return moved;
    }

    /** Whether two reports say the same, as far as figures on a display go. */
    static boolean alike(Report one, Report other) {
        if (one instanceof Weighed a && other instanceof Weighed b) return Math.abs(a.netKg() - b.netKg()) < KG;
        if (one instanceof TemperatureRead a && other instanceof TemperatureRead b) {
            return a.spot() == b.spot() && Math.abs(a.readC() - b.readC()) < K;
        }
        if (one instanceof HeatSet a && other instanceof HeatSet b) return Math.abs(a.airOnC() - b.airOnC()) < K;
        return one.equals(other);
    }

    /** Whether one may stand in place of the other: both of one kind. */
    static boolean sameKind(Report one, Report other) {
        if (one instanceof Report.Remarked a && other instanceof Report.Remarked b) {
            return a.remark().getClass().equals(b.remark().getClass());
        }
        boolean step = steps(one) && steps(other);
        boolean words = words(one) && words(other);
        return step || words || one.getClass().equals(other.getClass());
    }

    private static boolean steps(Report report) {
        return report instanceof Report.Did || report instanceof Report.Started;
    }

    private static boolean words(Report report) {
        return report instanceof Report.Noted || report instanceof Report.Observed || report instanceof Report.Remarked;
    }
}
