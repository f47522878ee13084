package piecewright.process.kiln;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Oracles: the constructed law worked elsewhere; it is a judgement and good to 15 percentage points. */
class EnzymeSurvivalTest {
    private final EnzymeSurvival enzymes = new EnzymeSurvival(EnzymeParameters.defaults());

    /** The grain temperature at which 2 % is lost per hour, by wet-basis moisture. */
    @ParameterizedTest
    @CsvSource(textBlock = """
            40, 50.5
            12, 72.1
            5,  78.0
            """)
    void twoPercentAnHourAreLostWhereWorkedElsewhere(double percent, double grainC) {
        assertTrue(enzymes.lossPerHour(grainC - 0.2, percent / 100) < 0.02);
        assertTrue(enzymes.lossPerHour(grainC + 0.2, percent / 100) > 0.02);
    }

    /** Half-lives. */
    @ParameterizedTest
    @CsvSource(textBlock = """
            50,  40,  37
            65,  45,  3.1
            65,  12,  84
            80,  5,   28
            98,  3,   4.7
            103, 4.5, 2.4
            """)
    void halfIsLeftAfterTheHalfLifeWorkedElsewhere(double grainC, double percent, double hours) {
        assertEquals(0.5, enzymes.survivingFraction(grainC, percent / 100, hours), 0.01);
    }

    /** A pale kiln leaves 0.79, a dark one 0.20, with grain at the air's temperature from 55 or 65 °C on. */
    @Test
    void paleKilningSparesThemAndDarkKilningDoesNot() {
        double pale = enzymes.survivingFraction(55, 0.17, 5)
                * enzymes.survivingFraction(65, 0.10, 2)
                * enzymes.survivingFraction(75, 0.07, 1)
                * enzymes.survivingFraction(85, 0.045, 4);
        double dark = enzymes.survivingFraction(65, 0.17, 5)
                * enzymes.survivingFraction(85, 0.08, 1)
                * enzymes.survivingFraction(103, 0.045, 5);
        assertEquals(0.79, pale, 0.03);
        assertEquals(0.20, dark, 0.03);
    }

    /** A stew of 4 h at 65 °C and 45 % leaves 0.43. */
    @Test
    void wetHeatIsWorstAndMoreThanFullyWetIsNoWorse() {
        assertEquals(0.43, enzymes.survivingFraction(65, 0.45, 4), 0.03);
        assertTrue(enzymes.lossPerHour(65, 0.45) > enzymes.lossPerHour(65, 0.10));
        assertEquals(enzymes.lossPerHour(65, 0.45), enzymes.lossPerHour(65, 0.5));
    }
}
