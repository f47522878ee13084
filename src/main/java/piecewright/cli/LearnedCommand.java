package piecewright.cli;

import java.nio.file.Path;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import piecewright.app.LearnedReport;
import piecewright.store.StoreException;
import piecewright.text.DisplayUnits;

/** Says what earlier batches taught of a lot or of a house's kit. */
@Command(
        name = "learned",
        mixinStandardHelpOptions = true,
        sortOptions = false,
        description = "Says what earlier batches taught about a lot, or about a house's kit: before and now.",
        footer = {
            "",
            "It is kept beside the file, in NAME.learned.json, and plans go by it. Delete that file to forget.",
            "Ends with 0 said, 2 something given is wrong."
        })
final class LearnedCommand implements Callable<Integer> {
    private final Surroundings surroundings;

    @Option(names = "--lot", paramLabel = "FILE", description = "The lot of grain, a JSON file.")
    private @Nullable Path lot;

    @Option(names = "--house", paramLabel = "FILE", description = "The household, a JSON file.")
    private @Nullable Path house;

    @Mixin
    private final WorkspaceOptions workspaceOptions = new WorkspaceOptions();

    @Mixin
    private final UnitOptions unitOptions = new UnitOptions();

    @Option(names = "--json", description = "Print the figures as JSON instead of a table.")
    private boolean json;

    LearnedCommand(Surroundings surroundings) {
        this.surroundings = surroundings;
    }

    @Override
    public Integer call() throws OptionException, StoreException {
        DisplayUnits units = unitOptions.displayUnits(surroundings.locale());
        LearnedReport report = report();
        surroundings.streams().out().print(json ? report.json() : report.page(units));
        return Ending.DONE;
    }

    private LearnedReport report() throws OptionException, StoreException {
        if (lot != null && house != null) throw new OptionException("--house", "cannot stand beside --lot; ask twice");
        if (lot != null) return LearnedReport.ofLot(workspaceOptions.lot(lot, surroundings));
        if (house != null) return LearnedReport.ofHouse(workspaceOptions.house(house, surroundings));
        throw new OptionException("--lot", "is missing; give the file of a lot of grain, or --house and a household");
    }
}
