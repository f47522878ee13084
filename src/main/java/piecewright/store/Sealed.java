package piecewright.store;

import java.nio.file.Path;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import piecewright.store.GoodCopy.Mended;
import tools.jackson.databind.node.ObjectNode;

/**
 * Documents that carry a checksum, held against it. One that no longer says what was kept was changed by somebody or by
 * a failing disk. A disk does not touch the time of a file: where the file still has the time of its copy, nobody saved
 * it since, so it is damaged. Otherwise it is taken as somebody's edit, and told of.
 */
public final class Sealed {
    private Sealed() {}

    /**
     * A document that says something else than was kept.
     *
     * @param copy where what was kept lies; empty when there is no good copy
     * @param differences the first few keys that differ, with both values
     */
    public record Edited(Optional<Path> copy, List<String> differences) {
        public Edited {
            Objects.requireNonNull(copy);
            differences = List.copyOf(differences);
        }
    }

    /** What was edited since it was kept; empty when the file says what was kept, or cannot be read at all. */
    public static Optional<Edited> edited(Path file) throws StoreException {
        Optional<ObjectNode> document = document(file);
        if (document.isEmpty() || Checksum.isRight(document.get())) return Optional.empty();
        Path copy = GoodCopy.of(file);
        Optional<ObjectNode> kept = document(copy).filter(Checksum::isRight);
        return Optional.of(
                kept.isEmpty()
                        ? new Edited(Optional.empty(), List.of())
                        : new Edited(Optional.of(copy), Differences.between(kept.get(), document.get())));
    }

    /** Puts the copy in place of a document that changed without being saved; to be called under the folder's lock. */
    public static Optional<Mended> mend(Path file, FolderLock lock) throws StoreException {
        if (!lock.holds() || !isDamaged(file)) return Optional.empty();
        return Optional.of(GoodCopy.replaced(file, TextFile.bytes(GoodCopy.of(file), TextFile.LARGE_BYTES)));
    }

    /** Whether the document changed without being saved, and has a good copy. */
    public static boolean isDamaged(Path file) throws StoreException {
        return edited(file).filter(edited -> edited.copy().isPresent()).isPresent() && GoodCopy.isOfOneTime(file);
    }

    private static Optional<ObjectNode> document(Path file) {
        try {
            return Optional.of(JsonText.parse(file, TextFile.read(file, TextFile.LARGE_BYTES)));
        } catch (StoreException unreadable) {
            return Optional.empty();
        }
    }
}
