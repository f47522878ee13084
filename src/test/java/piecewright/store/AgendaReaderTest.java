package piecewright.store;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import piecewright.plan.Act;
import piecewright.plan.Agenda;
import piecewright.plan.Expectation;
import piecewright.plan.Plan;
import piecewright.quantity.Moisture;
import piecewright.text.DisplayUnits;
import piecewright.text.PlanSamples;
import piecewright.text.Wording;

class AgendaReaderTest {
    private static final Plan PLAN = PlanSamples.plan();
    private static final String JSON = new PlanJson(new Wording(DisplayUnits.metric(), PlanSamples.OSLO)).write(PLAN);

    @Test
    void actsAndPhasesComeBackAsTheyWereToTheRoundingOfTheDocument() throws StoreException {
        Agenda read = AgendaReader.read(Path.of("b.json"), JSON);
        assertEquals(PLAN.subject(), read.subject());
        assertEquals(PLAN.phases(), read.phases());
        Act raise = PLAN.acts().get(1);
        Expectation rounded = new Expectation(4.5, new Moisture(0.13), 38, OptionalDouble.of(0.754));
        assertEquals(
                new Act(
                        raise.id(),
                        raise.kind(),
                        raise.startsAt(),
                        raise.work(),
                        raise.window(),
                        raise.setting(),
                        rounded,
                        raise.cautions()),
                read.acts().get(1));
        assertEquals(6.270, read.acts().get(0).expect().massKg(), 1e-12, "to the gram, of 6.2704");
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            "kind" : "raise"         | "kind" : "rise"            | plan.acts[1].kind
            "timeZone" : "Europe/Oslo" | "timeZone" : "Mars/North" | plan.timeZone
            "minutes" : 30           | "minutes" : -1             | plan.acts[0].minutes
            "latest" : "2031-03-21T19:00:00+01:00" | "latest" : "soon" | plan.acts[0].latest
            "hardLatest" : "2031-03-21T20:00:00+01:00" | "hardLatest" : "2031-03-20T20:00:00+01:00" | plan.acts[0]
            [ "fire", "hot-surfaces" ] | [ "fire", "dragons" ]     | plan.acts[1].cautionKinds
            """)
    void aDamagedDocumentIsRefusedByFileAndKey(String good, String bad, String key) {
        assertNotEquals(JSON, JSON.replace(good, bad), "the table must change the document");
        StoreException refused =
                assertThrows(StoreException.class, () -> AgendaReader.read(Path.of("b.json"), JSON.replace(good, bad)));
        assertTrue(String.valueOf(refused.getMessage()).startsWith("b.json: key \"" + key), refused.getMessage());
    }
}
