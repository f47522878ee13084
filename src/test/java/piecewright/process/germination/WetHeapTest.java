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
import piecewright.process.GrainMass;
import piecewright.process.PieceState;
import piecewright.quantity.Moisture;

class WetHeapTest {
    private static PieceState lain(PieceState start, double airC, Heap heap, double hours) {
        return new WetHeap(ALIVE, PARAMETERS, air(airC, 0.8), heap).run(start, 0, hours);
    }

    private static GrainMass mass(double dryKg) {
        return new GrainMass(
                dryKg, dryKg, dryKg * Moisture.ofWetBasisPercent(44).dryBasisRatio());
    }

    /** Analytic: a dead heap is a cooling body, T = air + (T0 − air)·exp(−t·UA/C). */
    @Test
    void aDeadHeapCoolsTowardsTheAirAsNewtonSays() {
        PieceState start = steeped(44, 20);
        Heap heap = new Heap(0.06, 1.1);
        double capacityKJPerK = 1.30 * 4.4 + 4.19 * start.mass().waterKg();
        PieceState end = new WetHeap(DEAD, PARAMETERS, air(8, 0.999999), heap).run(start, 0, 10);
        assertEquals(8 + 12 * Math.exp(-10 * 3.6 * 1.1 / capacityKJPerK), end.grainC(), 1e-3);
    }

    /** Joins of the references: a heap so wide that its sides do not count loses heat as a bed of its depth. */
    @Test
    void aWideHeapLosesAsABedOfItsDepthButForItsCover() {
        Heap wide = Heap.wrapped(PARAMETERS, mass(20_000_000), 0.25);
        double bare = 1 / new Bed(PARAMETERS).lossWPerM2K(0.25);
        double wrapped = bare - 1 / PARAMETERS.surfaceWPerM2K() + 1.0 / 5;
        assertEquals(1 / wrapped, wide.lossWPerK() / wide.areaM2(), 0.02 / wrapped);
    }

    /**
     * Common practice, no source, estimated for a box that loses 1.15 W/K: dry matter of 1.5, 2.5 and 4.5 kg rises by
     * 0.8, 1.3 and 2.3 K as it chits at 15 °C; a heap under cloths loses about as much.
     */
    @Test
    void smallHeapsHardlyWarmAsTheyChit() {
        double[][] drynessAndRise = {{1.5, 0.8}, {2.5, 1.3}, {4.5, 2.3}};
        double heatWPerKg = ALIVE.heatWPerKgDry(15, 0.44, 0);
        for (double[] one : drynessAndRise) {
            assertEquals(one[1], new Heap(0.06, 1.15).steadyRiseK(heatWPerKg, one[0]), 0.1);
        }
        assertEquals(1.15, Heap.wrapped(PARAMETERS, mass(3.5), 0.25).lossWPerK(), 0.15);
    }

    /** Common practice, no source: in a box that holds heat 8 kg and more run away, as do deep heaps left alone. */
    @Test
    void aLargePieceInAGoodBoxRunsAway() {
        PieceState start = grown(44, 15, 0.1);
        PieceState end = lain(start, 15, new Heap(0.06, 0.42), 48);
        assertTrue(end.grainC() > 25, "ended at " + end.grainC());
    }

    /** Property: warmth of its own makes corns chit sooner than the same grain spread in the same air. */
    @Test
    void heapedGrainChitsSoonerThanSpreadGrain() {
        PieceState start = steeped(44, 9);
        FloorBed spread = new FloorBed(ALIVE, PARAMETERS, air(9, 0.8), 0.35, Cover.DAMP_CLOTH);
        double heaped = lain(start, 9, Heap.wrapped(PARAMETERS, start.mass(), 0.25), 24)
                .steep()
                .chitRatio();
        double boxed = lain(start, 9, new Heap(0.06, 0.42), 24).steep().chitRatio();
        assertTrue(heaped > spread.run(start, 0, 24).steep().chitRatio(), "heaped " + heaped);
        assertTrue(boxed > heaped, "boxed " + boxed);
    }

    /** Property: more of it, in warmer air, warms sooner. */
    @Test
    void moreGrainAndWarmerAirWarmSooner() {
        double small = Heap.wrapped(PARAMETERS, mass(3), 0.25).steadyRiseK(1, 3);
        double large = Heap.wrapped(PARAMETERS, mass(9), 0.25).steadyRiseK(1, 9);
        assertTrue(large > small);
        PieceState start = steeped(44, 10);
        Heap heap = Heap.wrapped(PARAMETERS, start.mass(), 0.25);
        assertTrue(
                lain(start, 12, heap, 12).grainC() > lain(start, 10, heap, 12).grainC());
    }

    @Test
    void aHeapNeedsAreaAndLoss() {
        assertThrows(IllegalArgumentException.class, () -> new Heap(0, 1));
        assertThrows(IllegalArgumentException.class, () -> new Heap(0.1, Double.NaN));
    }
}
