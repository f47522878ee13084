package piecewright.style;

import java.util.Objects;
import piecewright.quantity.FractionRange;

/**
 * How a style is steeped.
 *
 * @param target drained moisture at the last drain, preferred, wet basis, share of one
 * @param acceptable drained moisture at the last drain that is still the style, wet basis
 * @param fewestImmersions 1 or more
 * @param mostImmersions at least fewestImmersions, at most 6
 * @param soaks how long immersions last
 */
public record SteepSchedule(
        double targetFraction, FractionRange acceptable, int fewestImmersions, int mostImmersions, SoakLengths soaks) {
    /** With soaks as long as barley's. */
    public SteepSchedule(double targetFraction, FractionRange acceptable, int fewestImmersions, int mostImmersions) {
        this(targetFraction, acceptable, fewestImmersions, mostImmersions, SoakLengths.usual());
    }

    public SteepSchedule {
        Objects.requireNonNull(soaks);
        Objects.requireNonNull(acceptable);
        if (!acceptable.contains(targetFraction)) {
            throw new IllegalArgumentException("targetFraction must lie in acceptable: " + targetFraction);
        }
        if (!(fewestImmersions >= 1 && fewestImmersions <= mostImmersions && mostImmersions <= 6)) {
            throw new IllegalArgumentException(
                    "need 1 <= fewestImmersions <= mostImmersions <= 6: " + fewestImmersions + ", " + mostImmersions);
        }
    }
}
