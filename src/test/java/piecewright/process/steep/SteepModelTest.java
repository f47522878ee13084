package piecewright.process.steep;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static piecewright.process.steep.SteepFixture.chittedAfter;
import static piecewright.process.steep.SteepFixture.lot;
import static piecewright.process.steep.SteepFixture.model;
import static piecewright.process.steep.SteepFixture.steeped;

import java.util.List;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import piecewright.grain.GerminationCount;
import piecewright.grain.GrainKind;
import piecewright.grain.LotTraits;
import piecewright.process.PieceState;
import piecewright.quantity.Moisture;

class SteepModelTest {
    private static final double X12 = Moisture.ofWetBasisPercent(12).dryBasisRatio();

    /** Worked from the Arrhenius law with 48.5 kJ/mol (published, Mok 1983). */
    @ParameterizedTest
    @CsvSource(textBlock = """
            # waterC, theta
            5, 0.483
            10, 0.699
            15, 1.000
            20, 1.412
            25, 1.972
            """)
    void warmWaterSoaksFaster(double waterC, double theta) {
        assertEquals(theta, model(1, 0).theta(waterC), 0.001);
    }

    /** Worked from the equations; the first four-hour pattern apart, no measurement. */
    @ParameterizedTest
    @CsvSource(textBlock = """
            # startPercent, waterC, hours, drainedPercent, kernelPercent
            12, 15, 8, 32.380, 30.013
            12, 10, 24, 37.390, 35.366
            14, 20, 24, 42.694, 41.004
            """)
    void oneSoakComesOutAsWorkedByHand(
            double startPercent, double waterC, double hours, double drainedPercent, double kernelPercent) {
        SteepModel model = model(1, 0);
        double startRatio = Moisture.ofWetBasisPercent(startPercent).dryBasisRatio();
        double core = model.coreAfterSoak(startRatio, hours * model.theta(waterC));
        double drained = core + model.filledOuterRatio();
        assertEquals(drainedPercent, Moisture.ofDryBasisRatio(drained).wetBasisPercent(), 0.02);
        double kernel = drained - SteepParameters.Uptake.FILM_RATIO;
        assertEquals(kernelPercent, Moisture.ofDryBasisRatio(kernel).wetBasisPercent(), 0.02);
    }

    /** From memory: continuous immersion table of German textbooks, unverified, within 1 pp; hours by the model. */
    @ParameterizedTest
    @CsvSource(textBlock = """
            # waterC, kernelPercent, modelHours, tableHours
            9, 40, 47.0, 47.5
            9, 43, 71.8, 78
            9, 46, 119.9, 101
            13, 40, 35.2, 34
            13, 43, 53.8, 54
            13, 46, 89.8, 78.5
            17, 40, 26.6, 30
            17, 43, 40.6, 46.5
            17, 46, 67.8, 73
            21, 40, 20.2, 21
            21, 43, 30.9, 28
            21, 46, 51.6, 44.5
            """)
    void longSoaksFollowTheRememberedTable(double waterC, double kernelPercent, double modelHours, double tableHours) {
        SteepModel model = model(1, 0);
        double film = SteepParameters.Uptake.FILM_RATIO;
        double target = Moisture.ofWetBasisPercent(kernelPercent).dryBasisRatio() + film;
        assertEquals(modelHours, model.soakHoursTo(target, X12, waterC, 0), 0.2);
        double core = model.coreAfterSoak(X12, tableHours * model.theta(waterC));
        double kernel = core + model.filledOuterRatio() - film;
        assertEquals(kernelPercent, Moisture.ofDryBasisRatio(kernel).wetBasisPercent(), 1.0);
    }

    /** Worked from the equations. */
    @Test
    void aTestSoakTellsTheLotsRate() {
        double drained = Moisture.ofWetBasisPercent(33.5).dryBasisRatio();
        assertEquals(1.198, model(1, 0).rateRatioOfTestSoak(X12, drained, 8), 0.002);
    }

    /** Worked from the equations: the state after 8/12/8/12 h at 15 °C, m = 1, chitted from 30.6 h on. */
    @Test
    void theLastSoakToATargetIsFoundBackwards() {
        SteepModel model = model(1, 0.5);
        PieceState state = steeped(model, chittedAfter(30.6), 15, 8, 12, 8, 12).get(3);
        assertEquals(9.5, model.soakHoursTo(Moisture.ofWetBasisPercent(45), state, 15), 0.1);
    }

    /** Worked from the equations, soak by soak: inverse of the forward closed form. */
    @Test
    void soakHoursUndoTheSoak() {
        SteepModel model = model(1.3, 0.5);
        double core = model.coreAfterSoak(0.3, 7 * model.theta(12) * 1.5);
        assertEquals(7, model.soakHoursTo(core + model.filledOuterRatio(), 0.3, 12, 0.9), 1e-9);
        assertEquals(0, model.soakHoursTo(0.4, 0.3, 12, 0.9), "a dip does");
        assertEquals(Double.POSITIVE_INFINITY, model.soakHoursTo(1.2, 0.3, 12, 0.9), "more than it can hold");
    }

