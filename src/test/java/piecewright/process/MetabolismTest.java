package piecewright.process;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import piecewright.grain.GerminationCount;
import piecewright.grain.GrainKind;
import piecewright.grain.GrainLot;
import piecewright.grain.LotMoisture;
import piecewright.grain.LotTraits;
import piecewright.grain.Treatment;
import piecewright.quantity.Moisture;

class MetabolismTest {
    private static final Metabolism ALL_ALIVE = new Metabolism(1, 1, MetabolismParameters.defaults());

    /** Judgement of the model: 36·16.5/(T + 1.5) hours, level from common practice. */
    @ParameterizedTest
    @CsvSource(textBlock = """
            # grainC, hours
            10, 51.7
            15, 36.0
            20, 27.6
            """)
    void halfTheCornsHaveChittedAfterTheRuleOfThumb(double grainC, double hours) {
        assertEquals(hours, 1 / ALL_ALIVE.chitPerHour(grainC), 0.1);
    }

    /** Published: no germination at 40 °C, 19 % at 35 (Onofri et al. 2018); none near freezing by the rule. */
    @Test
    void chittingStopsInColdAndHeat() {
        assertEquals(0, ALL_ALIVE.chitPerHour(-1.5));
        assertEquals(0, ALL_ALIVE.chitPerHour(-10));
        assertEquals(0, ALL_ALIVE.chitPerHour(40), 1e-12);
        assertEquals(0, ALL_ALIVE.chitPerHour(60));
        assertEquals(0.5 * ALL_ALIVE.chitPerHour(30), ALL_ALIVE.chitPerHour(35), 1e-12);
    }

    /** By definition, and from memory: four in five corns chitted some hours after half of them. */
    @Test
    void halfTheCornsShowAChitAtOneAndFourInFiveALittleLater() {
        assertEquals(0.5, ALL_ALIVE.chittedFraction(1), 1e-6);
        assertEquals(0.8, ALL_ALIVE.chittedFraction(Math.exp(0.2 * 0.841621)), 1e-5);
        assertEquals(0, ALL_ALIVE.chittedFraction(-0.3));
    }

    /** Judgement of the model: thermal sum with the 12 K·d from an unchitted steep-out in front. */
    @ParameterizedTest
    @CsvSource(textBlock = """
            # grainC, acrospire, days
            12, 0.75, 6.22
            15, 0.75, 4.79
            18, 0.75, 3.89
            20, 0.75, 3.46
            14.5, 1.00, 6.32
            24, 0.25, 1.31
            """)
    void daysFromAnUnchittedSteepOutFollowTheThermalSum(double grainC, double acrospire, double days) {
        double withLag = acrospire + 12.0 / 67;
        assertEquals(days, withLag / ALL_ALIVE.growthPerHour(grainC, 0.44) / 24, 0.02);
    }

    /** Published: warm germination saves about 1.5 d, steep included (Müller et al. 2014); the model says 1.62. */
    @Test
    void warmGerminationSavesAboutADayAndAHalf() {
        double growth = 0.75 + 12.0 / 67;
        double savedDays =
                growth / ALL_ALIVE.growthPerHour(16, 0.44) / 24 - growth / ALL_ALIVE.growthPerHour(24, 0.44) / 24;
        assertEquals(1.62, savedDays, 0.01);
        assertEquals(1.5, savedDays, 0.5);
    }

    /** Published: standard small-scale malting takes 6 d of steep and germination; 1.75 d of it steep. */
    @Test
    void chittedGrainAtTheStandardsFortyFivePercentIsReadyOnTheSixthDay() {
        double days = 0.75 / ALL_ALIVE.growthPerHour(14.5, 0.45) / 24;
        assertEquals(3.75, days, 0.01);
        assertEquals(6, 1.75 + days, 0.7);
    }

    /** Judgement of the model. */
    @Test
    void growthNeedsMoisture() {
        assertEquals(0, Metabolism.growthMoistureRatio(0.30), 1e-12);
        assertEquals(0.5, Metabolism.growthMoistureRatio(0.37), 1e-12);
        assertEquals(1, Metabolism.growthMoistureRatio(0.44), 1e-12);
        assertEquals(1.15, Metabolism.growthMoistureRatio(0.48), 1e-12);
        assertEquals(0, Metabolism.growthMoistureRatio(0.12), 1e-12);
    }

