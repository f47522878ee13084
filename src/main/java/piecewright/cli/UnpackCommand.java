package piecewright.cli;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.List;
import java.util.Objects;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Parameters;
import piecewright.app.NotWrittenException;
import piecewright.app.move.Unpack;
import piecewright.store.StoreException;
import piecewright.text.Phrases;

/** Lays a packed workspace out in a new folder. */
@Command(
        name = "unpack",
        mixinStandardHelpOptions = true,
        sortOptions = false,
        description = "Lays a workspace that was packed out in a new folder, on this machine or another.",
        footer = {"", "Ends with 0 unpacked, 2 something given is wrong, 3 it could not be written."})
final class UnpackCommand implements Callable<Integer> {
    private final Surroundings surroundings;

    @Parameters(index = "0", paramLabel = "FILE", description = "A file made by pack.")
    private @Nullable Path file;

    @Mixin
    private final WorkspaceOptions workspaceOptions = new WorkspaceOptions();

    UnpackCommand(Surroundings surroundings) {
        this.surroundings = surroundings;
    }

    @Override
    public Integer call() throws StoreException, NotWrittenException {
        Path folder = workspaceOptions.folder(surroundings);
        List<String> left = Unpack.of(Objects.requireNonNull(file), folder);
        PrintWriter err = surroundings.streams().err();
        left.forEach(sentence -> err.println("piecewright: " + sentence));
        surroundings.streams().out().println(Phrases.say("pack.undone", folder.toString()));
        return Ending.DONE;
    }
}
