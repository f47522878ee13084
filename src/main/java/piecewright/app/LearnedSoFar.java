package piecewright.app;

import java.time.Instant;
import piecewright.journal.Report;
import piecewright.learn.Lessons;
import piecewright.learn.Lessons.Outcome;
import piecewright.learn.Taught;
import piecewright.plan.PlanRequest;
import piecewright.store.StoreException;

/** A batch's wish with its lot and kit as this batch itself has taught them so far; nothing of it is kept. */
final class LearnedSoFar {
    /** Judgement: more readings than anybody makes by hand tell nothing more and take the estimator minutes. */
    private static final int MOST_READINGS = 200;

    private LearnedSoFar() {}

    static PlanRequest of(Lessons.Batch batch, BatchLessons lessons) throws StoreException {
        PlanRequest request = batch.request();
        long readings = batch.journal().entries().stream()
                .filter(entry -> entry.report() instanceof Report.Measured)
                .count();
        if (readings == 0 || readings > MOST_READINGS) return request;
        if (!(lessons.soFar(batch, Instant.EPOCH) instanceof Outcome.Taught taught)) return request;
        return Taught.soFar(request, taught);
    }
}
