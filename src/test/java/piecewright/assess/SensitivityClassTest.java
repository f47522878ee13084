package piecewright.assess;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class SensitivityClassTest {
    /** Class limits of the 4 and 8 mL method, 10, 25 and 45 points: from memory. Longer rests: common practice, no source. */
    @ParameterizedTest
    @CsvSource(textBlock = """
            0.00, HARDLY,    0
            0.09, HARDLY,    0
            0.10, SLIGHTLY,  4
            0.25, SLIGHTLY,  4
            0.26, SENSITIVE, 8
            0.45, SENSITIVE, 8
            0.46, VERY,      8
            1.00, VERY,      8
            """)
    void pointsLostFallIntoTheClassesOfTheMethod(double lostFraction, SensitivityClass expected, double hours) {
        assertEquals(expected, SensitivityClass.of(lostFraction));
        assertEquals(hours, expected.longerRestHours());
    }
}
