package piecewright.app;

import java.time.Instant;
import piecewright.learn.Comparison;
import piecewright.learn.Comparison.Account;
import piecewright.learn.Outcomes;
import piecewright.replan.Finished;
import piecewright.store.StoreException;
import piecewright.text.BatchInputs;
import piecewright.text.DisplayUnits;

/** Holds two batches whose malt was weighed against each other. */
public final class CompareBatches {
    private CompareBatches() {}

    public static Comparison of(BatchAtHand first, BatchAtHand second, DisplayUnits units, Instant now)
            throws StoreException {
        return Comparison.of(account(first, units, now), account(second, units, now));
    }

    private static Account account(BatchAtHand batch, DisplayUnits units, Instant now) throws StoreException {
        Finished finished = batch.finished(now)
                .orElseThrow(() -> new StoreException(
                        batch.file(), "its malt was not weighed yet; compare it when it is finished"));
        Finished.Outcome outcome = finished.outcome();
        Outcomes outcomes = new Outcomes(
                        outcome.at(), batch.request().house().kit().scale())
                .yield(outcome.maltKg(), outcome.grainKg())
                .steepOut(outcome.steepOutKg(), outcome.steepOutDryKg());
        outcome.acrospires().ifPresent(outcomes::acrospire);
        outcome.colourEbc().ifPresent(outcomes::colour);
        return new Account(new BatchInputs(units).of(batch.request(), finished), outcomes.all());
    }
}
