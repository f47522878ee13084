package piecewright.process.kiln;

import piecewright.process.PieceState;
import piecewright.style.MaltStyle;
import piecewright.style.StewSchedule;

/** A whole covered stew: at the style's oven temperature until the malt should be liquid, inside the style's minutes. */
public final class StewCourse {
    /** Judgement: green malt goes in about so warm, °C; only the planned length hangs on it. */
    private static final double COOL_GREEN_C = 15;
    /** Judgement: stews last whole five minutes. */
    private static final int ROUND_MINUTES = 5;
    /** Judgement: a layer of this depth lags no more than the thinnest, cm. */
    public static final double USUAL_DEPTH_CM = 2.5;

    private final CoveredStew stew;
    private final double lagHours;
    private final int minutes;

    private StewCourse(CoveredStew stew, double lagHours, int minutes) {
        this.stew = stew;
        this.lagHours = lagHours;
        this.minutes = minutes;
    }

    /** The stew of a style in a layer of that depth, cm, more than 0. */
    public static StewCourse of(KilnParameters parameters, MaltStyle style, StewSchedule schedule, double depthCm) {
        double lagHours = parameters.roast().stickyLayer(depthCm).lagHours();
        double substrate = style.kiln().colourBase().substrateRatio();
        CoveredStew stew = new CoveredStew(parameters, schedule.ovenC(), lagHours, substrate);
        double liquid = 60 * stew.hoursToLiquid(COOL_GREEN_C);
        double held = Math.max(schedule.shortestMinutes(), Math.min(schedule.longestMinutes(), liquid));
        return new StewCourse(stew, lagHours, (int) Math.ceil(held / ROUND_MINUTES) * ROUND_MINUTES);
    }

    /** Planned minutes under the cover. */
    public int minutes() {
        return minutes;
    }

    /** Thermal lag of the layer, hours. */
    public double lagHours() {
        return lagHours;
    }

    /** The malt after its stew, hot and wet. */
    public PieceState stewed(PieceState green) {
        return after(green, minutes);
    }

    /** The malt after so many minutes of it. */
    public PieceState after(PieceState green, int stewedMinutes) {
        return stew.run(green, 0, stewedMinutes / 60.0);
    }
}
