package piecewright.style;

/**
 * How green malt is stewed: wet, under a cover, at one oven temperature until it is liquid inside.
 *
 * @param ovenC temperature of the oven, °C, [60, 80]
 * @param shortestMinutes never taken out sooner, more than 0
 * @param longestMinutes never left longer
 * @param deepestCm deepest layer that may lie under the cover, cm, more than 0
 */
public record StewSchedule(double ovenC, double shortestMinutes, double longestMinutes, double deepestCm) {
    public StewSchedule {
        if (!(ovenC >= 60 && ovenC <= 80)) throw new IllegalArgumentException("ovenC must be in [60, 80]: " + ovenC);
        if (!(shortestMinutes > 0 && shortestMinutes <= longestMinutes)) {
            throw new IllegalArgumentException(
                    "need 0 < shortestMinutes <= longestMinutes: " + shortestMinutes + ", " + longestMinutes);
        }
        if (!(deepestCm > 0)) throw new IllegalArgumentException("deepestCm must be above 0: " + deepestCm);
    }
}
