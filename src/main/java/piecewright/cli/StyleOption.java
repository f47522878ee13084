package piecewright.cli;

import java.nio.file.Path;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Option;
import piecewright.store.StoreException;
import piecewright.store.StyleLibrary;

/** Where styles come from. */
final class StyleOption {
    @Option(
            names = "--schedules",
            paramLabel = "DIR",
            description = "A folder with styles of your own, one JSON file each; they come before the built-in ones.")
    private @Nullable Path folder;

    StyleLibrary library() throws StoreException {
        StyleLibrary builtIn = StyleLibrary.builtIn();
        return folder == null ? builtIn : builtIn.with(folder);
    }
}
