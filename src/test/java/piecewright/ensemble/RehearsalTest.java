package piecewright.ensemble;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import piecewright.ensemble.Script.Line;
import piecewright.plan.Act;
import piecewright.plan.ActKind;
import piecewright.plan.Blueprint;

class RehearsalTest {
    private final Blueprint garage = Followed.demo("cool-garage");

    private Happening with(Doubt doubt, double ratio) {
        return Ensemble.of(garage, Followed.AS_OF).happening(Followed.but(garage, doubt, ratio));
    }

    /** The long strides against the reference's five minutes, with which the plan itself was simulated. */
    @ParameterizedTest
    @ValueSource(
            strings = {
                "pale@cool-garage",
                "pale@warm-flat",
                "pale@farmhouse",
                "dark@workshop",
                "vienna@workshop",
                "crystal-light@terrace-kitchen",
                "amber@terrace-kitchen"
            })
    void whereAllIsAsBelievedEveryActComesAsPlannedAndWeighsSo(String demo) {
        Blueprint blueprint = Followed.demo(demo.split("@")[0], demo.split("@")[1]);
        Happening happening = new Rehearsal(new Script(blueprint)).in(ModelReality.expected(blueprint), Followed.EXACT);
        for (Act act : blueprint.plan().acts()) {
            Met met = happening.met().get(act.id());
            assertEquals(Moments.minute(blueprint.origin(), act.startsAt()), met.minute(), act.id());
            assertEquals(
                    act.expect().massKg(),
                    met.found().mass().totalKg(),
                    0.001 * act.expect().massKg(),
                    act.id());
            double planned = act.expect().moisture().wetBasisFraction();
            assertEquals(planned, met.found().mass().moisture().wetBasisFraction(), 0.001, act.id());
            assertEquals(act.expect().grainC(), met.found().grainC(), 0.2, act.id());
            double grown = act.expect().acrospireFraction().orElse(0);
            assertEquals(grown, met.found().growth().growthRatio(), 0.01, act.id());
        }
        double colourEbc = blueprint.plan().outcome().finished().kiln().colourEbc();
        assertEquals(colourEbc, happening.figures().get(Figure.COLOUR_EBC), 0.005 * colourEbc);
        double maltKg = blueprint.plan().outcome().finishedMaltKg();
        assertEquals(maltKg, happening.figures().get(Figure.MALT_KG), 0.001 * maltKg);
    }

    @Test
    void aLotThatDrinksSlowlyIsSoakedOnceMore() {
        Happening slow = with(Doubt.STEEP_RATE, 0.6);
        Met third = slow.met().get("steep-3.drain");
        Met fourth = slow.met().get("steep-4.drain");
        double shortBy = third.found().mass().moisture().wetBasisFraction();
        assertTrue(shortBy < 0.42, "wetter than expected: " + shortBy);
        double made = fourth.found().mass().moisture().wetBasisFraction();
        assertTrue(made > shortBy + 0.005, shortBy + " to " + made);
        assertTrue(slow.met().get("floor.spread").minute() > fourth.minute());
    }

    @Test
    void aLotThatDrinksFastIsNotSoakedAgain() {
        assertTrue(with(Doubt.STEEP_RATE, 1).met().containsKey("steep-3.soak"));
        assertFalse(with(Doubt.STEEP_RATE, 1.9).met().containsKey("steep-3.soak"));
    }

    @Test
    void growthEndsByTheAcrospireNotByTheClock() {
        int usual = with(Doubt.GROWTH, 1).met().get("kiln.load").minute();
        Met fast = with(Doubt.GROWTH, 1.5).met().get("kiln.load");
        Met slow = with(Doubt.GROWTH, 0.7).met().get("kiln.load");
        assertTrue(fast.minute() < usual - 600, "a fast lot is loaded " + (usual - fast.minute()) + " min sooner");
        assertTrue(slow.minute() > usual + 600, "a slow lot is loaded " + (slow.minute() - usual) + " min later");
        assertEquals(0.76, fast.found().growth().growthRatio(), 0.15);
        assertEquals(0.76, slow.found().growth().growthRatio(), 0.15);
    }

    @Test
    void heatRisesLaterInASlowKilnAndNeverBeforeThePlanSays() {
        Line cure = new Script(garage).first(ActKind.CURE);
        assertEquals(
                cure.minute(), with(Doubt.AIR_FLOW, 1).met().get("kiln.cure").minute());
        assertEquals(
                cure.minute(), with(Doubt.AIR_FLOW, 1.5).met().get("kiln.cure").minute());
        assertTrue(with(Doubt.AIR_FLOW, 0.5).met().get("kiln.cure").minute() > cure.minute() + 60);
    }

    /** The rule of the craft, common practice, no source; two readings of one weight differ by a step of the scale. */
    @Test
    void noReadingAboveItsGateRaisesTheHeatUnlessTheWeightStandsStill() {
        Script script = new Script(garage);
        Ensemble ensemble = Ensemble.of(garage, Followed.AS_OF);
        for (int seed = 0; seed < 60; seed++) {
            Happening happening = ensemble.happening(Members.random(Belief.prior(garage), seed));
            for (Line line : script.lines()) {
                double gate = line.act().setting().gateFraction().orElse(1);
                boolean forced = happening.breaches().stream()
                        .anyMatch(breach -> breach.actId().equals(line.id()) && breach.fault() == Fault.TOO_WET);
                if (gate == 1 || forced) continue;
                Met met = happening.met().get(line.id());
                double reading = 1 - line.dryKg() / met.weighedKg();
                boolean stands = met.found().mass().moisture().wetBasisFraction() < 0.07;
                assertTrue(stands || reading < gate + 0.002, "seed " + seed + " " + line.id() + " at " + reading);
            }
        }
    }

    @Test
    void everyActFallsIntoSomebodysHours() {
        Script script = new Script(garage);
        Ensemble ensemble = Ensemble.of(garage, Followed.AS_OF);
        for (int seed = 0; seed < 60; seed++) {
            for (Met met : ensemble.happening(Members.random(Belief.prior(garage), seed))
                    .met()
                    .values()) {
                String who = "seed " + seed + " " + met.visit().id();
                assertEquals(met.minute(), script.moments().next(met.minute(), 10), who);
            }
        }
    }
}
