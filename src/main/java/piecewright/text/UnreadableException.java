package piecewright.text;

/** What somebody typed cannot be read. The message is one sentence: what was typed, where it fails, how to write it. */
public final class UnreadableException extends Exception {
    private static final long serialVersionUID = 1L;

    public UnreadableException(String message) {
        super(message);
    }
}
