package piecewright.app;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import piecewright.chart.PlanChart;
import piecewright.plan.Plan;
import piecewright.plan.PlanRequest;
import piecewright.sheet.BenchSheet;
import piecewright.store.AtomicFile;
import piecewright.store.StoreException;
import piecewright.store.TextFile;

/** The papers of a plan as files: bench sheet and picture. Only papers of ours are ever replaced. */
public final class Printing {
    private final Targets targets;

    private Printing(Targets targets) {
        this.targets = targets;
    }

    /** The files to write. */
    public record Targets(Optional<Path> sheet, Optional<Path> chart) {
        /** The papers of one of several batches. */
        public Targets part(int number) {
            return new Targets(
                    sheet.map(file -> Beside.part(file, number)), chart.map(file -> Beside.part(file, number)));
        }
    }

    /** Looks at what is there already; nothing is written before {@link #print}. */
    public static Printing open(Targets targets) throws StoreException, NotWrittenException {
        if (targets.sheet().isPresent()) mustBeFree(targets.sheet().get(), BenchSheet.OURS);
        if (targets.chart().isPresent()) mustBeFree(targets.chart().get(), PlanChart.OURS);
        return new Printing(targets);
    }

    /** Refuses a file that cannot be written, or holds something that has not this mark of ours. */
    public static void mustBeFree(Path file, String mark) throws StoreException, NotWrittenException {
        try {
            AtomicFile.mustHaveAPlace(file);
        } catch (StoreException failed) {
            throw new NotWrittenException(failed);
        }
        if (Files.exists(file) && !TextFile.read(file, TextFile.LARGE_BYTES).contains(mark)) {
            throw new StoreException(file, "is there already and was not made here; name another file");
        }
    }

    public void print(PlanPapers papers, PlanRequest request, Plan plan) throws NotWrittenException {
        if (targets.sheet().isPresent()) write(targets.sheet().get(), papers.sheet(request, plan));
        if (targets.chart().isPresent()) write(targets.chart().get(), papers.chart(request, plan));
    }

    /** Writes one paper, whole or not at all. */
    public static void write(Path file, String paper) throws NotWrittenException {
        try {
            AtomicFile.write(file, paper);
        } catch (StoreException failed) {
            throw new NotWrittenException(failed);
        }
    }
}
