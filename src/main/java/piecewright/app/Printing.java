package piecewright.app;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Optional;
import piecewright.chart.CouchChart;
import piecewright.chart.PlanChart;
import piecewright.chart.PngPicture;
import piecewright.chart.UndrawableException;
import piecewright.sheet.BenchSheet;
import piecewright.store.AtomicFile;
import piecewright.store.StoreException;
import piecewright.store.TextFile;

/** The papers of a plan as files: bench sheet and picture. Only papers of ours are ever replaced. */
public final class Printing {
    /** The mark stands in the first block of our PNG files, before the dots. */
    private static final int PNG_MARK_WITHIN = 4096;

    private final Targets targets;

    private Printing(Targets targets) {
        this.targets = targets;
    }

    /** The files to write. */
    public record Targets(Optional<Path> sheet, Optional<Path> chart, Optional<Path> couch) {
        /** The papers of one of several batches. */
        public Targets part(int number) {
            return new Targets(
                    sheet.map(file -> Beside.part(file, number)),
                    chart.map(file -> Beside.part(file, number)),
                    couch.map(file -> Beside.part(file, number)));
        }
    }

    /** Looks at what is there already; nothing is written before {@link #print}. */
    public static Printing open(Targets targets) throws StoreException, NotWrittenException {
        if (targets.sheet().isPresent()) mustBeFree(targets.sheet().get(), BenchSheet.OURS);
        if (targets.chart().isPresent()) mustBeFree(targets.chart().get(), PlanChart.OURS);
        if (targets.couch().isPresent()) mustBeFree(targets.couch().get(), CouchChart.OURS);
        return new Printing(targets);
    }

    /** Refuses a file that cannot be written, or holds something that has not this mark of ours. */
    public static void mustBeFree(Path file, String mark) throws StoreException, NotWrittenException {
        try {
            AtomicFile.mustHaveAPlace(file);
        } catch (StoreException failed) {
            throw new NotWrittenException(failed);
        }
        if (Files.exists(file) && !holds(file, mark)) {
            throw new StoreException(file, "is there already and was not made here; name another file");
        }
    }

    private static boolean holds(Path file, String mark) throws StoreException {
        if (!isPng(file)) return TextFile.read(file, TextFile.LARGE_BYTES).contains(mark);
        try (InputStream stream = Files.newInputStream(file)) {
            return new String(stream.readNBytes(PNG_MARK_WITHIN), StandardCharsets.ISO_8859_1).contains(mark);
        } catch (IOException failed) {
            throw new StoreException(file, "cannot be read; check its permissions", failed);
        }
    }

    private static boolean isPng(Path file) {
        return file.toString().toLowerCase(Locale.ROOT).endsWith(".png");
    }

    public void print(PlanPapers papers, Papers of) throws NotWrittenException {
        if (targets.sheet().isPresent()) write(targets.sheet().get(), papers.sheet(of));
        if (targets.chart().isPresent()) picture(targets.chart().get(), papers.chart(of));
        Optional<String> couch = targets.couch().isPresent() ? papers.couchChart(of) : Optional.empty();
        if (couch.isPresent()) picture(targets.couch().orElseThrow(), couch.get());
    }

    /** Writes a picture: as dots into a file called .png, else as the SVG it is. */
    public static void picture(Path file, String svg) throws NotWrittenException {
        if (!isPng(file)) {
            write(file, svg);
            return;
        }
        try {
            AtomicFile.write(file, PngPicture.of(svg));
        } catch (UndrawableException noLetters) {
            throw new NotWrittenException(new StoreException(
                    file,
                    "cannot be drawn: Java finds no fonts on this machine; install fontconfig and some font, or name a"
                            + " file that ends in .svg",
                    noLetters));
        } catch (StoreException failed) {
            throw new NotWrittenException(failed);
        }
    }

    /** Writes one paper, whole or not at all. */
    private static void write(Path file, String paper) throws NotWrittenException {
        try {
            AtomicFile.write(file, paper);
        } catch (StoreException failed) {
            throw new NotWrittenException(failed);
        }
    }
}
