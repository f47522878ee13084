package piecewright.cli;

import java.nio.file.Path;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import piecewright.app.HowSure;
import piecewright.desktop.Setting;
import piecewright.desktop.Start;
import piecewright.plan.ModelParameters;
import piecewright.store.StoreException;

/** Opens the window. The toolkit is loaded by nothing else. */
@Command(
        name = "window",
        mixinStandardHelpOptions = true,
        sortOptions = false,
        description = "Opens the window.",
        footer = {"", "Ends with 0 when the window is closed, 2 when the folder cannot be used."})
final class WindowCommand implements Callable<Integer> {
    private final Surroundings surroundings;

    @Option(
            names = "--folder",
            paramLabel = "DIR",
            description = "Where lots, houses and batches are kept; made with a demo when there is none."
                    + " Left out: piecewright in your home folder.")
    private @Nullable Path folder;

    @Mixin
    private final UnitOptions unitOptions = new UnitOptions();

    WindowCommand(Surroundings surroundings) {
        this.surroundings = surroundings;
    }

    @Override
    public Integer call() throws OptionException, StoreException {
        Path used = folder == null ? Path.of(System.getProperty("user.home", "."), "piecewright") : folder;
        Start.open(new Setting(
                used,
                unitOptions.displayUnits(surroundings.locale()),
                surroundings.clock(),
                surroundings.newId(),
                surroundings.planner(),
                surroundings.continuation(),
                new HowSure(ModelParameters.defaults())));
        return Ending.DONE;
    }
}
