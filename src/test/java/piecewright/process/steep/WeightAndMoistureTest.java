package piecewright.process.steep;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import piecewright.process.GrainMass;
import piecewright.quantity.Moisture;

/** What the scale shows and what it means; all worked by hand from the mass balance. */
class WeightAndMoistureTest {
    @ParameterizedTest
    @CsvSource(textBlock = """
            # grainKg, startPercent, lostFraction, endPercent, endKg
            5, 12, 0, 45, 8.0000
            5, 12, 0.01, 45, 7.9200
            10, 13, 0.01, 46, 15.950
            1, 12, 0, 42, 1.5172
            1, 12, 0, 46.75, 1.6526
            5, 12, 0.01, 45.550, 8.0000
            5, 12, 0.005, 40.838, 7.4
            """)
    void weightFollowsDryMatterAndMoisture(
            double grainKg, double startPercent, double lostFraction, double endPercent, double endKg) {
        double initialKg = grainKg * (1 - startPercent / 100);
        double dryKg = initialKg * (1 - lostFraction);
        Moisture end = Moisture.ofWetBasisPercent(endPercent);
        GrainMass mass = new GrainMass(initialKg, dryKg, dryKg * end.dryBasisRatio());
        assertEquals(endKg, mass.totalKg(), 0.0005);
        assertEquals(endPercent, mass.moisture().wetBasisPercent(), 1e-9);
    }

    @Test
    void fiveKilosDrinkThreeLitresToFortyFivePercent() {
        double drunkKg = 5
                * 0.88
                * (Moisture.ofWetBasisPercent(45).dryBasisRatio()
                        - Moisture.ofWetBasisPercent(12).dryBasisRatio());
        assertEquals(3.00, drunkKg, 0.005);
        assertEquals(0.13636, Moisture.ofWetBasisPercent(12).dryBasisRatio(), 1e-5);
        assertEquals(52.381, Moisture.ofDryBasisRatio(1.10).wetBasisPercent(), 1e-3);
    }
}
