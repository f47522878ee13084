package piecewright.replan;

import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;

/**
 * What practice does when something went wrong.
 *
 * @param entry the journal entry that shows it
 * @param actId the act of the new plan that carries it out; empty when it is done at once, or the batch ends
 * @param waterKg water it takes, kg
 */
public record Rescue(Rule rule, OptionalInt entry, Optional<String> actId, OptionalDouble waterKg) {
    public Rescue {
        Objects.requireNonNull(rule);
        Objects.requireNonNull(entry);
        Objects.requireNonNull(actId);
        Objects.requireNonNull(waterKg);
    }

    /** The rules, worst first. */
    public enum Rule {
        SPOILED,
        MOULD_EVERYWHERE,
        SOUR_WATER,
        TAKEN_OFF_WET,
        TOO_HOT_WHILE_WET,
        POWER_OUT_WET,
        POWER_OUT_DAMP,
        POWER_OUT_DRY,
        STEEP_RAN_LONG,
        SHORT_OF_WATER,
        OVER_WET,
        WET_FILM,
        TOO_WARM,
        TOO_COLD,
        NOT_HEATING,
        COUCH_STALLED,
        COUCH_TOO_HOT,
        KILN_NOT_READY,
        DRY_ROOTS,
        MATTED,
        UNEVEN,
        SOME_FUZZ,
        OVERGROWN,
        TOO_DARK,
        TOO_PALE,
        NOTHING_RECORDED
    }
}
