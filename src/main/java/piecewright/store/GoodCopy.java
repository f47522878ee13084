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
        Path whole = Links.end(file);
        return whole.resolveSibling("." + whole.getFileName() + ".copy");
    }

    /** Replaces or makes the file and its copy; fails with the old ones in place, or the copy alone ahead. */
    static void write(Path file, String text) throws StoreException {
        byte[] bytes = text.getBytes(StandardCharsets.UTF_8);
        AtomicFile.mustHaveAPlace(file);
        writeCopy(file, bytes);
        AtomicFile.writeOwn(file, bytes);
        giveOneTime(file);
    }

    /** The file gets the time of its copy, to the tick: from then on a file of another time was saved by somebody. */
    private static void giveOneTime(Path file) {
        try {
            Files.setLastModifiedTime(Links.end(file), Files.getLastModifiedTime(of(file)));
        } catch (IOException keepsItsOwn) {
            // then a change counts as somebody's, and is told of
        }
    }

    /** Whether nobody saved the file since it was kept; a disk that forgets a bit does not touch its time. */
    static boolean isOfOneTime(Path file) {
        try {
            return Files.getLastModifiedTime(file).equals(Files.getLastModifiedTime(of(file)));
        } catch (IOException unknown) {
            return false;
        }
    }

    /** Replaces or makes the copy alone; it is read by whoever may read the file. */
    static void writeCopy(Path file, byte[] bytes) throws StoreException {
        Path copy = of(file);
        AtomicFile.writeOwn(copy, bytes);
        try {
            var mode = Modes.of(Links.end(file));
            if (mode.isPresent()) Modes.give(copy, mode.get());
        } catch (IOException failed) {
            throw WriteFailure.of(copy, "cannot be kept as private as its file", bytes.length, failed);
        }
    }

    /** Removes the file and its copy. */
    public static void remove(Path file) throws StoreException {
        AtomicFile.remove(file);
        AtomicFile.remove(of(file));
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

    /** Keeps the copy under another name before it is written anew, because its file says something else. */
    static void layAside(Path file) throws StoreException {
        Path earlier = free(file, ".earlier");
        try {
            Files.move(of(file), earlier);
        } catch (IOException failed) {
            throw WriteFailure.of(earlier, "cannot be kept", 0, failed);
        }
    }

    /** Puts these bytes in place of a damaged file and keeps what lay there under another name. */
    static Mended replaced(Path file, byte[] bytes) throws StoreException {
        Path aside = free(file, ".damaged");
        try {
            Files.copy(file, aside);
            AtomicFile.write(file, bytes);
            return new Mended(file, aside);
        } catch (IOException failed) {
            throw WriteFailure.of(file, "is damaged and cannot be put back from its copy", bytes.length, failed);
        }
    }

    /** A name beside the file that nothing has yet. */
    static Path free(Path file, String ending) {
        Path free = file.resolveSibling(file.getFileName() + ending);
        for (int number = 2; Files.exists(free); number++) {
            free = file.resolveSibling(file.getFileName() + ending + "-" + number);
        }
        return free;
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
