package piecewright.store;

import java.nio.file.Path;
import java.util.Objects;

/** A file cannot be read or written. The message is one line: file, what and where, how to mend. */
public final class StoreException extends Exception {
    private static final long serialVersionUID = 1L;

    private final transient Path path;

    public StoreException(Path path, String whatWhereMend) {
        super(oneLine(path, whatWhereMend));
        this.path = Objects.requireNonNull(path);
    }

    public StoreException(Path path, String whatWhereMend, Throwable cause) {
        super(oneLine(path, whatWhereMend), cause);
        this.path = Objects.requireNonNull(path);
    }

    /** The file it is about. */
    public Path path() {
        return path;
    }

    private static String oneLine(Path path, String message) {
        return (path + ": " + message)
                .replaceAll("[\\p{Cntrl}\\u2028\\u2029]+", " ")
                .strip();
    }
}
