package piecewright.chart;

/** A picture cannot be drawn as pixels on this machine, because Java finds no letters to draw with. */
public final class UndrawableException extends Exception {
    private static final long serialVersionUID = 1;

    UndrawableException(Throwable cause) {
        super("no letters to draw with", cause);
    }
}
