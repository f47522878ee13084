package piecewright.colour;

import java.time.Duration;
import piecewright.colour.ColourReach.Change;
import piecewright.process.PieceState;
import piecewright.process.kiln.KilnParameters;
import piecewright.process.kiln.RoastCourse;
import piecewright.style.MaltStyle;
import piecewright.style.RoastSchedule;
import piecewright.style.RoastSchedule.HeatStep;

/**
 * Finds how long a style's last roasting step gives a colour, to ten seconds, after its usual drying and the middle of its
 * cure. Never outside the minutes of the style.
 */
public final class RoastSolver {
    /** Source: trade notes on special malts: crystal, brown, chocolate and black malt have no diastatic power left. */
    public static final double DIASTATIC_FRACTION = 0;

    private final MaltStyle style;
    private final RoastSchedule schedule;
    private final RoastCourse course;
    private final PieceState heated;
    private final double hottestC;

    /**
     * @param style a style that is roasted
     * @param hottestC hottest oven the house may roast in, °C; infinite where no house is given
     */
    public RoastSolver(MaltStyle style, KilnParameters parameters, double hottestC) {
        this.style = style;
        this.schedule = style.oven().roast().orElseThrow();
        this.course = RoastCourse.of(parameters, style, schedule);
        this.hottestC = hottestC;
        var cure = style.kiln();
        PieceState malt = new Cure(style, parameters)
                .malt(
                        (cure.cureC().lowC() + cure.cureC().highC()) / 2,
                        (cure.cureHours().lowHours() + cure.cureHours().highHours()) / 2);
        this.heated = course.beforeLast(malt.withGrainC(ROOM_C));
    }

    /** Judgement: malt goes into the oven as warm as a heated room. */
    private static final double ROOM_C = 20;

    /** The malt after so long in the last step. */
    public Roasted at(Duration last) {
        PieceState malt = course.afterLast(heated, last);
        return new Roasted(
                schedule.last().ovenC(),
                last,
                malt.kiln().colourEbc(),
                malt.mass().moisture().wetBasisFraction());
    }

    private Roasted at(long ticks) {
        return at(Duration.ofSeconds(ticks * RoastSchedule.TIMER_SECONDS));
    }

    /** How the style reaches that colour, EBC. */
    public ColourReach reach(double colourEbc) {
        if (hottestC < schedule.hottestC()) return new ColourReach.NoHeater(schedule.hottestC(), hottestC);
        HeatStep last = schedule.last();
        long shortest = (long) Math.ceil(60 * last.shortestMinutes() / RoastSchedule.TIMER_SECONDS - 1e-9);
        long longest = (long) Math.floor(60 * last.longestMinutes() / RoastSchedule.TIMER_SECONDS + 1e-9);
        Roasted palest = at(shortest);
        Roasted darkest = at(longest);
        if (colourEbc < palest.colourEbc()) return new ColourReach.RoastOutOfReach(palest, Change.A_PALER_STYLE);
        if (colourEbc > darkest.colourEbc()) return new ColourReach.RoastOutOfReach(darkest, Change.A_DARKER_STYLE);
        long from = shortest;
        long until = longest;
        while (until - from > 1) {
            long middle = (from + until) / 2;
            if (at(middle).colourEbc() < colourEbc) from = middle;
            else until = middle;
        }
        Roasted under = at(from);
        Roasted over = at(until);
        boolean sooner = colourEbc - under.colourEbc() <= over.colourEbc() - colourEbc;
        Roasted nearest = sooner ? under : over;
        return new ColourReach.ReachedByRoast(nearest, ColourBand.of(style, nearest.colourEbc()));
    }

    /**
     * The malt out of the oven.
     *
     * @param lastC true oven temperature of the last step, °C
     * @param last length of the last step, whole tens of seconds
     * @param endMoistureFraction wet basis
     */
    public record Roasted(double lastC, Duration last, double colourEbc, double endMoistureFraction) {}
}