    /** By definition of the drained ratio: what the scale shows when dry matter was lost and water formed. */
    @Test
    void drainedRatioAllowsForLossAndMetabolicWater() {
        SteepModel model = new SteepModel(1.2, 0, SteepParameters.defaults());
        var alive = new piecewright.process.Metabolism(1, 1, piecewright.process.MetabolismParameters.defaults());
        PieceState state = steeped(model, alive, 15, 8, 12, 8, 12, 4).get(4);
        double now = state.steep().coreRatio() + state.steep().outerRatio();
        assertEquals(now, SteepModel.drainedRatio(state.mass().moisture(), state), 1e-9);
    }

    /** Exact property of the closed form: two soaks in a row are one; twice the rate in half the time. */
    @Test
    void soaksAddUpAndRateTradesForTime() {
        SteepModel one = model(1, 0);
        double split = one.coreAfterSoak(one.coreAfterSoak(X12, 3), 5);
        assertEquals(one.coreAfterSoak(X12, 8), split, 1e-12);
        assertEquals(one.coreAfterSoak(X12, 8), model(2, 0).coreAfterSoak(X12, 4), 1e-12);
    }

    /** Property: never past saturation, always rising. */
    @Test
    void theCoreRisesTowardsSaturation() {
        SteepModel model = model(1.2, 0);
        double before = X12;
        for (int hours = 1; hours < 2000; hours += 10) {
            double core = model.coreAfterSoak(X12, hours);
            assertTrue(core > before && core < model.saturationCoreRatio());
            before = core;
        }
        assertEquals(2, model.coreAfterSoak(2, 10), "an overfull core stays");
    }

    /** Judgement of the model: .9 % of long soaking, .1 % for each water. */
    @Test
    void leachingFollowsTheRule() {
        SteepModel model = new SteepModel(1, 0, SteepParameters.defaults());
        assertEquals(0.01056, model.leachedFraction(22, 3), 0.00002);
        assertEquals(0, model.leachedFraction(0, 0));
    }

    /** Judgement of the model: default rates, and m to the −2/3 of corn weight over 42 g for barley alone. */
    @ParameterizedTest
    @CsvSource(textBlock = """
            BARLEY, , 1.2
            BARLEY, 42, 1.2
            BARLEY, 35, 1.3551
            HULLLESS_BARLEY, , 1.5
            WHEAT, 35, 1.4
            RYE, , 1.8
            OATS, , 1.0
            """)
    void anUnknownLotDrinksAsItsKindAndSizeDo(GrainKind kind, Double thousandCornG, double rateRatio) {
        OptionalDouble size = thousandCornG == null ? OptionalDouble.empty() : OptionalDouble.of(thousandCornG);
        SteepModel model = SteepModel.of(lot(kind, size, LotTraits.unknown(), List.of()), SteepParameters.defaults());
        assertEquals(rateRatio, model.rateRatio(), 1e-4);
    }

    @Test
    void whatTheLotTaughtCounts() {
        LotTraits traits = new LotTraits(
                OptionalDouble.of(0.7), OptionalDouble.of(1.0), OptionalDouble.of(0.1), OptionalDouble.empty());
        SteepModel model = SteepModel.of(
                lot(GrainKind.BARLEY, OptionalDouble.of(30), traits, List.of()), SteepParameters.defaults());
        assertEquals(0.7, model.rateRatio());
        assertEquals(0.9, model.saturationCoreRatio(), 1e-12);
        assertEquals(0.15, model.filledOuterRatio(), 1e-12);
    }

    /** Judgement of the model: 6 to 12 h late at 10 to 25 % water sensitivity, 12 to 24 h above, at 15 °C. */
    @ParameterizedTest
    @CsvSource(textBlock = """
            # germinated of 100 in 8 mL, hours late
            97, 0
            88, 0
            85, 6.8
            72, 12
            62, 18
            30, 24
            """)
    void aWaterSensitiveLotChitsLater(int inMuchWater, double hoursLate) {
        GerminationCount little = dish(4, 97);
        GerminationCount much = dish(8, inMuchWater);
        SteepModel model = SteepModel.of(
                lot(GrainKind.BARLEY, OptionalDouble.empty(), LotTraits.unknown(), List.of(little, much)),
                SteepParameters.defaults());
        assertEquals(-hoursLate / 36, model.startChitRatio(), 1e-9);
    }

    private static GerminationCount dish(double waterMl, int germinated) {
        return new GerminationCount(waterMl, 100, OptionalInt.empty(), OptionalInt.empty(), OptionalInt.of(germinated));
    }

    @Test
    void chittedFromAPointOn() {
        assertFalse(SteepModel.chitted(0.849));
        assertTrue(SteepModel.chitted(0.85));
    }

    @Test
    void impossibleParametersAreRefused() {
        var uptake = SteepParameters.Uptake.defaults();
        assertThrows(IllegalArgumentException.class, () -> uptake.withSaturationRatio(0.1));
        assertThrows(IllegalArgumentException.class, () -> uptake.withBurstRatio(-0.01));
        assertThrows(IllegalArgumentException.class, () -> uptake.withEvaporationPerHour(Double.NaN));
        assertThrows(IllegalArgumentException.class, () -> new SteepParameters.Leaching(0.2, 12, 0.001));
        assertThrows(IllegalArgumentException.class, () -> new SteepParameters.Warming(0, 3, 1.6));
        assertThrows(IllegalArgumentException.class, () -> new SteepModel(0, 0, SteepParameters.defaults()));
        assertThrows(IllegalArgumentException.class, () -> new SteepModel(1, 0.1, SteepParameters.defaults()));
    }
}
