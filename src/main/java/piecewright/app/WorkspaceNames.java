package piecewright.app;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import piecewright.app.files.FolderFiles;
import piecewright.store.StoreException;

/**
 * Files of a workspace by their names. A word without a dot and without a folder is such a name: "spring" is
 * batches/spring.json. Anything else is a path and stays as it is.
 */
public record WorkspaceNames(Path folder) {
    public WorkspaceNames {
        Objects.requireNonNull(folder);
    }

    /** Whether what was typed is a name in the workspace. */
    public static boolean isName(Path typed) {
        return !typed.isAbsolute()
                && typed.getNameCount() == 1
                && typed.toString().matches("[\\p{L}\\p{N}][\\p{L}\\p{N} _-]*");
    }

    /** The file of a batch that is kept. */
    public Path batch(Path typed) throws StoreException {
        return found("batch", typed, List.of("batches"));
    }

    /** The file of a lot. */
    public Path lot(Path typed) throws StoreException {
        return found("lot", typed, List.of("lots", "demo/lots"));
    }

    /** The file of a house. */
    public Path house(Path typed) throws StoreException {
        return found("house", typed, List.of("houses", "demo/houses"));
    }

    /** The file a batch is to be kept in; the workspace is made when a name asks for it. */
    public Path batchToKeep(Path typed) throws StoreException {
        if (!isName(typed)) return typed;
        return Workspace.open(folder).batches().resolve(typed + ".json");
    }

    private Path found(String what, Path typed, List<String> parts) throws StoreException {
        if (!isName(typed)) return typed;
        List<String> there = new ArrayList<>();
        for (String part : parts) {
            Path file = folder.resolve(part).resolve(typed + ".json");
            if (Files.exists(file)) return file;
            there.addAll(names(folder.resolve(part)));
        }
        String known = there.isEmpty() ? "none is kept here yet" : "those here are " + String.join(", ", there);
        throw new StoreException(
                folder,
                "there is no " + what + " named " + typed + " in this workspace; " + known
                        + ". For a file elsewhere write its path, such as ./" + typed + ".json");
    }

    private static List<String> names(Path part) throws StoreException {
        return FolderFiles.in(part).stream()
                .map(file -> file.getFileName().toString().replaceAll("\\.json$", ""))
                .toList();
    }
}
