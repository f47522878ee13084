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
import piecewright.app.move.Pack;
import piecewright.store.StoreException;
import piecewright.text.Phrases;

/** Packs the workspace into one file. */
@Command(
        name = "pack",
        mixinStandardHelpOptions = true,
        sortOptions = false,
        description = "Packs the workspace, and what its batches are made from, into one file to keep or to move.",
        footer = {"", "Ends with 0 packed, 2 something given is wrong, 3 it could not be written."})
final class PackCommand implements Callable<Integer> {
    private final Surroundings surroundings;

    @Parameters(index = "0", paramLabel = "FILE", description = "The file to make, such as malting-2027.zip.")
    private @Nullable Path file;

    @Mixin
    private final WorkspaceOptions workspaceOptions = new WorkspaceOptions();

    PackCommand(Surroundings surroundings) {
        this.surroundings = surroundings;
    }

    @Override
    public Integer call() throws StoreException, NotWrittenException {
        Path target = Objects.requireNonNull(file);
        List<String> left = Pack.of(workspaceOptions.folder(surroundings), target);
        PrintWriter err = surroundings.streams().err();
        left.forEach(sentence -> err.println("piecewright: " + sentence));
        surroundings.streams().out().println(Phrases.say("pack.done", target.toString()));
        return Ending.DONE;
    }
}
