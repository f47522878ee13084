package piecewright.colour;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import piecewright.quantity.Units;

/** Hex oracles: the same formulas worked elsewhere (set 1 of deLange, D65, 2°, plain clipping); ±2 per channel. */
class SwatchTest {
    @ParameterizedTest
    @CsvSource(textBlock = """
            1,   FEFAEF
            2,   FDF6DF
            4,   FBECC3
            6,   F9E3AA
            10,  F4D180
            20,  E7AA31
            30,  D98A00
            40,  C97000
            60,  AC4900
            100, 7D1900
            200, 390000
            """)
    void srmInOneCentimetreLooksAsWorkedElsewhere(double srm, String expectedHex) {
        assertNear(expectedHex, Swatch.ofMalt(Units.ebcOfSrm(srm)));
    }

    @ParameterizedTest
    @CsvSource(textBlock = """
            3,   FDF8E6
            7,   FBEEC9
            15,  F7DC98
            25,  F1C668
            60,  D88900
            150, 973200
            300, 530000
            """)
    void maltLooksAsWorkedElsewhere(double colourEbc, String expectedHex) {
        assertNear(expectedHex, Swatch.ofMalt(colourEbc));
    }

    /** Worked elsewhere: SRM 10 in 1 cm. */
    @Test
    void tristimulusOfSrmTenIsAsWorkedElsewhere() {
        Tristimulus seen = WortSpectrum.seenThrough(Units.ebcOfSrm(10), 1);
        assertEquals(0.6419, seen.xRatio(), 1e-4);
        assertEquals(0.6666, seen.yRatio(), 1e-4);
        assertEquals(0.2979, seen.zRatio(), 1e-4);
    }

    /** Published: CIE 15:2004, D65 white for the 2° observer, at this summation. */
    @Test
    void colourlessIsTheWhiteOfDaylight() {
        Tristimulus white = WortSpectrum.seenThrough(0, 1);
        assertEquals(0.95043, white.xRatio(), 1e-5);
        assertEquals(1, white.yRatio());
        assertEquals(1.08880, white.zRatio(), 1e-5);
        assertEquals("FFFFFF", Swatch.ofMalt(0).hex());
        assertEquals("FFFFFF", Swatch.of(WortSpectrum.seenThrough(50, 0)).hex());
    }

    /** Published: spectra are of the usual shape when A700/A430 is below 0.039 (deLange 2007). */
    @Test
    void spectrumPassesTheTestOfTheColourMethod() {
        assertEquals(1, WortSpectrum.shapeRatio(430));
        assertEquals(0.0364, WortSpectrum.shapeRatio(700), 1e-4);
        assertTrue(WortSpectrum.shapeRatio(700) < 0.039);
    }

    /**
     * Published: another fit, to 99 beers. The two are told to differ by 2.7 of CIE 1976 Lab at most up to 500 SRM through
     * 1 cm, a computed figure; here it comes to 3.03, near 250 SRM.
     */
    @Test
    void anotherPublishedSpectrumGivesNearlyTheSameColour() {
        assertEquals(0.0343, otherShape(700), 1e-4);
        for (double srm = 1; srm <= 500; srm *= 1.3) {
            double absorbance = srm / 12.7;
            Tristimulus other = StandardObserver.seenThrough(nm -> Math.pow(10, -absorbance * otherShape(nm)));
            Tristimulus ours = WortSpectrum.seenThrough(Units.ebcOfSrm(srm), 1);
            double apart = apart(ours, other);
            assertTrue(apart <= 3.1 && apart > 0, srm + " SRM: " + apart);
        }
    }

    private static double otherShape(double wavelengthNm) {
        double beyondNm = wavelengthNm - 430;
        return 0.018747 * Math.exp(-beyondNm / 13.374) + 0.98226 * Math.exp(-beyondNm / 80.514);
    }

    /** Distance in CIE 1976 Lab. */
    private static double apart(Tristimulus one, Tristimulus other) {
        double x = root(one.xRatio() / 0.95043) - root(other.xRatio() / 0.95043);
        double y = root(one.yRatio()) - root(other.yRatio());
        double z = root(one.zRatio() / 1.08880) - root(other.zRatio() / 1.08880);
        return Math.sqrt(Math.pow(116 * y, 2) + Math.pow(500 * (x - y), 2) + Math.pow(200 * (y - z), 2));
    }

    private static double root(double ratio) {
        double linear = Math.pow(6.0 / 29, 3);
        return ratio > linear ? Math.cbrt(ratio) : ratio / (3 * Math.pow(6.0 / 29, 2)) + 4.0 / 29;
    }

    @Test
    void onlyColourTimesPathMatters() {
        assertEquals(
                WortSpectrum.seenThrough(40, 1).yRatio(),
                WortSpectrum.seenThrough(8, 5).yRatio(),
                1e-12);
        assertEquals(Swatch.ofMalt(40), Swatch.ofBeer(8));
    }

    @Test
    void darkerIsNeverLighterNorGreener() {
        double lightnessPercent = 101;
        int green = 256;
        for (double colourEbc = 0; colourEbc <= 1600; colourEbc += 4) {
            Tristimulus seen = WortSpectrum.seenThrough(colourEbc, 1);
            assertTrue(seen.lightnessPercent() < lightnessPercent, "lightness at " + colourEbc);
            lightnessPercent = seen.lightnessPercent();
            assertTrue(Swatch.of(seen).green() <= green, "green at " + colourEbc);
            green = Swatch.of(seen).green();
        }
    }

    /** Worked: L* of 18 % grey is 49.5 (CIE 1976). */
    @Test
    void lightnessFollowsTheCubeRoot() {
        assertEquals(49.5, new Tristimulus(0.18, 0.18, 0.18).lightnessPercent(), 0.05);
        assertEquals(100, new Tristimulus(1, 1, 1).lightnessPercent(), 1e-12);
        assertEquals(0, new Tristimulus(0, 0, 0).lightnessPercent());
    }

    @Test
    void impossibleColoursAreRefused() {
        assertThrows(IllegalArgumentException.class, () -> WortSpectrum.seenThrough(-1, 1));
        assertThrows(IllegalArgumentException.class, () -> WortSpectrum.seenThrough(Double.NaN, 1));
        assertThrows(IllegalArgumentException.class, () -> new Swatch(256, 0, 0));
    }

    private static void assertNear(String expectedHex, Swatch actual) {
        int expected = Integer.parseInt(expectedHex, 16);
        String shown = expectedHex + " but was " + actual.hex();
        assertEquals(expected >> 16, actual.red(), 2, shown);
        assertEquals(expected >> 8 & 255, actual.green(), 2, shown);
        assertEquals(expected & 255, actual.blue(), 2, shown);
    }
}
