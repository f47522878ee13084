package piecewright.app;

import piecewright.store.StoreException;

/** All was well but a file could not be written. The message is one line: file, what, how to mend. */
public final class NotWrittenException extends Exception {
    private static final long serialVersionUID = 1L;

    public NotWrittenException(StoreException cause) {
        super(cause.getMessage(), cause);
    }
}
