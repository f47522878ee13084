package piecewright.publish;

/** The server cannot be reached, or says no to everything; ends a publication. Never leaves this package. */
final class ServerException extends Exception {
    private static final long serialVersionUID = 1L;
    private final int status;

    /** No answer at all. */
    ServerException(String reason) {
        super(reason);
        this.status = 0;
    }

    ServerException(int status) {
        super("status " + status);
        this.status = status;
    }

    /** HTTP status; 0 if there was no answer. */
    int status() {
        return status;
    }
}
