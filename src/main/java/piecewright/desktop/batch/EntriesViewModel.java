package piecewright.desktop.batch;

import java.nio.file.Path;
import java.util.Comparator;
import java.util.List;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import piecewright.app.BatchAtHand;
import piecewright.desktop.plan.WishViewModel.Threads;
import piecewright.journal.Entry;
import piecewright.store.StoreException;
import piecewright.text.DisplayUnits;
import piecewright.text.EntryWords;

/** What is written down of the batch that is looked at and counts, the last first; also where the batch cannot be shown. */
public final class EntriesViewModel {
    private final BatchViewModel batch;
    private final Threads threads;
    private final DisplayUnits units;
    private final ReadOnlyObjectWrapper<List<Line>> lines = new ReadOnlyObjectWrapper<>(List.of());

    /** An entry by its number, in words. */
    record Line(int number, String words) {}

    /** Follows the batch that is looked at. */
    public EntriesViewModel(BatchViewModel batch, Threads threads, DisplayUnits units) {
        this.batch = batch;
        this.threads = threads;
        this.units = units;
        batch.shownProperty().addListener((shown, before, now) -> read());
        batch.replyProperty().addListener((reply, before, now) -> read());
    }

    ReadOnlyObjectProperty<List<Line>> linesProperty() {
        return lines.getReadOnlyProperty();
    }

    /** Whether there is a batch that something may be written of. */
    boolean has() {
        return batch.file().isPresent();
    }

    void strike(int number) {
        batch.strike(number);
    }

    private void read() {
        batch.file()
                .ifPresentOrElse(file -> threads.background().execute(() -> read(file)), () -> lines.set(List.of()));
    }

    private void read(Path file) {
        List<Line> found = lines(file);
        threads.ui().execute(() -> {
            if (batch.file().filter(file::equals).isPresent()) lines.set(found);
        });
    }

    /** None where the file cannot be read: that is said where the batch is looked at. */
    private List<Line> lines(Path file) {
        try {
            BatchAtHand opened = batch.opener().open(file);
            EntryWords words = new EntryWords(units, opened.zone());
            return opened.journal().effective().stream()
                    .sorted(Comparator.comparingInt(Entry::number).reversed())
                    .map(entry -> new Line(entry.number(), words.sentence(entry)))
                    .toList();
        } catch (StoreException unreadable) {
            return List.of();
        }
    }
}
