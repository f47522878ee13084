package piecewright.learn;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Instant;
import java.util.List;
import java.util.UUID;
import org.junit.jupiter.api.Test;
import piecewright.belief.Belief;
import piecewright.belief.Trait;
import piecewright.belief.Unknown;
import piecewright.ensemble.Doubt;
import piecewright.learn.Lessons.Known;
import piecewright.learn.Lessons.Outcome;
import piecewright.plan.ActKind;
import piecewright.plan.Blueprint;
import piecewright.plan.ModelParameters;
import piecewright.plan.PlanRequest;
import piecewright.plan.PlanResult;
import piecewright.plan.Planner;
import piecewright.plan.Setup;

/** One thing learned makes nothing else sure: neither what was not looked at, nor what was only used. */
class OneThingLearnedTest {
    private static final Instant NOW = Instant.parse("2031-03-01T08:00:00Z");
    private static final Known FRESH = new Known(Learned.nothing(), Learned.nothing());
    private static final Planner PLANNER = new Planner(ModelParameters.defaults());

    private static Known taught(MadeUpBatch told) {
        Lessons.Batch batch = new Lessons.Batch(new UUID(1, 1), MadeUpBatch.REQUEST, 5, told.journal());
        return assertInstanceOf(Outcome.Taught.class, new Lessons(ModelParameters.defaults()).of(batch, FRESH, NOW))
                .known();
    }

    private static Blueprint planned(PlanRequest wish) {
        return PLANNER.blueprint(
                wish,
                assertInstanceOf(PlanResult.Planned.class, PLANNER.plan(wish)).plan());
    }

    private static MadeUpBatch soaks() {
        return new MadeUpBatch()
                .did(18, ActKind.SOAK)
                .weighed(26, 6.60)
                .did(26, ActKind.DRAIN)
                .did(38, ActKind.SOAK)
                .did(46, ActKind.DRAIN);
    }

    /** Each trait told alone: every other keeps the spread it had, in the belief, in the bands and at the gates. */
    @Test
    void whateverIsToldEveryOtherSpreadStays() {
        PlanRequest stated = MadeUpBatch.REQUEST;
        Belief before = stated.belief();
        for (Unknown told : before.unknowns()) {
            double sd = before.axisSd(told) / 3;
            Learned learned = new Learned(List.of(new Learned.Chapter(
                    new UUID(1, 1),
                    NOW,
                    Belief.independent(List.of(new Belief.Single(told, before.value(told), sd))))));
            boolean ofLot = told.trait().owner() == Trait.Owner.LOT;
            Known known = ofLot ? new Known(learned, Learned.nothing()) : new Known(Learned.nothing(), learned);
            Belief after = Taught.wish(stated, known).belief();
            for (Unknown other : before.unknowns()) {
                double expected = other.equals(told) ? sd : before.axisSd(other);
                assertEquals(expected, after.axisSd(other), 1e-12, told + " told, " + other);
            }
        }
    }

    @Test
    void oneWeighingNarrowsTheBandsOfUptakeAlone() {
        Blueprint before = planned(MadeUpBatch.REQUEST);
        Blueprint after = planned(Taught.wish(MadeUpBatch.REQUEST, taught(soaks())));
        var was = piecewright.ensemble.Belief.prior(before);
        var is = piecewright.ensemble.Belief.prior(after);
        for (Doubt doubt : Doubt.values()) {
            boolean uptake = doubt == Doubt.STEEP_RATE || doubt == Doubt.SATURATION || doubt == Doubt.BURST;
            if (!uptake) assertEquals(was.sd(doubt), is.sd(doubt), 2e-3 * was.sd(doubt), doubt.name());
        }
        assertTrue(is.sd(Doubt.STEEP_RATE) < 0.8 * was.sd(Doubt.STEEP_RATE));
        assertTrue(is.sd(Doubt.STEEP_RATE) > 0.12, "one kitchen weighing: " + is.sd(Doubt.STEEP_RATE));
    }

    /** A kiln that was loaded and never weighed blows as it was said to, as surely as before; its gates stay shut. */
    @Test
    void loadingAKilnMeasuresNoAir() {
        Known known =
                taught(soaks().did(70, ActKind.FLOOR).did(190, ActKind.LOAD).did(206, ActKind.RAISE));
        PlanRequest wish = Taught.wish(MadeUpBatch.REQUEST, known);
        String kiln = MadeUpBatch.SETUP.outfit().drying().dryer().name();
        Unknown flow = new Unknown(Trait.AIR_FLOW, kiln);
        assertFalse(known.house().told().unknowns().contains(flow));
        assertEquals(MadeUpBatch.REQUEST.belief().axisSd(flow), wish.belief().axisSd(flow), 1e-12);
        Setup.SlowKilns gates = planned(wish).setup().models().gates();
        assertEquals(MadeUpBatch.SETUP.models().gates(), gates);
    }

    @Test
    void weighingsWhileItDriesMeasureIt() {
        Known known = taught(soaks().did(70, ActKind.FLOOR)
                .weighed(190, 7.9)
                .did(190, ActKind.LOAD)
                .weighed(196, 7)
                .weighed(200, 6.5));
        Unknown flow = new Unknown(
                Trait.AIR_FLOW, MadeUpBatch.SETUP.outfit().drying().dryer().name());
        Belief after = Taught.wish(MadeUpBatch.REQUEST, known).belief();
        assertTrue(after.axisSd(flow) < 0.8 * MadeUpBatch.REQUEST.belief().axisSd(flow));
    }
}
