package piecewright.desktop.batch;

import java.nio.file.Path;
import java.time.Instant;
import java.util.List;
import piecewright.app.BatchAtHand;
import piecewright.app.BatchAtHand.Recording;
import piecewright.app.CalendarManner;
import piecewright.app.Keeping;
import piecewright.app.NotWrittenException;
import piecewright.app.TakeBack;
import piecewright.app.TakeBack.Knowing;
import piecewright.desktop.shell.UndoHistory;
import piecewright.journal.Entry;
import piecewright.store.StoreException;
import piecewright.text.WindowWords;

/** What was done with a batch and can be taken back: lines written down or struck out, and plans accepted. */
final class BatchSteps {
    private final BatchViewModel model;
    private final UndoHistory history;

    BatchSteps(BatchViewModel model, UndoHistory history) {
        this.model = model;
        this.history = history;
    }

    /** Something was written down: what counted before, and what counts now. */
    void recorded(Path file, String line, List<Entry> before, List<Entry> after) {
        if (before.equals(after)) return;
        history.did(new OfBatch(file, WindowWords.say("undo.of.line", line)) {
            @Override
            void take(Way way) {
                List<Entry> counted = way == Way.BACK ? after : before;
                List<Entry> wanted = way == Way.BACK ? before : after;
                model.record(file, this, (opened, now) -> TakeBack.entries(opened, counted, wanted, now));
            }
        });
    }

    /** A new plan was accepted: the batch with the plan before, and with the plan since. */
    void accepted(Path file, BatchAtHand before, BatchAtHand after) {
        history.did(new OfBatch(file, WindowWords.say("undo.of.plan")) {
            @Override
            void take(Way way) {
                BatchAtHand there = way == Way.BACK ? after : before;
                BatchAtHand wanted = way == Way.BACK ? before : after;
                model.replace(file, this, (manner, now) -> TakeBack.plan(there, wanted, manner, now));
            }
        });
    }

    /** A batch was closed: as it was before, and as it is since. */
    void finished(Path file, Closing first, Closer closer) {
        history.did(new OfBatch(file, WindowWords.say("undo.of.finish")) {
            private volatile Closing closing = first;

            @Override
            void take(Way way) {
                if (way == Way.BACK)
                    model.take(file, this, now -> TakeBack.finish(closing.before(), closing.after(), now));
                else model.take(file, this, now -> closing = closer.close(now));
            }
        });
    }

    /** What closing a batch changed. */
    record Closing(Knowing before, Knowing after) {}

    /** Closes a batch again. */
    interface Closer {
        Closing close(Instant now) throws StoreException, NotWrittenException;
    }

    /** What is done to the batch to take a step. */
    interface Taking {
        void at(Instant now) throws StoreException, NotWrittenException;
    }

    /** What is written down, or struck out. */
    interface Told {
        Recording to(BatchAtHand batch, Instant now) throws StoreException, NotWrittenException;
    }

    /** What puts another plan in its place. */
    interface Replacing {
        Keeping.Kept by(CalendarManner manner, Instant now) throws StoreException, NotWrittenException;
    }

    /** Which way a step is taken. */
    private enum Way {
        BACK,
        AGAIN
    }

    /** A step of one batch, which is looked at when it is taken. */
    private abstract class OfBatch implements UndoHistory.Step {
        private final Path file;
        private final String words;

        OfBatch(Path file, String words) {
            this.file = file;
            this.words = words;
        }

        abstract void take(Way way);

        @Override
        public String words() {
            return words;
        }

        @Override
        public void undo() {
            look();
            take(Way.BACK);
        }

        @Override
        public void redo() {
            look();
            take(Way.AGAIN);
        }

        private void look() {
            if (model.file().filter(file::equals).isEmpty()) model.open(file);
        }
    }
}
