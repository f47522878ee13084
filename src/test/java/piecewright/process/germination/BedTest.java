package piecewright.process.germination;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import piecewright.process.GrainMass;
import piecewright.process.Psychrometrics;
import piecewright.quantity.Moisture;

class BedTest {
    private static final Bed BED = new Bed(GrowthParameters.defaults());

    /** Judgement of the model: at 15 °C and 1.5 W/kg about 1.8 K at 5 cm, 5 at 10, more than 15 at 20 cm. */
    @ParameterizedTest
    @CsvSource(textBlock = """
            # depthCm, riseK, toleranceK
            5, 1.85, 0.05
            10, 5.38, 0.1
            20, 17.5, 0.5
            """)
    void deepBedsStandWarmer(double depthCm, double riseK, double toleranceK) {
        double dryKgPerM2 = 480 * depthCm / 100 * 0.56;
        double steadyK = BED.steadyRiseK(1.5, depthCm / 100, dryKgPerM2);
        assertEquals(riseK, steadyK, toleranceK);
        assertEquals(0, BED.warmingKPerHour(1.5, steadyK, depthCm / 100, dryKgPerM2, 0.786), 1e-12);
    }

    /** Analytic: with no loss, 1.5 W/kg warm green malt of 45 % by 1.14 K an hour, whatever the depth. */
    @Test
    void withoutLossABedWarmsByAKelvinAnHour() {
        double ratio = Moisture.ofWetBasisPercent(45).dryBasisRatio();
        assertEquals(1.14, BED.warmingKPerHour(1.5, 0, 0.1, 26, ratio), 1.14 * 0.02);
    }

    /** By hand: 8 kg over a third of a square metre at 480 kg/m³ lie 5 cm deep. */
    @Test
    void depthAndAreaAreEachOthersInverse() {
        GrainMass mass = new GrainMass(4.5, 4.4, 3.6);
        assertEquals(0.05, BED.depthM(mass, 1 / 3.0), 1e-12);
        assertEquals(1 / 3.0, BED.areaM2(mass, 0.05), 1e-12);
        GrainMass withered = new GrainMass(4.5, 4.4, 4.4 * 0.4);
        assertEquals(BED.laidDepthM(mass, 1), BED.laidDepthM(withered, 1), 1e-12, "shrinking does not count");
        GrainMass fresh = new GrainMass(5.4, 5.4, 4.6);
        assertEquals(BED.depthM(fresh, 1), BED.laidDepthM(fresh, 1), 1e-12, "laid at 46 %");
    }

    /** Common practice, no source: 46 to 27.5 % in 28 h at 23 °C; the humidity of 55 % is assumed. */
    @Test
    void witheringTakesADayAndABit() {
        double deficitKPa = Psychrometrics.vapourPressureDeficitKPa(23, 0.55);
        assertEquals(28.0, witherHours(27.5, deficitKPa, 0.025), 0.1);
        assertEquals(7.8, witherHours(40, deficitKPa, 0.025), 0.1);
        assertEquals(18.1, witherHours(33, deficitKPa, 0.025), 0.1);
        assertEquals(2 * witherHours(27.5, deficitKPa, 0.025), witherHours(27.5, deficitKPa, 0.05), 1e-9);
        assertEquals(33.6, witherHours(27.5, Psychrometrics.vapourPressureDeficitKPa(20, 0.55), 0.025), 0.2);
        assertEquals(Double.POSITIVE_INFINITY, BED.witherHours(0.8, 0.13, deficitKPa, 0.025));
    }

    private static double witherHours(double untilPercent, double deficitKPa, double laidDepthM) {
        double from = Moisture.ofWetBasisPercent(46).dryBasisRatio();
        double until = Moisture.ofWetBasisPercent(untilPercent).dryBasisRatio();
        return BED.witherHours(from, until, deficitKPa, laidDepthM);
    }

    /** From memory: thin beds lose .5 to 1.5 points a day in a damp room of 12 to 18 °C. */
    @Test
    void aFloorLosesHalfToOneAndAHalfPointsADay() {
        double deficitKPa = Psychrometrics.vapourPressureDeficitKPa(15, 0.75);
        double ratio = Moisture.ofWetBasisPercent(44).dryBasisRatio();
        double uncovered = 24 * BED.waterLossPerHour(ratio, deficitKPa, 0.05, 0.35);
        double lost = 44 - Moisture.ofDryBasisRatio(ratio - uncovered).wetBasisPercent();
        assertEquals(1.0, lost, 0.5);
        assertEquals(0, BED.waterLossPerHour(0.1, deficitKPa, 0.05, 1));
    }

    @Test
    void parametersOutOfRangeAreRefused() {
        assertThrows(IllegalArgumentException.class, () -> new GrowthParameters(0, 20, 1.2, 0.03, 0.13, 0.12, 0.35));
        assertThrows(IllegalArgumentException.class, () -> new GrowthParameters(480, 20, 1.2, -1, 0.13, 0.12, 0.35));
    }
}
