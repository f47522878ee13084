package piecewright.oracle;

/** A rule that a plan breaks, at which step, and how. */
public record Fault(String rule, String step, String how) {
    @Override
    public String toString() {
        return rule + " at " + step + ": " + how;
    }
}
