package piecewright.quantity;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;

class UnitsTest {
    /** Published: SRM = 12.7 A430 and EBC = 25 A430; the usual "1.97" is that ratio. */
    @Test
    void srmAndEbcAreTheSameAbsorbance() {
        assertEquals(25, Units.ebcOfSrm(12.7), 1e-12);
        assertEquals(25.4, Units.srmOfEbc(50), 1e-12);
        assertEquals(19.7, Units.ebcOfSrm(10), 0.02);
    }

    /** Published: regression of SRM on Lovibond (the last two printed with it); 2.65 L - 1.2 gives EBC 157.8 at 60. */
    @Test
    void lovibondIsNotSrm() {
        assertEquals(80.5, Units.srmOfLovibond(60), 0.05);
        assertEquals(158.6, Units.ebcOfSrm(Units.srmOfLovibond(60)), 0.5);
        assertEquals(2.65 * 60 - 1.2, Units.ebcOfSrm(Units.srmOfLovibond(60)), 1);
        assertEquals(4.66, Units.srmOfLovibond(4), 0.01);
        assertEquals(216, Units.srmOfLovibond(160), 0.5);
    }

    @Test
    void lovibondRoundTripsAboveItsFoot() {
        assertEquals(37.5, Units.lovibondOfSrm(Units.srmOfLovibond(37.5)), 1e-12);
        assertEquals(0, Units.srmOfLovibond(0.3));
    }

    /** Published: degrees Lintner = (WK + 16) / 3.5. */
    @Test
    void windischKolbachBecomesLintner() {
        assertEquals(61.7, Units.lintnerOfWindischKolbach(200), 0.05);
        assertEquals(27.4, Units.lintnerOfWindischKolbach(80), 0.05);
    }

    /** Worked: water freezes at 32 °F and boils at 212; a step of 9 °F is 5 K. */
    @Test
    void fahrenheitHasAnOffsetButItsStepsHaveNone() {
        assertEquals(0, Units.celsiusOfFahrenheit(32));
        assertEquals(212, Units.fahrenheitOfCelsius(100));
        assertEquals(5, Units.kelvinOfFahrenheitSteps(9));
    }

    /** Published: international pound; 4.5 kg is 9 lb 14.7 oz. */
    @Test
    void poundsAndOuncesAreExact() {
        assertEquals(4.5, 9 * Units.KG_PER_POUND + 14.73 * Units.KG_PER_OUNCE, 1e-3);
        assertEquals(16 * Units.KG_PER_OUNCE, Units.KG_PER_POUND, 1e-15);
    }
}
