package piecewright.style;

import java.util.Objects;
import piecewright.quantity.FractionRange;
import piecewright.quantity.HoursRange;

/**
 * How a style grows.
 *
 * @param acrospireFraction mean acrospire at loading, preferred, share of the corn's length
 * @param acceptable mean acrospire at loading that is still the style
 * @param keepMoistureFraction sprinkle when the bed falls below this, wet basis
 * @param warmestGrainC grain temperature the style should not pass on the floor, °C
 * @param deepestBedCm deepest bed that this grain may lie in, cm
 * @param wither hours of thin, cool pre-drying allowed before the kiln; high 0 for none
 */
public record GrowthSchedule(
        double acrospireFraction,
        FractionRange acceptable,
        double keepMoistureFraction,
        double warmestGrainC,
        double deepestBedCm,
        HoursRange wither) {
    public GrowthSchedule {
        Objects.requireNonNull(acceptable);
        Objects.requireNonNull(wither);
        if (!acceptable.contains(acrospireFraction)) {
            throw new IllegalArgumentException("acrospireFraction must lie in acceptable: " + acrospireFraction);
        }
    }

    public GrowthSchedule withAcceptable(FractionRange changed) {
        return new GrowthSchedule(
                acrospireFraction, changed, keepMoistureFraction, warmestGrainC, deepestBedCm, wither);
    }
}
