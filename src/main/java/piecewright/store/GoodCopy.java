package piecewright.store;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Objects;
import java.util.Optional;

/**
 * A second copy of a file of ours, hidden beside it, written whole before the file itself. When the file can no longer
 * be read, after a failing disk or another program, the copy takes its place.
 */
public final class GoodCopy {
    private GoodCopy() {}

    /** Where the copy of a file lies. */
    static Path of(Path file) {
        return file.resolveSibling("." + file.getFileName() + ".copy");
    }

    /** Replaces or makes the file and its copy; fails with the old ones in place, or the copy alone ahead. */
    static void write(Path file, String text) throws StoreException {
        byte[] bytes = text.getBytes(StandardCharsets.UTF_8);
        AtomicFile.write(of(file), bytes);
        AtomicFile.write(file, bytes);
    }

    /** Says whether a file can be read by trying. */
    public interface Reader {
        void read(Path file) throws StoreException;
    }

    /**
     * What was put back.
     *
     * @param aside what lay there before, kept under this name
     */
    public record Mended(Path file, Path aside) {
        public Mended {
            Objects.requireNonNull(file);
            Objects.requireNonNull(aside);
        }
    }

    /** Puts the copy in place of a file that cannot be read; empty when it can, or is not there, or the copy cannot. */
    public static Optional<Mended> mend(Path file, Reader reader) throws StoreException {
        if (!Files.isRegularFile(file) || isReadable(file, reader)) return Optional.empty();
        Path copy = of(file);
        if (!Files.isRegularFile(copy) || !isReadable(copy, reader)) return Optional.empty();
        return Optional.of(replaced(file, TextFile.bytes(copy, TextFile.LARGE_BYTES)));
    }

    /** Puts these bytes in place of a damaged file and keeps what lay there under another name. */
    static Mended replaced(Path file, byte[] bytes) throws StoreException {
        Path aside = file.resolveSibling(file.getFileName() + ".damaged");
        for (int number = 2; Files.exists(aside); number++) {
            aside = file.resolveSibling(file.getFileName() + ".damaged-" + number);
        }
        try {
            Files.copy(file, aside);
            AtomicFile.write(file, bytes);
            return new Mended(file, aside);
        } catch (IOException failed) {
            throw WriteFailure.of(file, "is damaged and cannot be put back from its copy", bytes.length, failed);
        }
    }

    /** Whether a reader takes the file. */
    public static boolean isReadable(Path file, Reader reader) {
        try {
            reader.read(file);
            return true;
        } catch (StoreException damaged) {
            return false;
        }
    }
}
