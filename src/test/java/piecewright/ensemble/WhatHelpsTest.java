package piecewright.ensemble;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import piecewright.plan.Blueprint;
import piecewright.remedy.Change;

class WhatHelpsTest {
    private static final int MEMBERS = 60;

    private final Blueprint farmhouse = Followed.demo("farmhouse");
    private final Belief belief = Belief.prior(farmhouse);
    private final Sureness now = Ensemble.of(farmhouse, Followed.AS_OF).sureness(belief, MEMBERS);
    private final WhatHelps helps = new WhatHelps(Followed.PLANNER, Followed.AS_OF, MEMBERS);

    @Test
    void aTestSoakMakesTheWeightsNarrower() {
        Help help = helps.measured(Doubt.STEEP_RATE, farmhouse, belief).orElseThrow();
        Sureness soaked = Ensemble.of(farmhouse, Followed.AS_OF).sureness(belief.known(Doubt.STEEP_RATE, 0.1), MEMBERS);
        assertEquals(soaked.verdict().softFraction(), help.softFraction());
        assertTrue(width(soaked) < 0.8 * width(now), width(soaked) + " " + width(now));
    }

    private static double width(Sureness sureness) {
        Band weight = sureness.act("steep-1.drain").orElseThrow().weighedKg();
        return weight.p90() - weight.p10();
    }

    @Test
    void aChangeOfTheHouseIsPlannedAgain() {
        Help help =
                helps.arranged(new Change.ChilledWater(6), farmhouse, belief).orElseThrow();
        assertTrue(help.softFraction() >= 0 && help.softFraction() <= 1);
    }

    @Test
    void whatIsKnownAlreadyIsNoHelp() {
        Belief soaked = belief.known(Doubt.STEEP_RATE, 0.05);
        assertEquals(Optional.empty(), helps.measured(Doubt.STEEP_RATE, farmhouse, soaked));
    }

    @Test
    void aSurePlanNeedsNoHelp() {
        assertEquals(Optional.empty(), helps.best(farmhouse, belief, new Verdict(0.97, 1, Optional.empty())));
    }

    @Test
    void theSamePlanIsAsSureEachTime() {
        Sureness again = Ensemble.of(farmhouse, Followed.AS_OF).sureness(belief, MEMBERS);
        assertEquals(now, again);
    }
}
