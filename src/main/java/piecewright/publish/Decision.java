package piecewright.publish;

import java.util.Objects;
import java.util.UUID;

/**
 * What the person wants done about a {@link Conflict}.
 *
 * @param seen from the conflict; if the copy has changed again since, the question is asked again
 */
public record Decision(UUID uid, Choice choice, String seen) {
    public Decision {
        Objects.requireNonNull(uid);
        Objects.requireNonNull(choice);
        Objects.requireNonNull(seen);
    }

    /** Seen of an entry that is not there. */
    static final String MISSING = "";

    /** To leave an entry out that somebody took away. */
    public static Decision leavingOut(UUID uid) {
        return new Decision(uid, Choice.KEEP_THEIRS, MISSING);
    }

    /** Whose copy stays. */
    public enum Choice {
        /** Theirs, until the plan changes this event again. */
        KEEP_THEIRS,
        /** The plan's. */
        OVERWRITE
    }

    public static Decision about(Conflict conflict, Choice choice) {
        return new Decision(conflict.uid(), choice, conflict.seen());
    }
}
