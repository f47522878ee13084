package piecewright.app;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;
import piecewright.journal.Report;
import piecewright.learn.Lessons;
import piecewright.plan.ActKind;
import piecewright.replan.Finished;
import piecewright.replan.Where;
import piecewright.store.PlanTimes;
import piecewright.store.StoreException;

/** Closes a batch: its malt is weighed, what it taught goes to its lot and kit, and it counts as under way no more. */
public final class FinishBatch {
    private FinishBatch() {}

    /**
     * What is said of it in the end, each only where it was not written down before.
     *
     * @param maltKg the cleaned malt on the scale, kg
     */
    public record Told(OptionalDouble maltKg, OptionalDouble colourEbc, List<String> notes) {
        public Told {
            Objects.requireNonNull(maltKg);
            Objects.requireNonNull(colourEbc);
            notes = List.copyOf(notes);
        }
    }

    /** What came of it. */
    public sealed interface Ending {
        /** It is closed. */
        record Closed(Finished finished, PlanTimes.Expected expected, Lessons.Outcome lessons) implements Ending {
            public Closed {
                Objects.requireNonNull(finished);
                Objects.requireNonNull(expected);
                Objects.requireNonNull(lessons);
            }
        }

        /** It is not, and nothing was written. */
        record NotYet(Why why) implements Ending {}

        /** Why not. */
        enum Why {
            /** Nobody wrote down that it came off the kiln. */
            NO_MALT,
            /** The malt was never weighed. */
            NO_WEIGHT,
            /** It was closed before. */
            CLOSED_BEFORE
        }
    }

    /** Writes down what is told, learns, and closes the batch; done again after a failure it does only the rest. */
    public static Ending of(BatchAtHand batch, Told told, Instant now) throws StoreException, NotWrittenException {
        if (batch.finishedAt().isPresent()) return new Ending.NotYet(Ending.Why.CLOSED_BEFORE);
        Optional<Where> where = batch.where(now);
        if (where.isEmpty() || !Finished.isMalt(where.get().account())) return new Ending.NotYet(Ending.Why.NO_MALT);
        if (told.maltKg().isEmpty() && batch.finished(now).isEmpty()) return new Ending.NotYet(Ending.Why.NO_WEIGHT);
        BatchAtHand noted = batch.noting(reports(batch, where.get(), told), now);
        Optional<Finished> finished = noted.finished(now);
        if (finished.isEmpty()) return new Ending.NotYet(Ending.Why.NO_WEIGHT);
        Lessons.Outcome lessons = noted.lessons().keep(noted.told(), now);
        noted.close(now);
        return new Ending.Closed(finished.get(), noted.expected(), lessons);
    }

    private static List<Report> reports(BatchAtHand batch, Where where, Told told) {
        List<Report> reports = new ArrayList<>();
        List<Report> known = batch.journal().effective().stream()
                .map(entry -> entry.report())
                .toList();
        told.maltKg().ifPresent(maltKg -> {
            boolean rubbed = where.account().visits().stream().anyMatch(visit -> visit.kind() == ActKind.DEROOT);
            if (!rubbed) reports.add(Report.Did.of(ActKind.DEROOT));
            reports.add(Report.Weighed.net(maltKg));
        });
        told.colourEbc().ifPresent(ebc -> reports.add(new Report.ColourMeasured(ebc)));
        told.notes().forEach(words -> reports.add(new Report.Noted(words)));
        reports.removeIf(known::contains);
        return reports;
    }
}
