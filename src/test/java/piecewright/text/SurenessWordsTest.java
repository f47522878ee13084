package piecewright.text;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static piecewright.text.PlanSamples.OSLO;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import piecewright.ensemble.Doubt;
import piecewright.ensemble.Fault;
import piecewright.ensemble.Help;
import piecewright.ensemble.Sureness;
import piecewright.ensemble.Verdict;
import piecewright.plan.Plan;

class SurenessWordsTest {
    private static SurenessWords words(DisplayUnits units) {
        return new SurenessWords(units, OSLO);
    }

    private final Plan plan = PlanSamples.plan();
    private final Sureness sureness = SurenessSamples.sureness();

    private String act(int index, DisplayUnits units) {
        var act = plan.acts().get(index);
        return words(units).act(act, sureness.act(act.id()).orElseThrow());
    }

    @Test
    void anActHasOneShortBand() {
        assertEquals("Eight in ten: 6100 g to 6400 g.", act(0, DisplayUnits.metric()));
        assertEquals("Eight in ten: 13 lb 7.2 oz to 14 lb 1.8 oz.", act(0, DisplayUnits.us()));
        assertEquals(
                "Eight in ten: 4410 g to 4622 g, from Sat 22 Mar 14:00 until Sun 23 Mar 00:00,"
                        + " needed in 83 % of cases.",
                act(1, DisplayUnits.metric()));
    }

    @Test
    void theVerdictSaysChanceWeakestActAndHelp() {
        assertEquals(
                "Chance that all goes well: 86 %. Chance that nothing is spoilt: 99 %."
                        + " Most likely problem: Raise the heat 2 runs late (12 %)."
                        + " What helps most of all that was tried: Steep water chilled to 7 °C. Then the chance is 93 %.",
                words(DisplayUnits.metric()).verdict(plan, sureness));
    }

    @Test
    void everyFaultAndHelpHasItsWords() {
        for (Fault fault : Fault.values()) {
            for (Doubt doubt : List.of(Doubt.STEEP_RATE, Doubt.AIR_FLOW, Doubt.RAW_MOISTURE)) {
                Verdict verdict = new Verdict(0.5, 0.9, Optional.of(new Verdict.Weakest("kiln.raise-2", fault, 0.4)));
                Sureness one = new Sureness(
                        200,
                        sureness.acts(),
                        sureness.milestones(),
                        sureness.figures(),
                        verdict,
                        Optional.of(new Help.Measured(doubt, 0.7)));
                String said = words(DisplayUnits.us()).verdict(plan, one);
                assertFalse(said.contains("{") || said.contains("null"), said);
            }
        }
    }

    @Test
    void thePieceIsToldInOneParagraph() {
        String said = words(DisplayUnits.metric()).piece(sureness);
        assertTrue(said.contains("3.2 % to 4.1 %") && said.contains("3.900 kg to 4.100 kg"), said);
        assertTrue(said.contains("200 ways"), said);
    }
}
