package piecewright.cli;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import piecewright.app.LotReport;
import piecewright.assess.Verdict;
import piecewright.store.StoreException;
import piecewright.text.DisplayUnits;

/** Says whether a lot is worth malting, and why. */
@Command(
        name = "judge",
        mixinStandardHelpOptions = true,
        sortOptions = false,
        description = "Says whether a lot is worth malting, why, and what to test next.",
        footer = {"", "Ends with 0 malt it or a share of it, 1 wait or do not malt, 2 something given is wrong."})
final class JudgeCommand implements Callable<Integer> {
    private final Surroundings surroundings;

    @Option(names = "--lot", paramLabel = "FILE", description = "The lot of grain, a JSON file.")
    private @Nullable Path lot;

    @Mixin
    private final WorkspaceOptions workspaceOptions = new WorkspaceOptions();

    @Mixin
    private final UnitOptions unitOptions = new UnitOptions();

    @Option(names = "--json", description = "Print the judgement as JSON instead of sentences.")
    private boolean json;

    JudgeCommand(Surroundings surroundings) {
        this.surroundings = surroundings;
    }

    @Override
    public Integer call() throws OptionException, StoreException {
        DisplayUnits units = unitOptions.displayUnits(surroundings.locale());
        if (lot == null) throw new OptionException("--lot", "is missing; give the file of a lot of grain");
        LotReport report = LotReport.of(workspaceOptions.lot(lot, surroundings), LocalDate.now(surroundings.clock()));
        surroundings.streams().out().print(json ? report.json(units) : report.page(units));
        Verdict verdict = report.judgement().verdict();
        boolean refused = verdict == Verdict.WAIT_AND_RETEST || verdict == Verdict.DO_NOT_MALT;
        return refused ? Ending.NOT_POSSIBLE : Ending.DONE;
    }
}
