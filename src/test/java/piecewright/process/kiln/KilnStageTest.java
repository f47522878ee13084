package piecewright.process.kiln;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import piecewright.process.KilnState;
import piecewright.process.PieceState;
import piecewright.process.Surroundings;

class KilnStageTest {
    private static final double NEVER = 0;
    private static final double UNTIL = 1000;
    private static final double[][] PALE = {
        {50, 23, UNTIL}, {60, 12, UNTIL}, {65, 8, UNTIL}, {75, 6, UNTIL}, {85, NEVER, 4}
    };

    /** Our 5-minute steps against Hipparchus' adaptive integrator of the same equations, over whole pale runs. */
    @Test
    void fiveMinuteStepsAgreeWithAnAdaptiveIntegrator() {
        for (Surroundings room : List.of(KilnRuns.steadyRoom(), KilnRuns.swingingRoom())) {
            for (double flow : new double[] {10, 40}) {
                var legs = KilnRuns.legs(KilnRuns.green(44, 2), 1, KilnRuns.heater(flow), room, PALE);
                double[] exact = HeatedGrain.vectorOf(legs.get(0).start());
                for (KilnRuns.Leg leg : legs) {
                    exact = adaptive(leg, exact);
                    assertClose(leg, exact);
                }
            }
        }
    }

    /** The stiffest the stage gets: hot, plentiful air and the last water. */
    @Test
    void theLastWaterIsFollowedInHotPlentifulAir() {
        for (double startPercent : new double[] {7, 6, 5.2, 4.5}) {
            KilnStage stage = stage(110, 500);
            PieceState start = KilnRuns.green(startPercent, 2);
            PieceState end = stage.run(start, 0, 1);
            double[] exact = Adaptive.integrated(stage.equations(start), HeatedGrain.vectorOf(start), 0, 1);
            assertEquals(exact[HeatedGrain.MOISTURE], end.mass().dryBasisRatio(), 2e-5, "from " + startPercent);
            assertEquals(exact[HeatedGrain.COLOUR], end.kiln().colourEbc(), 0.003 * exact[HeatedGrain.COLOUR]);
        }
    }

    /** A room that warms from 0 to 30 °C in an hour: a step sees it change, as shorter steps do. */
    @Test
    void aStepSeesTheRoomChange() {
        double[] airC = new double[13];
        for (int i = 0; i < airC.length; i++) airC[i] = 2.5 * i;
        Surroundings warming = Surroundings.of(KilnRuns.ORIGIN, airC, 0.6, Optional.empty());
        KilnStage stage = new KilnStage(KilnParameters.defaults(), 50, KilnRuns.heater(40), warming, 1);
        PieceState fine = KilnRuns.green(40, 2);
        for (int i = 0; i < 240; i++) fine = stage.step(fine, i / 240.0, 1 / 240.0);
        PieceState usual = stage.run(KilnRuns.green(40, 2), 0, 1);
        assertEquals(fine.mass().waterKg(), usual.mass().waterKg(), 2e-5);
        assertEquals(fine.grainC(), usual.grainC(), 1e-3);
    }

    private static double[] adaptive(KilnRuns.Leg leg, double[] start) {
        if (leg.untilHours() <= leg.fromHours()) return start;
        HeatedGrain grain = leg.stage().equations(leg.start());
        return Adaptive.integrated(grain, start, leg.fromHours(), leg.untilHours());
    }

    private static void assertClose(KilnRuns.Leg leg, double[] exact) {
        double ratio = exact[HeatedGrain.MOISTURE];
        PieceState end = leg.end();
        assertEquals(100 * ratio / (1 + ratio), end.mass().moisture().wetBasisPercent(), 0.02);
        double exactEbc = exact[HeatedGrain.COLOUR];
        assertEquals(exactEbc, end.kiln().colourEbc(), 0.005 * exactEbc);
        DryingBed bed = new DryingBed(DryingParameters.defaults());
        BedStep exactBed = bed.step(ratio, end.mass().dryMatterKg(), leg.stage().airAt(leg.untilHours()));
        if (leg.untilHours() > leg.fromHours()) assertEquals(exactBed.meanGrainC(), end.grainC(), 0.05);
        assertEquals(Math.exp(exact[HeatedGrain.LN_DIASTATIC]), end.kiln().diastaticFraction(), 0.001);
        assertEquals(Math.exp(exact[HeatedGrain.LN_SMM]), end.kiln().smmFraction(), 0.001);
    }

