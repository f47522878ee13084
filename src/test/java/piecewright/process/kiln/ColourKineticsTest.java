package piecewright.process.kiln;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Oracles: the fitted law worked elsewhere. They hold the code, not malt; the fit itself is a judgement. */
class ColourKineticsTest {
    private final ColourKinetics colour = new ColourKinetics(ColourParameters.defaults());

    @ParameterizedTest
    @CsvSource(textBlock = """
            65,  0.020, 0.03
            85,  0.282, 0.01
            100, 1.71,  0.01
            150, 210,   0.01
            175, 1020,  0.01
            220, 5510,  0.01
            """)
    void rateFollowsTheTwoLawsInSeries(double grainC, double expectedEbcPerHour, double toleranceFraction) {
        assertEquals(expectedEbcPerHour, colour.ebcPerHour(grainC), toleranceFraction * expectedEbcPerHour);
    }

    @ParameterizedTest
    @CsvSource(textBlock = """
            2,   85,  4.5, 1,   4,   3.2
            2,   98,  3,   1,   3,   5.7
            2.5, 103, 4.5, 1.5, 4.5, 19.4
            55,  121, 2,   9,   1,   166.7
            3.5, 220, 1,   1,   0.5, 1154
            """)
    void steadyHeatColoursAsTheClosedFormSays(
            double startEbc, double grainC, double percent, double substrateRatio, double hours, double expectedEbc) {
        double endEbc = colour.isothermalEbc(startEbc, grainC, percent / 100, substrateRatio, hours);
        assertEquals(expectedEbc, endEbc, 0.01 * expectedEbc);
    }

    /** Grain at the air's temperature and 4.2 % moisture, 2.2 EBC once dry: the fit's own look-ups of curing. */
    @ParameterizedTest
    @CsvSource(textBlock = """
            80,  2, 2.5
            80,  4, 2.8
            85,  4, 3.3
            90,  3, 3.8
            95,  4, 6.1
            100, 3, 7.4
            105, 2, 8.3
            110, 2, 12.8
            """)
    void curesColourAsTheFitsLookUpsSay(double cureC, double hours, double expectedEbc) {
        assertEquals(expectedEbc, colour.isothermalEbc(2.2, cureC, 0.042, 1, hours), 0.03 * expectedEbc);
    }

    /**
     * Published range 20 to 50 EBC for hot-couched malt; fitted law 17, 25, 39. Ten hours from 50 to 75 °C while
     * moisture goes from 40 to 10 %, then four hours of cure while it falls to 4.5 %; grain at the air's temperature.
     */
    @ParameterizedTest
    @CsvSource(textBlock = """
            80, 17
            85, 25
            90, 39
            """)
    void aHotCouchMakesACoolCureDark(double cureC, double expectedEbc) {
        double substrateRatio = colour.couchedSubstrateRatio(1, 60);
        double colourEbc = 2.5;
        double stepHours = 0.02;
        for (double at = stepHours / 2; at < 10; at += stepHours) {
            colourEbc = colour.isothermalEbc(colourEbc, 50 + 2.5 * at, 0.40 - 0.03 * at, substrateRatio, stepHours);
        }
        for (double at = stepHours / 2; at < 4; at += stepHours) {
            double moisture = 0.045 + 0.055 * Math.exp(-at / 1.5);
            colourEbc = colour.isothermalEbc(colourEbc, cureC, moisture, substrateRatio, stepHours);
        }
        assertEquals(expectedEbc, colourEbc, 0.05 * expectedEbc);
    }

    /** The rate is the slope of the closed form. */
    @Test
    void rateAndClosedFormAreTheSameLaw() {
        double hours = 1e-5;
        double later = colour.isothermalEbc(400, 160, 0.03, 2, hours);
        assertEquals(colour.formationEbcPerHour(400, 160, 0.03, 2), (later - 400) / hours, 0.01);
    }

    @Test
    void colourNeverFallsAndNeverPassesTheCeiling() {
        for (double grainC = 20; grainC <= 230; grainC += 15) {
            for (double startEbc = 0; startEbc <= 1600; startEbc += 200) {
                double endEbc = colour.isothermalEbc(startEbc, grainC, 0.1, 12, 10);
                assertTrue(endEbc >= startEbc && endEbc <= 1600, grainC + " °C from " + startEbc);
            }
        }
        assertEquals(0, colour.formationEbcPerHour(1700, 200, 0.02, 1));
        assertEquals(1700, colour.isothermalEbc(1700, 200, 0.02, 1, 5));
    }

    /** Worked: 2.5 per 35 h of index, ceiling 12: index 9 gives 1.9, 31 gives 9. */
    @Test
    void aHotCouchMultipliesTheSubstrate() {
        assertEquals(1.5, colour.couchedSubstrateRatio(1.5, 0));
        assertEquals(1.9, colour.couchedSubstrateRatio(1, 9), 0.05);
        assertEquals(9.2, colour.couchedSubstrateRatio(1, 31), 0.1);
        assertEquals(12, colour.couchedSubstrateRatio(1, 60));
        assertEquals(14, colour.couchedSubstrateRatio(14, 60));
    }

    @Test
    void moistureOutsideTheFitCountsAsItsEdge() {
        assertEquals(colour.formationEbcPerHour(2, 80, 0.10, 1), colour.formationEbcPerHour(2, 80, 0.40, 1));
        assertEquals(colour.formationEbcPerHour(2, 80, 0.01, 1), colour.formationEbcPerHour(2, 80, 0.002, 1));
    }

    @Test
    void aMeasuredColourScalesTheRateAlone() {
        ColourParameters usual = ColourParameters.defaults();
        ColourKinetics darker = new ColourKinetics(usual.withRateRatio(1.3));
        assertEquals(1.3 * colour.ebcPerHour(90), darker.ebcPerHour(90), 1e-12);
        assertEquals(usual, usual.withRateRatio(1.3).withRateRatio(1));
    }
}
