package piecewright.app.move;

import java.nio.file.Path;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.TreeMap;

/**
 * Where packed files lay, so that what names them can be led to where they lie now. Paths are texts of the system they
 * were packed on, which may write them otherwise than this one.
 *
 * @param root the workspace's folder
 * @param elsewhere files outside it that belong to it: entry of the pack by path
 */
record Manifest(String root, Map<String, String> elsewhere) {
    /** Entries of files that lay outside the workspace begin so. */
    static final String ELSEWHERE = "elsewhere/";

    Manifest {
        Objects.requireNonNull(root);
        elsewhere = Map.copyOf(elsewhere);
    }

    /** Where a file lies in the unpacked workspace; empty when it was not packed. */
    Optional<Path> led(String path, Path workspace) {
        String entry = elsewhere.get(path);
        if (entry != null) return Optional.of(workspace.resolve(entry));
        String plain = path.replace('\\', '/');
        String start = root.replace('\\', '/') + "/";
        return plain.startsWith(start)
                ? Optional.of(workspace.resolve(plain.substring(start.length())))
                : Optional.empty();
    }

    Map<String, String> sorted() {
        return new TreeMap<>(elsewhere);
    }
}
