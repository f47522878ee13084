package piecewright.style;

import java.util.Objects;
import piecewright.quantity.FractionRange;
import piecewright.quantity.HoursRange;

/**
 * How a style heats itself in the insulated box after growth.
 *
 * @param packingFraction moisture when packed, preferred, wet basis
 * @param packing moisture when packed that is still the style, wet basis
 * @param indexHours couch index X when the couch is broken, preferred, hours at 48 °C and 40 %
 * @param acceptableIndex couch index that is still the style, hours
 * @param longestHours never longer in the box, hours, more than 0
 * @param checks hours between looks at the thermometer: low preferred, high never exceeded
 * @param spreadAboveC hotter than this and the pile is spread and turned; no plan lets it come so far, °C
 */
public record HotCouchSchedule(
        double packingFraction,
        FractionRange packing,
        double indexHours,
        HoursRange acceptableIndex,
        double longestHours,
        HoursRange checks,
        double spreadAboveC) {
    public HotCouchSchedule {
        Objects.requireNonNull(packing);
        Objects.requireNonNull(acceptableIndex);
        Objects.requireNonNull(checks);
        if (!packing.contains(packingFraction)) {
            throw new IllegalArgumentException("packingFraction must lie in packing: " + packingFraction);
        }
        if (!(indexHours >= acceptableIndex.lowHours() && indexHours <= acceptableIndex.highHours())) {
            throw new IllegalArgumentException("indexHours must lie in acceptableIndex: " + indexHours);
        }
        if (!(longestHours > 0 && checks.lowHours() > 0)) {
            throw new IllegalArgumentException(
                    "longestHours and checks must be above 0: " + longestHours + ", " + checks.lowHours());
        }
    }

    /** The same, better broken at another index; what is still the style stays. */
    public HotCouchSchedule withIndexHours(double changedHours) {
        return new HotCouchSchedule(
                packingFraction, packing, changedHours, acceptableIndex, longestHours, checks, spreadAboveC);
    }

    /** The same aims, with more of packing moisture, index and heat still the style. */
    public HotCouchSchedule accepting(FractionRange otherPacking, HoursRange otherIndex, double otherC) {
        return new HotCouchSchedule(
                packingFraction, otherPacking, indexHours, otherIndex, longestHours, checks, otherC);
    }
}
