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
    public record Targets(Optional<Path> sheet, Optional<Path> chart) {}

    /** Looks at what is there already; nothing is written before {@link #print}. */
    public static Printing open(Targets targets) throws StoreException, NotWrittenException {
        if (targets.sheet().isPresent()) mustBeFree(targets.sheet().get(), BenchSheet.OURS);
        if (targets.chart().isPresent()) mustBeFree(targets.chart().get(), PlanChart.OURS);
        return new Printing(targets);
    }

    private static void mustBeFree(Path file, String mark) throws StoreException, NotWrittenException {
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
        try {
            if (targets.sheet().isPresent()) AtomicFile.write(targets.sheet().get(), papers.sheet(request, plan));
            if (targets.chart().isPresent()) AtomicFile.write(targets.chart().get(), papers.chart(request, plan));
        } catch (StoreException failed) {
            throw new NotWrittenException(failed);
        }
    }
}