    /** Judgement of the model: base 2, level 24 to 28, ceiling 37 °C. */
    @ParameterizedTest
    @CsvSource(textBlock = """
            # grainC, effective warmth in K
            1, 0
            15, 13
            24, 22
            28, 22
            32.5, 11
            37, 0
            45, 0
            """)
    void warmthCountsUpToAPoint(double grainC, double warmthK) {
        assertEquals(warmthK, Metabolism.effectiveWarmthK(grainC), 1e-12);
    }

    /** Judgement of the model: 2 W/kg at 20 °C, 44 %, full activity; 1.5 W/kg is 0.83 % of dry matter a day. */
    @Test
    void heatAndLossBelongTogether() {
        assertEquals(2.0, ALL_ALIVE.heatWPerKgDry(20, 0.44, 0.5), 1e-9);
        assertEquals(2.0 * 0.4, ALL_ALIVE.heatWPerKgDry(20, 0.44, 0), 1e-9);
        assertEquals(1.0, ALL_ALIVE.heatWPerKgDry(10, 0.44, 1), 1e-9);
        assertEquals(0.0083, 24 * Metabolism.respiredPerHour(1.5), 0.0083 * 0.02);
        assertEquals(
                Metabolism.respiredPerHour(ALL_ALIVE.heatWPerKgDry(17, 0.43, 0.3)),
                ALL_ALIVE.respiredPerHour(17, 0.43, 0.3),
                1e-15);
    }

    /** Judgement of the model: 16 °C for five days is about 530 kJ/kg or 3.4 % of dry matter. */
    @Test
    void fiveDaysOnTheFloorCostAboutThreeAndAHalfPercent() {
        double growth = 0;
        double lost = 0;
        for (int hour = 0; hour < 120; hour++) {
            lost += ALL_ALIVE.respiredPerHour(16, 0.44, growth);
            growth += ALL_ALIVE.growthPerHour(16, 0.44);
        }
        assertEquals(0.034, lost, 0.003);
    }

    /** Judgement of the model: dead corns give no heat, the steep's breath is three tenths of a lively floor's. */
    @Test
    void deadCornsAreColdAndTheSteepIsQuiet() {
        Metabolism partlyDead = new Metabolism(0.8, 1, MetabolismParameters.defaults());
        assertEquals(0.8 * ALL_ALIVE.heatWPerKgDry(18, 0.44, 1), partlyDead.heatWPerKgDry(18, 0.44, 1), 1e-12);
        assertEquals(0.3 * ALL_ALIVE.respiredPerHour(15, 0.40, 1), ALL_ALIVE.steepRespiredPerHour(15, 0.40), 1e-15);
    }

    /** Published: plants breathe fastest at 35 to 40 °C and stop at 45 to 55 (plant physiology text). */
    @Test
    void heatEndsWhereLifeEnds() {
        assertTrue(ALL_ALIVE.heatWPerKgDry(38, 0.44, 1) > ALL_ALIVE.heatWPerKgDry(34, 0.44, 1));
        assertTrue(ALL_ALIVE.heatWPerKgDry(48, 0.44, 1) < ALL_ALIVE.heatWPerKgDry(38, 0.44, 1));
        assertEquals(0, ALL_ALIVE.heatWPerKgDry(55, 0.44, 1), 1e-12);
    }

    /** Judgement of the model: five days at 15 °C are five days, 2.2 times as many 10 K warmer. */
    @Test
    void rootletClockRunsByWarmth() {
        assertEquals(1.0 / 24, ALL_ALIVE.rootletDaysPerHour(15), 1e-12);
        assertEquals(2.2 / 24, ALL_ALIVE.rootletDaysPerHour(25), 1e-12);
        assertEquals(2.2 / 24, ALL_ALIVE.rootletDaysPerHour(35), 1e-12);
    }

