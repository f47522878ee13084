package piecewright.process.kiln;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import piecewright.process.Psychrometrics;

/** The oracle is 200 halvings of the equation: grain and air on the line of constant enthalpy equally moist. */
class ExhaustLimitTest {
    private static final double WETTEST_FRACTION = DryingParameters.WETTEST_FRACTION;

    private static ExhaustLimit limit(AirOn air) {
        return new ExhaustLimit(air.enthalpyKJPerKg(), air.pressurePa(), WETTEST_FRACTION);
    }

    private static double halvedC(double ratio, AirOn air) {
        double lowC = -60;
        double highC = air.airOnC();
        for (int i = 0; i < 200; i++) {
            double middleC = (lowC + highC) / 2;
            double humidity = Math.min(WETTEST_FRACTION, EquilibriumMoisture.humidityFraction(middleC, ratio));
            double line = (air.enthalpyKJPerKg() - 1.006 * middleC) / (2501 + 1.86 * middleC);
            double linePa = Psychrometrics.vapourPressurePa(line, air.pressurePa());
            if (humidity * Psychrometrics.saturationPressurePa(middleC) > linePa) highC = middleC;
            else lowC = middleC;
        }
        return (lowC + highC) / 2;
    }

    @Test
    void theFewNewtonStepsAreGoodToAFiftyThousandthOfADegree() {
        DryingBed bed = new DryingBed(DryingParameters.defaults());
        for (double airOnC = 20; airOnC <= 150; airOnC += 10) {
            AirOn air = AirOn.of(airOnC, 2.5, 10, 0.7);
            for (double ratio = bed.driestRatio(air) + 0.002; ratio < 0.9; ratio += 0.02) {
                double solvedC =
                        limit(air).solvedC(EquilibriumMoisture.bindingK(ratio), airOnC, ExhaustLimit.LAST_STEP_K);
                assertEquals(halvedC(ratio, air), solvedC, 2e-5, airOnC + " °C, " + ratio);
            }
        }
    }

    /** The error stated of the table, in every air it answers for, driest malt to wettest green malt. */
    @Test
    void theTableIsGoodToAFiveThousandthOfADegree() {
        SplittableRandom random = new SplittableRandom(20_310_701);
        int answered = 0;
        for (int i = 0; i < 20_000; i++) {
            double roomC = random.nextDouble(-5, 35);
            AirOn air = AirOn.of(random.nextDouble(roomC + 5, 150), 10, roomC, random.nextDouble(0.3, 0.95));
            double ratio = 0.9 * Math.pow(random.nextDouble(), 3);
            double tabledC = ExhaustTable.limitC(air.enthalpyKJPerKg(), ratio);
            if (Double.isNaN(tabledC)) continue;
            answered++;
            assertEquals(halvedC(ratio, air), Math.min(air.airOnC(), tabledC), 2e-4, air + ", " + ratio);
        }
        assertTrue(answered > 19_500, "answered: " + answered);
    }

    /** Vapour pressure over ice and over water do not meet smoothly, and other pressures are other tables. */
    @Test
    void whereTheTableIsSilentTheLimitIsSolvedFor() {
        AirOn frosty = AirOn.of(8, 10, -15, 0.8);
        assertTrue(Double.isNaN(ExhaustTable.limitC(frosty.enthalpyKJPerKg(), 0.5)));
        assertEquals(halvedC(0.5, frosty), limit(frosty).limitC(0.5, 8), 2e-5);
        AirOn high = new AirOn(60, 0.008, 12, 80_000);
        assertEquals(halvedC(0.3, high), limit(high).limitC(0.3, 60), 2e-5);
        assertFalse(Math.abs(ExhaustTable.limitC(high.enthalpyKJPerKg(), 0.3) - halvedC(0.3, high)) < 0.5);
    }
}
