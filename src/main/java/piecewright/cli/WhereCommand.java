package piecewright.cli;

import java.time.Instant;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import piecewright.app.BatchAtHand;
import piecewright.replan.Where;
import piecewright.store.StoreException;
import piecewright.store.UnderWayJson;
import piecewright.text.DisplayUnits;
import piecewright.text.WherePage;

/** Says where a batch stands and what comes next. */
@Command(
        name = "where",
        mixinStandardHelpOptions = true,
        sortOptions = false,
        description = "Says where a batch stands: moisture, growth, what comes next and when.",
        footer = {"", "Ends with 0 said, 1 the house has no kit for it any more, 2 something given is wrong."})
final class WhereCommand implements Callable<Integer> {
    private final Surroundings surroundings;

    @Mixin
    private final BatchOptions batchOptions = new BatchOptions();

    @Mixin
    private final UnitOptions unitOptions = new UnitOptions();

    @Option(names = "--json", description = "Print it as JSON instead of sentences.")
    private boolean json;

    WhereCommand(Surroundings surroundings) {
        this.surroundings = surroundings;
    }

    @Override
    public Integer call() throws OptionException, StoreException {
        DisplayUnits units = unitOptions.displayUnits(surroundings.locale());
        BatchAtHand batch = batchOptions.open(surroundings);
        Instant now = batchOptions.now(surroundings, batch.zone());
        Where where = batch.where(now)
                .orElseThrow(() -> new StoreException(
                        batch.file(), "its house has no kit that holds this batch any more; mend the house"));
        surroundings
                .streams()
                .out()
                .print(
                        json
                                ? new UnderWayJson(units, batch.zone()).where(where)
                                : new WherePage(units, batch.zone()).of(where));
        return Ending.DONE;
    }
}