    /** The stage against the drying hours of the bed alone, found by quadrature over moisture instead of time. */
    @Test
    void stageTakesTheHoursTheBedSays() {
        KilnStage stage = stage(47.5, 9.8);
        DryingBed bed = new DryingBed(DryingParameters.defaults());
        double hours =
                bed.hoursToDry(40 / 60.0, 23 / 77.0, 3.76, stage.airAt(0)).orElseThrow();
        PieceState end = stage.run(KilnRuns.green(40, 2), 0, hours);
        assertEquals(23, end.mass().moisture().wetBasisPercent(), 0.01);
        assertEquals(4.883, end.mass().totalKg(), 0.003);
    }

    @Test
    void everyGramOfWaterIsInTheLedger() {
        PieceState start = KilnRuns.green(44, 2);
        PieceState end = KilnRuns.last(pale(start, 10));
        double goneKg = start.mass().waterKg() - end.mass().waterKg();
        assertEquals(goneKg, end.ledgers().water().evaporatedKg(), 1e-9);
        assertEquals(start.mass().dryMatterKg(), end.mass().dryMatterKg());
        assertEquals(start.ledgers().dryMatter(), end.ledgers().dryMatter());
        assertEquals(start.ledgers().gas(), end.ledgers().gas());
        assertEquals(start.steep(), end.steep());
        assertEquals(start.growth(), end.growth());
    }

    /**
     * Published ranges of colour: pale 2.5 to 3.5, pale ale 5 to 7, dark 12 to 25 EBC; end moistures 2 to 5 %. The
     * colours and Vienna's 5.5 to 9 are widened by the model's factor of 1.3; air flows are common in home kilns.
     */
    @ParameterizedTest
    @CsvSource(textBlock = """
            11, 85,   4,   1,    2,   2.5, 3.5
            25, 85,   4,   1,    2,   2.5, 3.5
            11, 98,   3.5, 1,    2,   5,   7
            11, 92.5, 4,   1.35, 2.2, 4.2, 9
            11, 103,  4.5, 1.5,  2.5, 12,  25
            25, 103,  4.5, 1.5,  2.5, 12,  25
            """)
    void curesMakeTheColoursTheyAreUsedFor(
            double flow, double cureC, double hours, double substrate, double startEbc, double least, double most) {
        double[][] rungs = {{50, 23, UNTIL}, {60, 12, UNTIL}, {65, 8, UNTIL}, {75, 6, UNTIL}, {cureC, NEVER, hours}};
        PieceState end = kilned(KilnRuns.green(44, startEbc), substrate, flow, rungs);
        double colourEbc = end.kiln().colourEbc();
        assertTrue(colourEbc >= least && colourEbc <= most, "colour: " + colourEbc);
        double percent = end.mass().moisture().wetBasisPercent();
        assertTrue(percent >= 2.5 && percent <= 4.5, "moisture: " + percent);
    }

    /** Published range 20 to 50 EBC after a cure at 80 to 90 °C, here widened by the model's factor of 2. */
    @Test
    void aHotCouchMakesACoolCureDark() {
        double[][] rungs = {{50, 23, UNTIL}, {60, 12, UNTIL}, {75, 6, UNTIL}, {87, NEVER, 4}};
        PieceState green = KilnRuns.green(40, 2.5);
        double plainEbc = kilned(green, 1, 20, rungs).kiln().colourEbc();
        double couchedEbc =
                kilned(KilnRuns.couched(green, 60), 1, 20, rungs).kiln().colourEbc();
        assertTrue(couchedEbc > 10 && couchedEbc < 100, "couched: " + couchedEbc);
        assertEquals(12 * (plainEbc - 2.5), couchedEbc - 2.5, 0.15);
    }

