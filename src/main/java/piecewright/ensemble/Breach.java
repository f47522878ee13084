package piecewright.ensemble;

import java.util.Objects;

/**
 * An act out of its soft window.
 *
 * @param severity whether it is past the hard limit too
 */
public record Breach(String actId, Fault fault, Severity severity) {
    /** How far. */
    public enum Severity {
        SOFT,
        HARD
    }

    public Breach {
        Objects.requireNonNull(actId);
        Objects.requireNonNull(fault);
        Objects.requireNonNull(severity);
    }
}
