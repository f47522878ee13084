package piecewright.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Duration;
import org.junit.jupiter.api.Test;
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

    /** Steep page of the references, 3.1, common practice: what one soak lasts in water so warm, and never longer. */
    @ParameterizedTest
    @CsvSource({"9, 12, 14", "12, 10, 12", "15, 8, 10", "18, 6, 8", "21, 4, 6"})
    void colderWaterLetsBarleyLieLonger(double waterC, double usual, double longest) throws StoreException {
        Rules rules = rules("pale");
        for (int immersion = 1; immersion <= 2; immersion++) {
            assertEquals(0, rules.immersionEndsInTime(immersion, usual, waterC));
            assertEquals(longest, rules.longestUsualSoakHours(immersion, waterC));
            double atLongest = rules.immersionEndsInTime(immersion, longest, waterC);
            assertTrue(atLongest > 0 && atLongest <= 1.25 * Slip.AT_SOFT_MINUTES, immersion + ": " + atLongest);
        }
    }

    /** Studies in Barley and Malt XXII, 1964: a first steep should reach 32 %. */
    @Test
    void theFirstSoakShouldReachThirtyTwoPercent() throws StoreException {
        assertEquals(0, rules("pale").firstSoakWetsEnough(0.32));
        assertEquals(60, rules("pale").firstSoakWetsEnough(0.29), 1e-9);
        assertTrue(DemoPlan.plan().acts().get(1).expect().moisture().wetBasisFraction() >= 0.32);
    }

    /** So that four more hours under water never come cheaper than coming back for a drain and a soak. */
    @Test
    void hoursOverTheLongestUsualSoakCostMoreThanAnotherImmersionTakes() throws StoreException {
        Rules rules = rules("pale");
        for (double waterC = 6; waterC <= 20; waterC += 2) {
            double longest = rules.longestUsualSoakHours(1, waterC);
            double more =
                    rules.immersionEndsInTime(1, longest + 4, waterC) - rules.immersionEndsInTime(1, longest, waterC);
            assertTrue(more > 25, waterC + ": " + more);
        }
    }

    /** What the bound of the search asks of a steep in water of uncertain warmth. */
    @ParameterizedTest
    @ValueSource(strings = {"pale", "wheat-pale", "rye-pale", "spelt-pale", "hull-less", "oat"})
    void noImmersionCostsLessThanTheColdestWaterSays(String style) throws StoreException {
        Rules rules = rules(style);
        for (int immersion = 1; immersion <= 2; immersion++) {
            for (double coldestC = 4; coldestC <= 24; coldestC += 0.5) {
                for (double waterC = coldestC; waterC <= 24; waterC += 0.25) {
                    for (double hours = 0.5; hours <= 41; hours += 0.5) {
                        double least = rules.immersionCostsAtLeast(immersion, hours, coldestC);
                        double cost = rules.immersionEndsInTime(immersion, hours, waterC);
                        assertTrue(least <= cost + 1e-9, immersion + " " + coldestC + " " + waterC + " " + hours);
                    }
                }
            }
        }
    }

    @Test
    void theDemoPieceLiesUnderWaterNoLongerThanIsUsual() throws StoreException {
        Plan plan = DemoPlan.plan();
        int soaks = 0;
        for (int i = 0; i < plan.acts().size() - 1; i++) {
            if (plan.acts().get(i).kind() != ActKind.SOAK) continue;
            Act drain = plan.acts().get(i + 1);
            double hours = Duration.between(plan.acts().get(i).startsAt(), drain.startsAt())
                            .toMinutes()
                    / 60.0;
            double waterC = drain.expect().grainC();
            assertTrue(hours <= rules("pale").longestUsualSoakHours(++soaks, waterC), drain.id() + ": " + hours);
        }
        assertTrue(soaks >= 2);
    }
}
