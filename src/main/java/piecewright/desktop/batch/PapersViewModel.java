package piecewright.desktop.batch;

import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.beans.property.ReadOnlyStringProperty;
import javafx.beans.property.ReadOnlyStringWrapper;
import piecewright.app.BatchPapers;
import piecewright.app.NotWrittenException;
import piecewright.app.PlanPapers;
import piecewright.app.Printing;
import piecewright.desktop.plan.WishViewModel.Threads;
import piecewright.store.StoreException;
import piecewright.text.DisplayUnits;
import piecewright.text.WindowWords;

/** Papers of the piece that is looked at, written as files where somebody says. */
public final class PapersViewModel {
    private final BatchViewModel piece;
    private final Threads threads;
    private final Supplier<Instant> clock;
    private final DisplayUnits units;
    private final ReadOnlyObjectWrapper<List<Path>> written = new ReadOnlyObjectWrapper<>(List.of());
    private final ReadOnlyStringWrapper wrong = new ReadOnlyStringWrapper("");

    /** A paper, and how its file ends. */
    enum Paper {
        SHEET(".sheet.html"),
        CHART_PNG(".chart.png"),
        CHART_SVG(".chart.svg"),
        COUCH_PNG(".couch.png"),
        COUCH_SVG(".couch.svg");

        private final String ending;

        Paper(String ending) {
            this.ending = ending;
        }

        boolean isOfCouch() {
            return this == COUCH_PNG || this == COUCH_SVG;
        }
    }

    /** Follows the piece that is looked at. */
    public PapersViewModel(BatchViewModel piece, Threads threads, Supplier<Instant> clock, DisplayUnits units) {
        this.piece = piece;
        this.threads = threads;
        this.clock = clock;
        this.units = units;
        piece.shownProperty().addListener((shown, before, now) -> {
            if (!before.map(each -> each.batch().file())
                    .equals(now.map(each -> each.batch().file()))) {
                written.set(List.of());
                wrong.set("");
            }
        });
    }

    /** Files that were written since the piece is looked at, the last one first. */
    ReadOnlyObjectProperty<List<Path>> writtenProperty() {
        return written.getReadOnlyProperty();
    }

    /** Why the last paper was not written; empty text when it was. */
    ReadOnlyStringProperty wrongProperty() {
        return wrong.getReadOnlyProperty();
    }

    /** The folder papers are written into unless another is said. */
    String folder() {
        return piece.file().map(file -> file.resolveSibling("").toString()).orElse("");
    }

    /** Whether the piece has a hot couch to draw. */
    boolean hasCouch() {
        return piece.shownProperty()
                .get()
                .filter(shown -> shown.batch().request().style().couches().hot().isPresent())
                .isPresent();
    }

    void write(Paper paper, String folder) {
        Optional<Path> batch = piece.file();
        if (batch.isEmpty()) return;
        Path file;
        try {
            String name = String.valueOf(batch.get().getFileName()).replaceFirst("\\.json$", "");
            file = Path.of(folder.isBlank() ? folder() : folder.strip()).resolve(name + paper.ending);
        } catch (InvalidPathException noPath) {
            wrong.set(WindowWords.say("papers.no-folder", folder));
            return;
        }
        threads.background().execute(() -> {
            String trouble = "";
            try {
                Printing printing = Printing.open(targets(paper, file));
                printing.print(
                        new PlanPapers(units), new BatchPapers(piece.opener().open(batch.get()), clock.get()).papers());
            } catch (StoreException | NotWrittenException failed) {
                trouble = String.valueOf(failed.getMessage());
            }
            told(file, trouble);
        });
    }

    private void told(Path file, String trouble) {
        threads.ui().execute(() -> {
            wrong.set(trouble);
            if (!trouble.isEmpty()) return;
            List<Path> all = new ArrayList<>(List.of(file));
            written.get().stream().filter(each -> !each.equals(file)).forEach(all::add);
            written.set(List.copyOf(all));
        });
    }

    private static Printing.Targets targets(Paper paper, Path file) {
        Optional<Path> none = Optional.empty();
        Optional<Path> there = Optional.of(file);
        return switch (paper) {
            case SHEET -> new Printing.Targets(there, none, none);
            case CHART_PNG, CHART_SVG -> new Printing.Targets(none, there, none);
            case COUCH_PNG, COUCH_SVG -> new Printing.Targets(none, none, there);
        };
    }
}
