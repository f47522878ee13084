package piecewright.process.couch;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static piecewright.process.couch.CouchFixture.MODEL;
import static piecewright.process.couch.CouchFixture.packed;

import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import piecewright.house.InsulatedBox;
import piecewright.process.Ledgers;
import piecewright.process.PieceState;
import piecewright.process.Psychrometrics;

class CouchModelTest {
    /** By definition and worked by hand: 4.5 kg of barley, 5.5 % lost, hold 3.742 kg of dry matter. */
    @ParameterizedTest
    @CsvSource(textBlock = """
            # moisturePercent, dryBasisRatio, capacityKJPerK
            27.5, 0.3793, 13.81
            40, 0.6667, 18.32
            45, 0.8182, 20.69
            """)
    void aPackedPileHoldsSoMuchHeat(double moisturePercent, double dryBasisRatio, double capacityKJPerK) {
        PieceState pile = packed(4.5, moisturePercent, 20);
        assertEquals(3.742, pile.mass().dryMatterKg(), 0.001);
        assertEquals(dryBasisRatio, pile.mass().dryBasisRatio(), 1e-4);
        assertEquals(
                capacityKJPerK,
                MODEL.capacityKJPerK(pile.mass().dryMatterKg(), pile.mass().waterKg()),
                0.01);
        assertEquals(4.5, CouchModel.barleyKg(pile.mass()), 1e-12);
    }

    /** Analytic: 6.93 kg at 46 %, 5.16 kg at 27.5 %. */
    @Test
    void aPackedPileWeighsSoMuch() {
        assertEquals(6.93, packed(4.5, 46, 20).mass().totalKg(), 0.01);
        assertEquals(5.16, packed(4.5, 27.5, 20).mass().totalKg(), 0.01);
    }

    /** Judgement of the model, fitted. */
    @ParameterizedTest
    @CsvSource(textBlock = """
            20, 0.225
            27.5, 0.619
            30, 0.748
            33, 0.867
            40, 1
            45, 1.028
            """)
    void wetMaltHeatsMore(double moisturePercent, double ratio) {
        assertEquals(ratio, CouchModel.moistureRatio(moisturePercent / 100), 0.001);
    }

    /** Judgement of the model, fitted. */
    @ParameterizedTest
    @CsvSource(textBlock = """
            10, 0.574
            20, 1.320
            30, 3.036
            40, 6.983
            45, 10.56
            48, 12.89
            50, 11.42
            50.9, 8.655
            52, 4.738
            54, 0.966
            """)
    void heatRisesAndIsCut(double pileC, double heatWPerKg) {
        assertEquals(heatWPerKg, MODEL.heatWPerKgDry(pileC, 0.40, 1), 0.002 * heatWPerKg);
    }

    /** Judgement of the model, fitted. */
    @ParameterizedTest
    @CsvSource(textBlock = """
            45, 0.00623
            50, 0.0570
            52, 0.1382
            55, 0.5217
            """)
    void heatKillsItsSource(double pileC, double perHour) {
        assertEquals(perHour, MODEL.decayPerHour(pileC), 0.002 * perHour);
    }

    /** Judgement of the model for E; published: ASHRAE gives 12.350 kPa at 50 °C. */
    @Test
    void vapourCarriesALittleHeat() {
        assertEquals(0.16, MODEL.evaporationW(20), 0.01);
        assertEquals(0.84, MODEL.evaporationW(40), 0.01);
        assertEquals(1.50, MODEL.evaporationW(50), 0.01);
        assertEquals(0, MODEL.evaporationW(2));
        assertEquals(12.350, Psychrometrics.saturationPressurePa(50) / 1000, 0.0005);
    }

