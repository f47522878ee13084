package piecewright.app.files;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;
import piecewright.store.StoreException;

/** The lots, houses or batches that lie in a folder. */
public final class FolderFiles {
    private static final String ENDING = ".json";

    /** What lies beside a lot or house by its stem. */
    private static final String LEARNED = ".learned" + ENDING;

    /** What lies beside a batch or a calendar by its whole name. */
    private static final Set<String> COMPANIONS = Set.of(
            ".ledger" + ENDING, ".published" + ENDING, ".calendar" + ENDING, ".live" + ENDING, ".batches" + ENDING);

    private FolderFiles() {}

    /** Whether a file is a lot, house or batch, and not one that belongs to one or to a calendar. */
    public static boolean isThing(Path file) {
        String name = String.valueOf(file.getFileName());
        return name.endsWith(ENDING)
                && !name.startsWith(".")
                && !name.endsWith(LEARNED)
                && COMPANIONS.stream().noneMatch(ending -> belongs(name, ending));
    }

    /** "all.ics.batches.json" belongs to "all.ics"; "winter.live.json" is a name as somebody may choose it. */
    private static boolean belongs(String name, String ending) {
        return name.endsWith(ending)
                && name.substring(0, name.length() - ending.length()).indexOf('.', 1) > 0;
    }

    /** The things in this folder by name, each once whatever links lead to it; none where there is no such folder. */
    public static List<Path> in(Path folder) throws StoreException {
        if (!Files.exists(folder)) return List.of();
        if (!Files.isDirectory(folder)) {
            throw new StoreException(folder, "is a file where a folder belongs; move it away");
        }
        try (Stream<Path> files = Files.list(folder)) {
            Map<Path, Path> things = new LinkedHashMap<>();
            for (Path file : files.filter(FolderFiles::isThing).sorted().toList()) {
                things.merge(real(file), file, (one, other) -> Files.isSymbolicLink(one) ? other : one);
            }
            return things.values().stream().sorted().toList();
        } catch (IOException failed) {
            throw new StoreException(folder, "cannot be listed; check its permissions", failed);
        }
    }

    private static Path real(Path file) {
        try {
            return file.toRealPath();
        } catch (IOException leadsNowhere) {
            return file;
        }
    }

    /** The same; a folder that cannot be listed is told of instead. */
    public static List<Path> in(Path folder, EachFile told) {
        return told.read(folder, FolderFiles::in).orElse(List.of());
    }
}
