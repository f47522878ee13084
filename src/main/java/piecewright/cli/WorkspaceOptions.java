package piecewright.cli;

import java.io.PrintWriter;
import java.nio.file.Path;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Option;
import piecewright.app.Mending;
import piecewright.app.WorkspaceNames;
import piecewright.store.Links;
import piecewright.store.StoreException;

/** Which workspace names belong to. What can no longer be read there is put back from its copy, and told. */
final class WorkspaceOptions {
    @Option(
            names = "--workspace",
            paramLabel = "DIR",
            description = "The folder in which lots, houses and batches are kept. A bare word such as spring names a"
                    + " batch, lot or house in it; anything with a dot or a folder is a path. Left out: the folder"
                    + " your system has for such things, see the README.")
    private @Nullable Path workspace;

    Path folder(Surroundings surroundings) {
        return workspace == null ? surroundings.workspace() : workspace;
    }

    /** The file of a kept batch. */
    Path batch(Path typed, Surroundings surroundings) throws StoreException {
        Path file = names(surroundings).batch(typed);
        PrintWriter err = surroundings.streams().err();
        for (String sentence : Mending.throughLink(file)) err.println("piecewright: " + sentence);
        for (String sentence : Mending.batch(file)) err.println("piecewright: " + sentence);
        return Links.end(file);
    }

    /** The file a batch is to be kept in. */
    Path batchToKeep(Path typed, Surroundings surroundings) throws StoreException {
        return names(surroundings).batchToKeep(typed);
    }

    Path lot(Path typed, Surroundings surroundings) throws StoreException {
        return mended(names(surroundings).lot(typed), surroundings);
    }

    Path house(Path typed, Surroundings surroundings) throws StoreException {
        return mended(names(surroundings).house(typed), surroundings);
    }

    private WorkspaceNames names(Surroundings surroundings) {
        return new WorkspaceNames(folder(surroundings));
    }

    private static Path mended(Path file, Surroundings surroundings) throws StoreException {
        PrintWriter err = surroundings.streams().err();
        for (String sentence : Mending.learned(file)) err.println("piecewright: " + sentence);
        return file;
    }
}
