package piecewright.cli;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import piecewright.app.AllActs;
import piecewright.app.Workspace;
import piecewright.app.files.EachFile;
import piecewright.store.AheadJson;
import piecewright.store.StoreException;
import piecewright.text.ActsAhead;

/** Says what is to do in all batches under way, as one list. */
@Command(
        name = "agenda",
        mixinStandardHelpOptions = true,
        sortOptions = false,
        description = "Says what is to do in all batches under way, as one list in time order.",
        footer = {"", "Ends with 0 said, 2 something given is wrong."})
final class AgendaCommand implements Callable<Integer> {
    private static final int MOST_DAYS = 366;

    private final Surroundings surroundings;

    @Parameters(
            paramLabel = "BATCH",
            arity = "0..*",
            description =
                    "Batches kept with plan --into: names in the workspace, or files. Left out: all in the workspace.")
    private List<Path> named = new ArrayList<>();

    @Mixin
    private final WorkspaceOptions workspaceOptions = new WorkspaceOptions();

    @Mixin
    private final StyleOption styleOption = new StyleOption();

    @Option(names = "--days", paramLabel = "N", description = "How many days ahead. Left out: 14.")
    private int days = 14;

    @Mixin
    private final NowOption nowOption = new NowOption();

    @Mixin
    private final UnitOptions unitOptions = new UnitOptions();

    @Option(names = "--json", description = "Print it as JSON instead of a page.")
    private boolean json;

    AgendaCommand(Surroundings surroundings) {
        this.surroundings = surroundings;
    }

    @Override
    public Integer call() throws OptionException, StoreException {
        if (days < 1 || days > MOST_DAYS) {
            throw new OptionException("--days", days + " is not from 1 to " + MOST_DAYS);
        }
        AllActs all = new AllActs(styleOption.library(), surroundings.continuation());
        EachFile each = new EachFile();
        List<Path> files = files(each);
        ZoneId zone = AllActs.clock(files).orElse(ZoneOffset.UTC);
        Instant now = nowOption.now(surroundings, zone);
        ActsAhead ahead = all.of(files, now, Duration.ofDays(days), each);
        var out = surroundings.streams().out();
        out.print(json ? AheadJson.write(ahead) : ahead.page(unitOptions.displayUnits(surroundings.locale())));
        return named.isEmpty() || ahead.unread().isEmpty() ? Ending.DONE : Ending.BAD_INPUT;
    }

    private List<Path> files(EachFile each) throws StoreException {
        if (named.isEmpty()) {
            Workspace workspace = Workspace.open(workspaceOptions.folder(surroundings));
            PrintWriter err = surroundings.streams().err();
            workspace.mend().forEach(sentence -> err.println("piecewright: " + sentence));
            return workspace.batchFiles(each);
        }
        List<Path> files = new ArrayList<>();
        for (Path one : named) {
            each.read(one, name -> workspaceOptions.batch(name, surroundings)).ifPresent(files::add);
        }
        return files;
    }
}
