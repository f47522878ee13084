package piecewright.learn;

import java.util.Objects;

/** Whether an observation was learned from, or why not. */
public sealed interface Verdict {
    /** It was. */
    record LearnedFrom() implements Verdict {}

    /** It was not, and probably for that cause: it asks to be read again or corrected. */
    record Questioned(Cause cause) implements Verdict {
        public Questioned {
            Objects.requireNonNull(cause);
        }
    }

    /** What probably went wrong. */
    enum Cause {
        /** Fits when read in the other unit, pounds for kilograms or Fahrenheit for Celsius. */
        OTHER_UNIT,
        /** Possible, but nothing believed of lot and kit explains it. */
        UNEXPLAINED
    }
}