    /** Published: glucose stoichiometry; what is breathed in and lost comes out as gas and water. */
    @Test
    void respirationBooksClose() {
        PieceState before = PieceState.rawGrain(5, Moisture.ofWetBasisPercent(12), 0, 3, 15);
        PieceState after = Metabolism.bookRespiration(before, 0.1);
        assertEquals(4.3, after.mass().dryMatterKg(), 1e-12);
        assertEquals(0.66, after.mass().waterKg(), 1e-12);
        Ledgers ledgers = after.ledgers();
        assertEquals(0.06, ledgers.water().formedKg(), 1e-12);
        assertEquals(0.1, ledgers.dryMatter().respiredKg(), 1e-12);
        assertEquals(0.107, ledgers.gas().oxygenInKg(), 1e-12);
        assertEquals(0.147, ledgers.gas().carbonDioxideOutKg(), 1e-12);
        double inKg = before.mass().totalKg() + ledgers.gas().oxygenInKg();
        double outKg = after.mass().totalKg() + ledgers.gas().carbonDioxideOutKg();
        assertEquals(inKg, outKg, 1e-12);
    }

    /** Published: 25 W take 4.6 L of oxygen and give 8.44 g of carbon dioxide an hour (glucose, 24.1 L/mol). */
    @Test
    void twentyFiveWattsBreatheSoMuch() {
        double dryKgPerHour = Metabolism.respiredPerHour(25);
        assertEquals(0.00577, dryKgPerHour, 0.00577 * 0.01);
        assertEquals(4.6, dryKgPerHour * Metabolism.OXYGEN_IN_RATIO * 1000 / 32 * 24.1, 0.05);
        assertEquals(0.00844, dryKgPerHour * Metabolism.CARBON_DIOXIDE_OUT_RATIO, 0.00844 * 0.01);
    }

    /** Glucose stoichiometry: 5 % of the dry matter in 120 h are .538 g of carbon dioxide an hour and kg of raw grain. */
    @Test
    void aFloorBreathesSoMuchGas() {
        PieceState raw = PieceState.rawGrain(1, Moisture.ofWetBasisPercent(12), 0, 3, 15);
        PieceState after = Metabolism.bookRespiration(raw, 0.05 * raw.mass().dryMatterKg());
        assertEquals(0.538, 1000 * after.ledgers().gas().carbonDioxideOutKg() / 120, 0.002);
    }

    /** By definition: germination as tested in 4 mL dishes, growth as learned, otherwise .97 and 1. */
    @Test
    void aLotsCornsAreAsTestedAndLearned() {
        Metabolism unknown = Metabolism.of(lot(List.of(), LotTraits.unknown()), MetabolismParameters.defaults());
        assertEquals(0.97, unknown.germinatingFraction());
        assertEquals(ALL_ALIVE.growthPerHour(15, 0.44), unknown.growthPerHour(15, 0.44), 1e-15);
        GerminationCount dish =
                new GerminationCount(4, 200, OptionalInt.empty(), OptionalInt.empty(), OptionalInt.of(180));
        OptionalDouble none = OptionalDouble.empty();
        Metabolism known = Metabolism.of(
                lot(List.of(dish), new LotTraits(none, none, none, OptionalDouble.of(1.3))),
                MetabolismParameters.defaults());
        assertEquals(0.9, known.germinatingFraction());
        assertEquals(1.3 * ALL_ALIVE.growthPerHour(15, 0.44), known.growthPerHour(15, 0.44), 1e-12);
    }

    private static GrainLot lot(List<GerminationCount> dishes, LotTraits traits) {
        return new GrainLot(
                "test",
                GrainKind.BARLEY,
                new LotMoisture(Moisture.ofWetBasisPercent(12), 0.003, true),
                dishes,
                new GrainLot.LotSize(OptionalDouble.empty(), OptionalDouble.empty(), Optional.empty()),
                Treatment.UNTREATED,
                traits);
    }

    @Test
    void impossibleCornsAreRefused() {
        MetabolismParameters defaults = MetabolismParameters.defaults();
        assertThrows(IllegalArgumentException.class, () -> new Metabolism(1.01, 1, defaults));
        assertThrows(IllegalArgumentException.class, () -> new Metabolism(Double.NaN, 1, defaults));
        assertThrows(IllegalArgumentException.class, () -> new Metabolism(1, 0, defaults));
        assertThrows(IllegalArgumentException.class, () -> new MetabolismParameters(0, .2, 67, 2, 2, .3, 2.2));
        assertThrows(IllegalArgumentException.class, () -> new MetabolismParameters(594, .2, 67, -1, 2, .3, 2.2));
    }
}