    /** Constructed law: 0.79 survives a pale kiln and 0.20 a dark one, each to 15 points. */
    @Test
    void paleKilningSparesTheEnzymesAndDarkKilningDoesNot() {
        double[][] pale = {{50, 23, UNTIL}, {55, 12, UNTIL}, {65, NEVER, 2}, {75, NEVER, 1}, {85, NEVER, 4}};
        double[][] dark = {{50, 25, UNTIL}, {65, 10, UNTIL}, {85, NEVER, 1}, {103, NEVER, 5}};
        PieceState green = KilnRuns.green(44, 2);
        assertEquals(0.79, kilned(green, 1, 25, pale).kiln().diastaticFraction(), 0.15);
        assertEquals(0.20, kilned(green, 1, 25, dark).kiln().diastaticFraction(), 0.15);
    }

    private static PieceState kilned(PieceState green, double substrateRatio, double flow, double[][] rungs) {
        return KilnRuns.last(KilnRuns.legs(green, substrateRatio, KilnRuns.heater(flow), KilnRuns.steadyRoom(), rungs));
    }

    @Test
    void nothingRunsBackwards() {
        for (double airOnC : new double[] {30, 50, 85, 105}) {
            KilnStage stage = stage(airOnC, 12);
            double driest = new DryingBed(DryingParameters.defaults()).driestRatio(stage.airAt(0));
            PieceState now = KilnRuns.green(44, 2);
            for (int i = 0; i < 600; i++) {
                PieceState next = stage.step(now, i / 12.0, 1 / 12.0);
                assertTrue(next.mass().waterKg() <= now.mass().waterKg());
                assertTrue(next.mass().dryBasisRatio() >= driest - 1e-9, "below equilibrium at " + airOnC);
                assertTrue(next.kiln().colourEbc() >= now.kiln().colourEbc());
                assertTrue(next.kiln().diastaticFraction() <= now.kiln().diastaticFraction());
                assertTrue(next.kiln().smmFraction() <= now.kiln().smmFraction());
                assertTrue(next.grainC() <= airOnC + 1e-9 && next.grainC() >= Math.min(now.grainC(), 16) - 1);
                now = next;
            }
        }
    }

    /** Grain wet enough stays near the wet bulb however hot the air is set: no jump to the air-on. */
    @Test
    void raisingTheHeatOnMoistGrainDoesNotTakeItToTheAir() {
        PieceState moist = stage(50, 10).run(KilnRuns.green(30, 2), 0, 1);
        PieceState raised = stage(65, 10).step(moist, 1, 1 / 12.0);
        assertTrue(raised.grainC() - moist.grainC() < 6, moist.grainC() + " to " + raised.grainC());
    }

    @Test
    void wetKernelsStayBelowTheBoil() {
        PieceState end = stage(120, 2000).step(KilnRuns.green(7, 2), 0, 1 / 60.0);
        assertTrue(end.mass().moisture().wetBasisPercent() > 5);
        assertEquals(100, end.grainC(), 1e-9);
    }

    @Test
    void onlyAirPerKgMatters() {
        PieceState small = KilnRuns.green(44, 2);
        PieceState large =
                PieceState.rawGrain(10 * small.mass().totalKg(), small.mass().moisture(), 1, 2, 16);
        KilnState ofSmall = stage(60, 9).run(small, 0, 20).kiln();
        KilnState ofLarge = stage(60, 90).run(large, 0, 20).kiln();
        assertEquals(ofSmall.colourEbc(), ofLarge.colourEbc(), 1e-6);
        assertEquals(ofSmall.diastaticFraction(), ofLarge.diastaticFraction(), 1e-6);
    }

    @Test
    void impossibleSettingsAreRefused() {
        assertThrows(IllegalArgumentException.class, () -> stage(151, 10));
        assertThrows(IllegalArgumentException.class, () -> stage(Double.NaN, 10));
        assertThrows(
                IllegalArgumentException.class,
                () -> new KilnStage(KilnParameters.defaults(), 50, KilnRuns.heater(10), KilnRuns.steadyRoom(), 0));
    }

    private static List<KilnRuns.Leg> pale(PieceState start, double flow) {
        return KilnRuns.legs(start, 1, KilnRuns.heater(flow), KilnRuns.steadyRoom(), PALE);
    }

    private static KilnStage stage(double airOnC, double flow) {
        return new KilnStage(KilnParameters.defaults(), airOnC, KilnRuns.heater(flow), KilnRuns.steadyRoom(), 1);
    }
}
