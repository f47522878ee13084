package piecewright.store;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileAttribute;
import java.nio.file.attribute.PosixFilePermission;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.Optional;
import java.util.Set;

/** Who may read and write files: what is a person's own stays theirs, and a mode somebody gave stays as it is. */
final class Modes {
    private static final FileAttribute<?>[] NONE = {};

    private Modes() {}

    /** For a new file that only its owner reads; nothing on systems without such modes. */
    static FileAttribute<?>[] ownFile(Path folder) {
        return knows(folder) ? with("rw-------") : NONE;
    }

    /** For a new folder that only its owner enters. */
    static FileAttribute<?>[] ownFolder(Path folder) {
        return knows(folder) ? with("rwx------") : NONE;
    }

    private static FileAttribute<?>[] with(String mode) {
        return new FileAttribute<?>[] {PosixFilePermissions.asFileAttribute(PosixFilePermissions.fromString(mode))};
    }

    private static boolean knows(Path file) {
        return file.getFileSystem().supportedFileAttributeViews().contains("posix");
    }

    /** The mode of a file that is there. */
    static Optional<Set<PosixFilePermission>> of(Path file) throws IOException {
        return knows(file) && Files.exists(file) ? Optional.of(Files.getPosixFilePermissions(file)) : Optional.empty();
    }

    static void give(Path file, Set<PosixFilePermission> mode) throws IOException {
        Files.setPosixFilePermissions(file, mode);
    }

    /** Refuses a file that its owner marked read-only, even where the system would let this program write. */
    static void mustNotBeReadOnly(Path file) throws StoreException {
        try {
            if (!Files.isRegularFile(file)) return;
            boolean kept = of(file).filter(mode -> !mode.contains(PosixFilePermission.OWNER_WRITE))
                    .isPresent();
            if (!kept && Files.isWritable(file)) return;
        } catch (IOException unknown) {
            return; // then writing itself says what is wrong
        }
        throw new StoreException(
                file, "is marked read-only and was left as it is; allow its owner to write it, or name another file");
    }
}
