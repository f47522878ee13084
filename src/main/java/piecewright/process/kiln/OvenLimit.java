package piecewright.process.kiln;

import piecewright.house.Heater;

/** How hot an oven may be asked to roast in a kitchen: what its dial reaches, and never near the ceiling. */
public final class OvenLimit {
    /** Judgement: home ceiling: at 230 °C grain is close to lighting by itself, and a kitchen has no quench. */
    public static final double CEILING_C = 220;

    private OvenLimit() {}

    /** True temperature it reaches at the end of its dial, °C. */
    public static double reachesC(Heater oven) {
        return oven.air().range().highC() + oven.control().dialOffsetK();
    }

    /** Hottest true temperature to ask of it, °C: an oven one standard deviation off still stays below the ceiling. */
    public static double hottestC(Heater oven) {
        return Math.min(reachesC(oven), CEILING_C - oven.control().thermostatErrorK());
    }

    /** Whether the dial has a setting for that true temperature. */
    public static boolean holds(Heater oven, double ovenC) {
        return oven.air().range().contains(ovenC - oven.control().dialOffsetK());
    }
}