    /** Analytic: 331 kJ warm the wilted 4.5 kg from 21 to 45 °C, 21.2 g or .57 % of dry matter. */
    @Test
    void warmingUpCostsHalfAPercent() {
        PieceState pile = packed(4.5, 27.5, 21);
        double heatKJ =
                24 * MODEL.capacityKJPerK(pile.mass().dryMatterKg(), pile.mass().waterKg());
        assertEquals(331, heatKJ, 3.3);
        double lostKg = heatKJ / piecewright.process.Metabolism.KJ_PER_KG_RESPIRED;
        assertEquals(0.0212, lostKg, 0.0002);
        assertEquals(0.0057, lostKg / pile.mass().dryMatterKg(), 0.0001);
    }

    /** Analytic: 5 kg of water cool from 50 to 40.5 °C in 6 h at 20 °C through .424 W/K. */
    @Test
    void warmWaterTellsTheBoxsLoss() {
        assertEquals(23.95, MODEL.capacityKJPerK(0, 5), 1e-9);
        assertEquals(0.424, MODEL.waterTestLossWPerK(5, 50, 40.5, 20, 6), 0.004);
        assertThrows(IllegalArgumentException.class, () -> MODEL.waterTestLossWPerK(5, 50, 51, 20, 6));
        assertThrows(IllegalArgumentException.class, () -> MODEL.waterTestLossWPerK(5, 50, 40, 41, 6));
    }

    /** Judgement of the model: a quarter of the loss grows with the pile. */
    @Test
    void lossDependsOnBoxAndPile() {
        assertEquals(0.424, MODEL.lossWPerK(4.5), 1e-12);
        assertEquals(0.53, MODEL.lossWPerK(9), 1e-12);
        InsulatedBox measured = new InsulatedBox("box", "cellar", 45, OptionalDouble.of(0.6));
        assertEquals(0.6, CouchModel.of(measured, CouchParameters.defaults(), 1).lossWPerK(4.5), 1e-12);
        InsulatedBox unmeasured = new InsulatedBox("box", "cellar", 45, OptionalDouble.empty());
        assertEquals(
                0.424, CouchModel.of(unmeasured, CouchParameters.defaults(), 1).lossWPerK(4.5), 1e-12);
    }

    /** Judgement of the model: an hour at 48 °C and 40 % counts as one. */
    @ParameterizedTest
    @CsvSource(textBlock = """
            48, 0.40, 1
            38, 0.40, 0.5
            48, 0.30, 0.5
            48, 0.45, 1.1
            29.9, 0.40, 0
            54.1, 0.40, 0
            48, 0.15, 0
            """)
    void theIndexCountsWarmWetHours(double pileC, double moistureFraction, double perHour) {
        assertEquals(perHour, CouchModel.indexPerHour(pileC, moistureFraction), 1e-12);
    }

    /** Property: the made-up past of a packed pile has closed books. */
    @Test
    void aPackedPilesBooksClose() {
        PieceState pile = packed(4.5, 40, 21);
        Ledgers.Water water = pile.ledgers().water();
        assertEquals(
                4.5 * 0.12 + water.absorbedKg() + water.formedKg(), pile.mass().waterKg(), 1e-12);
        assertEquals(
                4.5 * 0.88 - pile.ledgers().dryMatter().respiredKg(),
                pile.mass().dryMatterKg(),
                1e-12);
    }

    /** Judgement of the model, from layered runs. */
    @Test
    void theProbesPlaceIsAllowedFor() {
        assertEquals(49, CouchProbe.MIDDLE.meanC(50));
        assertEquals(51, CouchProbe.BOTTOM.meanC(50));
    }

    @Test
    void deadCornsHeatNothing() {
        CouchModel half = new CouchModel(CouchParameters.defaults(), 0.5);
        assertEquals(0.5 * MODEL.heatWPerKgDry(35, 0.35, 0.8), half.heatWPerKgDry(35, 0.35, 0.8), 1e-12);
        assertThrows(IllegalArgumentException.class, () -> new CouchModel(CouchParameters.defaults(), 1.1));
    }
}
