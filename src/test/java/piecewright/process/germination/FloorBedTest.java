package piecewright.process.germination;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static piecewright.process.germination.FloorFixture.ALIVE;
import static piecewright.process.germination.FloorFixture.DEAD;
import static piecewright.process.germination.FloorFixture.PARAMETERS;
import static piecewright.process.germination.FloorFixture.air;
import static piecewright.process.germination.FloorFixture.grown;
import static piecewright.process.germination.FloorFixture.steeped;

import org.junit.jupiter.api.Test;
import piecewright.process.PieceState;
import piecewright.process.Psychrometrics;
import piecewright.process.SteepState;

class FloorBedTest {
    /** Analytic: a dead bed relaxes to the air with τ = a·c/(3.6·U) when it does not dry. */
    @Test
    void aDeadBedFollowsTheAir() {
        PieceState start = steeped(44, 20);
        FloorBed bed = new FloorBed(DEAD, PARAMETERS, air(10, 0.999999), 0.2, Cover.DAMP_CLOTH);
        Bed equations = new Bed(PARAMETERS);
        double depthM = equations.depthM(start.mass(), 0.2);
        double capacity = 4.4 / 0.2 * (1.30 + 4.19 * start.mass().dryBasisRatio());
        double tauHours = capacity / (3.6 * equations.lossWPerM2K(depthM));
        PieceState end = bed.run(start, 0, 5);
        assertEquals(10 + 10 * Math.exp(-5 / tauHours), end.grainC(), 1e-3);
        assertEquals(0, end.ledgers().dryMatter().respiredKg());
    }

    /** Analytic: a dead thin layer dries by the closed form. */
    @Test
    void aDeadLayerWithersByTheClosedForm() {
        PieceState start = steeped(46, 23);
        Bed equations = new Bed(PARAMETERS);
        double areaM2 = equations.areaM2(start.mass(), 0.025);
        PieceState end = new WitherBed(DEAD, PARAMETERS, air(23, 0.55), areaM2).run(start, 0, 28);
        double hours = equations.witherHours(
                start.mass().dryBasisRatio(),
                end.mass().dryBasisRatio(),
                Psychrometrics.vapourPressureDeficitKPa(23, 0.55),
                0.025);
        assertEquals(28, hours, 1e-6);
        assertEquals(27.5, end.mass().moisture().wetBasisPercent(), 0.1);
    }

    /** Judgement of the model: 46 to 27.5 % in 28 h at 23 °C adds about .16 to the growth. */
    @Test
    void growthGoesOnMoreSlowlyWhileWithering() {
        PieceState start = grown(46, 23, 0.7);
        double areaM2 = new Bed(PARAMETERS).areaM2(start.mass(), 0.025);
        PieceState end = new WitherBed(ALIVE, PARAMETERS, air(23, 0.55), areaM2).run(start, 0, 28);
        assertEquals(0.16, end.growth().growthRatio() - 0.7, 0.03);
        assertEquals(28, end.mass().moisture().wetBasisPercent(), 1, "its own water nearly matters");
    }

    /** Judgement of the model: at the room's 15 °C beds of 5 and 10 cm would rise by 2 and 5 K; their own warmth adds. */
    @Test
    void aLivelyBedStandsWarmerThanTheRoom() {
        PieceState start = grown(44, 15, 0.5);
        Bed equations = new Bed(PARAMETERS);
        double thin = riseK(start, equations.areaM2(start.mass(), 0.05));
        double deep = riseK(start, equations.areaM2(start.mass(), 0.10));
        assertEquals(1.9 * Math.pow(2, thin / 10), thin, 0.4);
        assertEquals(5.2 * Math.pow(2, deep / 10), deep, 0.8);
        assertEquals(2.0, thin, 0.5);
    }

    private static double riseK(PieceState start, double areaM2) {
        FloorBed bed = new FloorBed(ALIVE, PARAMETERS, air(15, 0.75), areaM2, Cover.DAMP_CLOTH);
        return bed.run(start, 0, 24).grainC() - 15;
    }

    /** Common practice, no source: 20 cm left unturned run hot; they stay finite because life ends. */
    @Test
    void aDeepUntendedBedRunsHotButNotForEver() {
        PieceState start = grown(44, 18, 0.5);
        double areaM2 = new Bed(PARAMETERS).areaM2(start.mass(), 0.30);
        FloorBed bed = new FloorBed(ALIVE, PARAMETERS, air(18, 0.75), areaM2, Cover.DAMP_CLOTH);
        PieceState end = bed.run(start, 0, 96);
        assertTrue(end.grainC() > 35 && end.grainC() < 55, "ended at " + end.grainC());
    }

    /** Judgement of the model: no growth before half the corns have chitted, the floor goes on chitting. */
    @Test
    void anUnchittedPieceChitsFirst() {
        PieceState start = steeped(44, 15);
        SteepState steep = start.steep();
        PieceState unchitted = start.withSteep(
                new SteepState(steep.coreRatio(), steep.outerRatio(), steep.soakHours(), steep.waterChanges(), 0.8));
        FloorBed bed = new FloorBed(ALIVE, PARAMETERS, air(15, 0.9), 2, Cover.DAMP_CLOTH);
        assertEquals(0, bed.run(unchitted, 0, 6).growth().growthRatio());
        assertEquals(0, bed.run(unchitted, 0, 6).growth().rootletDays());
        assertTrue(bed.run(unchitted, 0, 9).growth().growthRatio() > 0);
        assertTrue(bed.run(unchitted, 0, 9).steep().chitRatio() > 1);
    }

    /** Property: covered beds lose less water; thin beds lose more. */
    @Test
    void coverAndDepthKeepWater() {
        PieceState start = grown(44, 15, 0.2);
        double covered = evaporatedKg(start, 0.3, Cover.DAMP_CLOTH);
        double bare = evaporatedKg(start, 0.3, Cover.UNCOVERED);
        assertEquals(0.12 / 0.35, covered / bare, 0.02);
        assertTrue(evaporatedKg(start, 0.6, Cover.DAMP_CLOTH) > 1.8 * covered);
    }

    private static double evaporatedKg(PieceState start, double areaM2, Cover cover) {
        return new FloorBed(ALIVE, PARAMETERS, air(15, 0.75), areaM2, cover)
                .run(start, 0, 24)
                .ledgers()
                .water()
                .evaporatedKg();
    }

    /** Property: rootlets stop when the corn is too dry to grow. */
    @Test
    void dryGrainGrowsNoRootlets() {
        WitherBed bed = new WitherBed(ALIVE, PARAMETERS, air(15, 0.6), 1);
        assertEquals(0, bed.run(grown(28, 15, 0.8), 0, 5).growth().rootletDays());
    }

    /** From memory: all-in losses before kilning of 8 to 13 %, here with five lively days at 16 °C and 3 % rootlets. */
    @Test
    void floorAndRootletsCostSixToNinePercent() {
        PieceState start = steeped(45, 16);
        FloorBed bed = new FloorBed(ALIVE, PARAMETERS, air(16, 0.8), 0.3, Cover.DAMP_CLOTH);
        PieceState end = FloorActs.derooted(bed.run(start, 0, 120), piecewright.grain.GrainKind.BARLEY, 1);
        double lost = 1 - end.mass().dryMatterKg() / 4.4;
        assertTrue(lost > 0.06 && lost < 0.09, "lost " + lost);
    }

    @Test
    void aBedNeedsAnArea() {
        assertThrows(IllegalArgumentException.class, () -> new WitherBed(ALIVE, PARAMETERS, air(15, 0.6), 0));
    }
}
