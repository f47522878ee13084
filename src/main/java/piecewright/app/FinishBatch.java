package piecewright.app;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;
import piecewright.journal.Entry;
import piecewright.journal.Report;
import piecewright.journal.Report.Corrected;
import piecewright.learn.Lessons;
import piecewright.plan.ActKind;
import piecewright.replan.Finished;
import piecewright.replan.WetMalt;
import piecewright.store.JournalFile.Draft;
import piecewright.store.PlanTimes;
import piecewright.store.StoreException;

/** Closes a batch: its malt is weighed, what it taught goes to its lot and kit, and it counts as under way no more. */
public final class FinishBatch {
    private FinishBatch() {}

    /**
     * What is said of it in the end, each only where it was not written down before. What was said at an earlier closing
     * is put right.
     *
     * @param maltKg the cleaned malt on the scale, kg
     * @param evenWet whether it is closed though its malt is too wet to keep
     */
    public record Told(OptionalDouble maltKg, OptionalDouble colourEbc, List<String> notes, boolean evenWet) {
        public Told {
            Objects.requireNonNull(maltKg);
            Objects.requireNonNull(colourEbc);
            notes = List.copyOf(notes);
        }

        /** The same, closed though the malt is too wet to keep. */
        public Told despiteWater() {
            return new Told(maltKg, colourEbc, notes, true);
        }

        private boolean saysNothing() {
            return maltKg.isEmpty() && colourEbc.isEmpty() && notes.isEmpty();
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

        /** It is not, and nothing was written: whoever closes it is asked first. */
        record Wet(WetMalt malt) implements Ending {
            public Wet {
                Objects.requireNonNull(malt);
            }
        }

        /** Why not. */
        enum Why {
            /** Nobody wrote down that it came off the kiln. */
            NO_MALT,
            /** The malt was never weighed. */
            NO_WEIGHT,
            /** It was closed before, and nothing was written down since. */
            CLOSED_BEFORE
        }
    }

    /**
     * Writes down what is told, learns, and closes the batch; done again after a failure it does only the rest. A batch
     * closed before is closed anew where something is told or was put right since; it teaches in place of what it taught.
     */
    public static Ending of(BatchAtHand batch, Told told, Instant now) throws StoreException, NotWrittenException {
        boolean closed = batch.finishedAt().isPresent();
        if (closed && told.saysNothing() && !changed(batch)) return new Ending.NotYet(Ending.Why.CLOSED_BEFORE);
        if (!Finished.isMalt(batch.account(now))) return new Ending.NotYet(Ending.Why.NO_MALT);
        List<Draft> drafts = drafts(batch, told, now);
        BatchAtHand asIf = batch.asIf(drafts);
        if (!believed(asIf, told, now)) return new Ending.NotYet(Ending.Why.NO_WEIGHT);
        Optional<WetMalt> wet = told.evenWet() ? Optional.empty() : asIf.wetMalt(now);
        if (wet.isPresent()) return new Ending.Wet(wet.get().asIn(batch.journal()));
        Optional<Finished> finished = asIf.finished(now);
        if (finished.isEmpty()) return new Ending.NotYet(Ending.Why.NO_WEIGHT);
        BatchAtHand noted = batch.noting(drafts);
        Lessons.Outcome lessons = noted.lessons().keep(noted.told(), now);
        noted.close(now);
        return new Ending.Closed(finished.get(), noted.expected(), lessons);
    }

    /** Whether it is closed and anything was written down since. */
    public static boolean changed(BatchAtHand batch) {
        Instant closedAt = batch.finishedAt().orElse(Instant.MAX);
        return batch.journal().entries().stream()
                .anyMatch(entry -> entry.writtenAt().isAfter(closedAt));
    }

    /** Whether the weight told can be true. */
    private static boolean believed(BatchAtHand asIf, Told told, Instant now) {
        if (told.maltKg().isEmpty()) return true;
        return asIf.maltWeighed(now)
                .filter(entry ->
                        entry.report().equals(Report.Weighed.net(told.maltKg().getAsDouble())))
                .isPresent();
    }

    private static List<Draft> drafts(BatchAtHand batch, Told told, Instant now) {
        List<Entry> known = batch.journal().effective();
        boolean again = batch.finishedAt().isPresent();
        List<Draft> drafts = new ArrayList<>();
        told.maltKg().ifPresent(maltKg -> {
            boolean rubbed = batch.account(now).visits().stream().anyMatch(visit -> visit.kind() == ActKind.DEROOT);
            if (!rubbed) drafts.add(draft(Report.Did.of(ActKind.DEROOT), now));
            Optional<Entry> before = again ? batch.maltWeighed(now) : Optional.empty();
            drafts.add(inPlaceOf(before, Report.Weighed.net(maltKg), now));
        });
        told.colourEbc().ifPresent(ebc -> {
            Optional<Entry> before = again ? last(known, Report.ColourMeasured.class) : Optional.empty();
            drafts.add(inPlaceOf(before, new Report.ColourMeasured(ebc), now));
        });
        told.notes().forEach(words -> drafts.add(draft(new Report.Noted(words), now)));
        drafts.removeIf(draft -> known.stream().anyMatch(entry -> saidBy(entry, draft.report())));
        return drafts;
    }

    /** Whether an entry says so already. */
    private static boolean saidBy(Entry entry, Report report) {
        return entry.report().equals(report)
                || report instanceof Corrected corrected
                        && corrected.entry() == entry.number()
                        && corrected.instead().equals(Optional.of(entry.report()));
    }

    private static Draft draft(Report report, Instant at) {
        return new Draft(at, at, Optional.empty(), report);
    }

    private static Draft inPlaceOf(Optional<Entry> before, Report report, Instant now) {
        return before.map(entry -> new Draft(
                        entry.at(), now, Optional.empty(), new Corrected(entry.number(), Optional.of(report))))
                .orElseGet(() -> draft(report, now));
    }

    private static Optional<Entry> last(List<Entry> entries, Class<? extends Report> kind) {
        return entries.stream().filter(entry -> kind.isInstance(entry.report())).reduce((one, other) -> other);
    }
}
