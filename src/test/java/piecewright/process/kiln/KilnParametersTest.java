package piecewright.process.kiln;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import org.junit.jupiter.api.Test;

class KilnParametersTest {
    private final KilnParameters usual = KilnParameters.defaults();

    @Test
    void changingOnePartChangesNothingElse() {
        DryingParameters drying = usual.drying().withKernelRatio(0.5);
        assertEquals(
                new KilnParameters(drying, usual.colour(), usual.enzymes(), usual.precursor(), usual.roast()),
                usual.withDrying(drying));
        ColourParameters colour = usual.colour().withRateRatio(1.2);
        assertEquals(
                new KilnParameters(usual.drying(), colour, usual.enzymes(), usual.precursor(), usual.roast()),
                usual.withColour(colour));
        EnzymeParameters enzymes = new EnzymeParameters(usual.enzymes().loss(), 0.08, 5, 45);
        assertEquals(
                new KilnParameters(usual.drying(), usual.colour(), enzymes, usual.precursor(), usual.roast()),
                usual.withEnzymes(enzymes));
    }

    /** Worked: 83.14 kJ/mol from 300 to 400 K multiplies by exp(10000 (1/300 - 1/400)) = exp(8.333). */
    @Test
    void arrheniusRisesWithTemperature() {
        Arrhenius law = new Arrhenius(2, 83_140, 300);
        assertEquals(2, law.perHour(300 - 273.15), 1e-12);
        assertEquals(2 * Math.exp(10_000 * (1 / 300.0 - 1 / 400.0)), law.perHour(400 - 273.15), 1e-6);
    }

    @Test
    void parametersOutOfRangeAreRefused() {
        assertThrows(IllegalArgumentException.class, () -> new Arrhenius(0, 1, 300));
        assertThrows(IllegalArgumentException.class, () -> new Arrhenius(1, -1, 300));
        assertThrows(IllegalArgumentException.class, () -> new PrecursorParameters(0, 100, 6));
        assertThrows(IllegalArgumentException.class, () -> new DryingParameters.Bound(0, 10));
        assertThrows(IllegalArgumentException.class, () -> new ColourParameters.Couched(14, 0.5));
        assertThrows(IllegalArgumentException.class, () -> new RoastParameters.Stew(74, 5, 8, 60));
        RoastParameters roast = usual.roast();
        assertThrows(
                IllegalArgumentException.class,
                () -> new RoastParameters(10, roast.sticky(), 100, 0.05, 0.06, roast.stew(), roast.burnt()));
        assertThrows(IllegalArgumentException.class, () -> usual.colour().withRateRatio(0));
    }
}
