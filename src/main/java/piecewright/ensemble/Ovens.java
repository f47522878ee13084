package piecewright.ensemble;

import piecewright.plan.Outfit;
import piecewright.plan.Setup;
import piecewright.process.kiln.CoveredStew;
import piecewright.process.kiln.KilnParameters;
import piecewright.process.kiln.RoastCourse;
import piecewright.process.kiln.RoastParameters;
import piecewright.style.MaltStyle;
import piecewright.style.RoastSchedule;
import piecewright.style.StewSchedule;

/**
 * What stews and what roasts, as hot as it really is.
 *
 * @param stewK how much hotter the oven of the stew is than asked
 * @param roastK the same of the oven of the roast
 */
record Ovens(Setup setup, double stewK, double roastK) {
    /** Source: water boils; under its cover no stew is hotter. */
    private static final double HOTTEST_STEW_C = 100;
    /** Judgement: no kitchen oven goes further, whatever its dial says. */
    private static final double HOTTEST_ROAST_C = 230;

    /** What goes on under the cover; only for styles that stew. */
    CoveredStew stew() {
        StewSchedule schedule = setup.style().oven().stew().orElseThrow();
        Outfit.Stewing stewing = setup.outfit().ovens().stewing().orElseThrow();
        RoastParameters roast = kiln().roast();
        return new CoveredStew(
                kiln(),
                Math.min(HOTTEST_STEW_C, schedule.ovenC() + stewK),
                roast.stickyLayer(stewing.depthCm()).lagHours(),
                setup.style().kiln().colourBase().substrateRatio());
    }

    /** What goes on in the oven, load by load; only for styles that are roasted. */
    RoastCourse roast() {
        MaltStyle style = setup.style();
        RoastSchedule schedule = style.oven().roast().orElseThrow();
        return RoastCourse.of(kiln(), style, schedule.hotter(Math.min(roastK, HOTTEST_ROAST_C - schedule.hottestC())));
    }

    private KilnParameters kiln() {
        return setup.models().kiln();
    }
}
