package piecewright.learn;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import piecewright.house.Scale;
import piecewright.journal.Entry;
import piecewright.journal.Journal;
import piecewright.journal.Report;
import piecewright.plan.Setup;

/** A journal as the run of a batch: what was really done, when, and what was observed of it. Pure. */
public final class Retold {
    private final Doings doings;
    private final Readings readings;
    private final List<Observation> observations = new ArrayList<>();

    private Retold(Setup setup, String lot, Scale scale, Instant origin) {
        FittedStages stages = new FittedStages(setup, lot);
        this.doings = new Doings(stages, origin);
        this.readings = new Readings(scale, setup);
    }

    /**
     * The batch until an instant; empty when nothing was soaked until then.
     *
     * @param setup what the plan assumes; its air begins at origin
     * @param lot name of the lot the unknowns belong to
     */
    public static Optional<Rerun> of(Setup setup, String lot, Scale scale, Journal journal, Until horizon) {
        Retold retold = new Retold(setup, lot, scale, horizon.origin());
        Optional<Report> begun = Optional.empty();
        for (Entry entry : journal.effectiveUntil(horizon.until())) {
            if (!ends(entry.report(), begun)) retold.happened(entry, horizon.until());
            if (entry.report() instanceof Report.Did) begun = Optional.empty();
            if (entry.report() instanceof Report.Started) begun = Optional.of(entry.report());
        }
        return retold.doings
                .finished(horizon.until())
                .map(stretches -> new Rerun(horizon.origin(), retold.doings.raw(), stretches, retold.observations));
    }

    /** Zero of the hours of the setup's air, and the end of what is told. */
    public record Until(Instant origin, Instant until) {}

    /** Whether a report only says that the act begun just before is done: its instant is when it began. */
    private static boolean ends(Report report, Optional<Report> begun) {
        return report instanceof Report.Did did
                && begun.isPresent()
                && begun.get() instanceof Report.Started started
                && started.act() == did.act();
    }

    private void happened(Entry entry, Instant until) {
        Report report = entry.report();
        if (report instanceof Report.Started started) {
            doings.act(started.act(), entry.at(), OptionalDouble.empty());
        } else if (report instanceof Report.Did did) {
            doings.act(did.act(), entry.at(), did.waterL());
        } else if (report instanceof Report.HeatSet set) {
            doings.dialled(set.airOnC(), entry.at());
        } else if (report instanceof Report.VentsSet vents) {
            doings.vented(vents.openFraction(), entry.at());
        } else if (report instanceof Report.Observed observed) {
            doings.sign(observed.sign(), entry.at());
        } else if (doings.begun() && report instanceof Report.Measured measured) {
            Instant at = doings.actsAt(entry.at()) ? entry.at().plus(Duration.ofSeconds(1)) : entry.at();
            if (!at.isAfter(until)) {
                readings.of("" + entry.number(), at, measured, doings.keeping()).ifPresent(observations::add);
            }
        }
    }
}
