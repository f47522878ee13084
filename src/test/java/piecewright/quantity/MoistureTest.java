package piecewright.quantity;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class MoistureTest {
    /** Worked: M / (100 - M). */
    @ParameterizedTest
    @CsvSource(textBlock = """
            40, 0.6667
            23, 0.2987
            44, 0.7857
            """)
    void dryBasisIsWaterOverDryMatter(double wetBasisPercent, double expectedRatio) {
        Moisture moisture = Moisture.ofWetBasisPercent(wetBasisPercent);
        assertEquals(expectedRatio, moisture.dryBasisRatio(), 1e-4);
        assertEquals(
                wetBasisPercent,
                Moisture.ofDryBasisRatio(moisture.dryBasisRatio()).wetBasisPercent(),
                1e-10);
    }

    /** Worked: 4.5 kg at 12 % hold 3.960 kg of dry matter; 95 % of it weigh 6.270 kg at 40 % and 4.886 at 23 %. */
    @Test
    void weightFollowsFromDryMatterAndMoisture() {
        double dryMatterKg = 4.5 * (1 - Moisture.ofWetBasisPercent(12).wetBasisFraction());
        assertEquals(3.960, dryMatterKg, 1e-9);
        double grownKg = 0.95 * dryMatterKg;
        assertEquals(6.270, grownKg * (1 + Moisture.ofWetBasisPercent(40).dryBasisRatio()), 0.001);
        assertEquals(4.886, grownKg * (1 + Moisture.ofWetBasisPercent(23).dryBasisRatio()), 0.001);
    }

    /** Worked: water to evaporate for each kg of malt at 4.5 %. */
    @ParameterizedTest
    @CsvSource(textBlock = """
            44, 0.705
            40, 0.592
            46, 0.769
            """)
    void waterToEvaporatePerKgOfMaltIsTheDifferenceOfRatios(double greenPercent, double expectedKg) {
        double endRatio = Moisture.ofWetBasisPercent(4.5).dryBasisRatio();
        double lostRatio = Moisture.ofWetBasisPercent(greenPercent).dryBasisRatio() - endRatio;
        assertEquals(expectedKg, lostRatio / (1 + endRatio), 0.001);
    }

    /** UK maltsters' trade association: 1000 kg of barley at 12 % make 830 kg of malt at 5 %: 0.896 of its dry matter. */
    @Test
    void theTradesYieldIsNineTenthsOfTheDryMatter() {
        Moisture barley = Moisture.ofWetBasisPercent(12);
        Moisture malt = Moisture.ofWetBasisPercent(5);
        double yield = 830 * (1 - malt.wetBasisFraction()) / (1000 * (1 - barley.wetBasisFraction()));
        assertEquals(0.896, yield, 0.01);
        assertEquals(830, 1000 * (1 - barley.wetBasisFraction()) * 0.896 / (1 - malt.wetBasisFraction()), 1);
    }

    @Test
    void wetterComparesAsMore() {
        assertTrue(Moisture.ofWetBasisPercent(44).compareTo(Moisture.ofWetBasisPercent(43)) > 0);
    }

    @ParameterizedTest
    @ValueSource(doubles = {-0.01, 1, Double.NaN})
    void impossibleMoistureIsRefused(double wetBasisFraction) {
        assertThrows(IllegalArgumentException.class, () -> new Moisture(wetBasisFraction));
    }
}
