package piecewright.publish;

import java.time.Duration;

/**
 * How long to wait for a server.
 *
 * @param connect until it takes the call
 * @param answer until a whole answer is in
 * @param longestPause before another try when it is busy, whatever it asks for
 * @param tries of one request when it is busy, 1 or more
 */
public record Patience(Duration connect, Duration answer, Duration longestPause, int tries) {
    public Patience {
        if (tries < 1) throw new IllegalArgumentException("tries must be 1 or more: " + tries);
    }

    /** 10 s to connect, 30 s for an answer, three tries with up to 20 s between them. */
    public static Patience usual() {
        return new Patience(Duration.ofSeconds(10), Duration.ofSeconds(30), Duration.ofSeconds(20), 3);
    }
}
