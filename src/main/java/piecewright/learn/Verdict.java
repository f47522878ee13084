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
        /** Heavier than grain can be that got no water: weighed with its vessel. */
        VESSEL_NOT_TARED,
        /** Lighter than its own dry matter: only a part weighed, or the vessel taken off twice. */
        BELOW_DRY_MATTER,
        /** Fits when read in the other unit, pounds for kilograms or Fahrenheit for Celsius. */
        OTHER_UNIT,
        /** No pile of living grain is so cold or hot. */
        IMPOSSIBLE_TEMPERATURE,
        /** No pile left alone changes its temperature so fast. */
        JUMP,
        /** Corns do not shrink. */
        SHRUNK,
        /** Possible, but nothing believed of lot and kit explains it. */
        UNEXPLAINED
    }
}
