package piecewright.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import piecewright.store.StoreException;
import piecewright.store.StyleLibrary;
import piecewright.style.MaltStyle;

/** How long grain may lie under water by what it is. */
class SoakLengthsTest {
    private static Rules rules(String style) throws StoreException {
        MaltStyle found = StyleLibrary.builtIn().style(style);
        return new Rules(found, 0);
    }

    /** Steep page of the references, judgement: wheat 4 to 6 h, rye 3 to 5 h; barley 6 to 8 h, common practice. */
    @ParameterizedTest
    @CsvSource({"pale, 6, 8", "wheat-pale, 4, 6", "rye-pale, 3, 5", "spelt-pale, 4, 6", "hull-less, 4, 6", "oat, 5, 7"})
    void firstSoaksAreFreeForAsLongAsTheGrainLikes(String style, double early, double latest) throws StoreException {
        Rules rules = rules(style);
        assertEquals(0, rules.immersionEndsInTime(1, early, 15));
        assertEquals(0, rules.immersionEndsInTime(1, latest, 15));
        assertTrue(rules.immersionEndsInTime(1, latest + 1, 15) > 0);
        assertTrue(rules.immersionEndsInTime(1, early - 1, 15) > 0);
    }

    @ParameterizedTest
    @ValueSource(strings = {"wheat-pale", "rye-pale", "spelt-pale", "hull-less", "oat"})
    void noOtherGrainMayLieUnderWaterLongerThanBarley(String style) throws StoreException {
        for (double waterC = 6; waterC <= 24; waterC += 2) {
            for (int immersion = 1; immersion <= 3; immersion++) {
                Slip barley = rules("pale").immersionSlip(immersion, waterC);
                Slip other = rules(style).immersionSlip(immersion, waterC);
                assertTrue(other.softHours() < barley.softHours() && other.hardHours() < barley.hardHours());
            }
        }
    }
}
