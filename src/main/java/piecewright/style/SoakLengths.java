package piecewright.style;

import java.util.Objects;
import piecewright.quantity.HoursRange;

/**
 * How long immersions of a style last in water of about 15 °C where nothing else speaks against it. Grain without a
 * husk packs, lets no air through and drinks fast: its soaks are shorter, and so are all their limits. Colder water makes
 * them longer and warmer water shorter, by one table for all grains; none is longer than barley's.
 *
 * @param first the first immersion, hours, high more than 0
 * @param later each later one, hours, high more than 0
 */
public record SoakLengths(HoursRange first, HoursRange later) {
    /** Judgement: practice, a first immersion of barley of 6 to 8 h is best. */
    private static final HoursRange USUAL_FIRST = new HoursRange(6, 8);
    /** Judgement: practice, later immersions of up to 8 h; a dip of half an hour fills the husk again. */
    private static final HoursRange USUAL_LATER = new HoursRange(0.5, 8);

    public SoakLengths {
        Objects.requireNonNull(first);
        Objects.requireNonNull(later);
        if (!(first.highHours() > 0 && later.highHours() > 0)) {
            throw new IllegalArgumentException("soaks must last: " + first + ", " + later);
        }
    }

    /** Barley in its husk. */
    public static SoakLengths usual() {
        return new SoakLengths(USUAL_FIRST, USUAL_LATER);
    }

    /** Limits of the first immersion as a share of barley's, 1 at most. */
    public double firstRatio() {
        return Math.min(1, first.highHours() / USUAL_FIRST.highHours());
    }

    /** The same of later ones. */
    public double laterRatio() {
        return Math.min(1, later.highHours() / USUAL_LATER.highHours());
    }
}
