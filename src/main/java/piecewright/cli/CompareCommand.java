package piecewright.cli;

import java.nio.file.Path;
import java.time.Instant;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import piecewright.app.BatchAtHand;
import piecewright.app.CompareBatches;
import piecewright.learn.Comparison;
import piecewright.store.FinishJson;
import piecewright.store.StoreException;
import piecewright.text.ComparePage;
import piecewright.text.DisplayUnits;

/** Holds two finished batches against each other. */
@Command(
        name = "compare",
        mixinStandardHelpOptions = true,
        sortOptions = false,
        description = "Holds two finished batches against each other: what went in differently, what came out"
                + " differently, and whether that is more than noise.",
        footer = {"", "Ends with 0 compared, 2 something given is wrong or a batch is not finished."})
final class CompareCommand implements Callable<Integer> {
    private final Surroundings surroundings;

    @Mixin
    private final BatchOptions batchOptions = new BatchOptions();

    @Parameters(index = "1", paramLabel = "OTHER", description = "The batch to hold against it, likewise.")
    private @Nullable Path other;

    @Mixin
    private final UnitOptions unitOptions = new UnitOptions();

    @Option(names = "--json", description = "Print it as JSON instead of sentences.")
    private boolean json;

    CompareCommand(Surroundings surroundings) {
        this.surroundings = surroundings;
    }

    @Override
    public Integer call() throws OptionException, StoreException {
        DisplayUnits units = unitOptions.displayUnits(surroundings.locale());
        BatchAtHand first = batchOptions.open(surroundings);
        BatchAtHand second = batchOptions.open(java.util.Objects.requireNonNull(other), surroundings);
        Instant now = batchOptions.now(surroundings, first.zone());
        Comparison comparison = CompareBatches.of(first, second, units, now);
        ComparePage page = new ComparePage(units);
        surroundings
                .streams()
                .out()
                .print(
                        json
                                ? FinishJson.compared(comparison, page.sentences(comparison))
                                : page.of(name(first), name(second), comparison));
        return Ending.DONE;
    }

    private static String name(BatchAtHand batch) {
        return String.valueOf(batch.file().getFileName()).replaceAll("\\.json$", "");
    }
}
