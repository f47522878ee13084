package piecewright.cli;

import java.io.PrintWriter;
import java.time.Instant;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import piecewright.app.BatchAtHand;
import piecewright.app.NotWrittenException;
import piecewright.learn.Lessons.Outcome;
import piecewright.store.LessonsJson;
import piecewright.store.StoreException;
import piecewright.text.DisplayUnits;
import piecewright.text.LearnedPage;

/** Learns from what was recorded of a batch, for the next batch of its lot and in its kit. */
@Command(
        name = "learn",
        mixinStandardHelpOptions = true,
        sortOptions = false,
        description = "Learns from what was recorded of a batch; the next plan for its lot or its house goes by it.",
        footer = {
            "",
            "Learning from a batch again replaces what it taught before. See also: piecewright learned --help",
            "Ends with 0 learned, 1 nothing to learn, 2 something given is wrong, 3 a file could not be written."
        })
final class LearnCommand implements Callable<Integer> {
    private final Surroundings surroundings;

    @Mixin
    private final BatchOptions batchOptions = new BatchOptions();

    @Option(names = "--only-show", description = "Show what it teaches so far and keep nothing.")
    private boolean onlyShow;

    @Mixin
    private final UnitOptions unitOptions = new UnitOptions();

    @Option(names = "--json", description = "Print it as JSON instead of a table.")
    private boolean json;

    LearnCommand(Surroundings surroundings) {
        this.surroundings = surroundings;
    }

    @Override
    public Integer call() throws OptionException, StoreException, NotWrittenException {
        DisplayUnits units = unitOptions.displayUnits(surroundings.locale());
        BatchAtHand batch = batchOptions.open(surroundings);
        Instant now = batchOptions.now(surroundings, batch.zone());
        Outcome outcome = onlyShow
                ? batch.lessons().soFar(batch.told(), now)
                : batch.lessons().keep(batch.told(), now);
        String name = batch.told().request().lot().name();
        LearnedPage page = new LearnedPage(units);
        PrintWriter out = surroundings.streams().out();
        if (json) out.print(LessonsJson.write(name, outcome, page));
        else out.print(page.outcome(name, outcome, onlyShow ? LearnedPage.Kept.NO : LearnedPage.Kept.YES));
        return outcome instanceof Outcome.Taught ? Ending.DONE : Ending.NOT_POSSIBLE;
    }
}
