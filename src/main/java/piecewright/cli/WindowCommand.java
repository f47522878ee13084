package piecewright.cli;

import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
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
        description = "Opens the window on a workspace, which is made with a demo when there is none.",
        footer = {"", "Ends with 0 when the window is closed, 2 when the folder cannot be used."})
final class WindowCommand implements Callable<Integer> {
    private final Surroundings surroundings;

    @Mixin
    private final WorkspaceOptions workspaceOptions = new WorkspaceOptions();

    @Mixin
    private final UnitOptions unitOptions = new UnitOptions();

    WindowCommand(Surroundings surroundings) {
        this.surroundings = surroundings;
    }

    @Override
    public Integer call() throws OptionException, StoreException {
        Start.open(new Setting(
                workspaceOptions.folder(surroundings),
                unitOptions.displayUnits(surroundings.locale()),
                surroundings.clock(),
                surroundings.newId(),
                surroundings.planner(),
                surroundings.continuation(),
                new HowSure(ModelParameters.defaults())));
        return Ending.DONE;
    }
}
