package piecewright.store;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import piecewright.plan.CouchedDemo;
import piecewright.plan.Obstacle;
import piecewright.text.DisplayUnits;
import piecewright.text.Wording;
import tools.jackson.databind.JsonNode;

/** Whether a couch heats, and what its thermometer reads, for programs. */
class CouchJsonTest {
    private static final PlanJson JSON = new PlanJson(
            new Wording(DisplayUnits.metric(), CouchedDemo.request().house().zone()));

    private static JsonNode plan() throws StoreException {
        return JsonText.parse(Path.of("plan.json"), JSON.write(CouchedDemo.plan()))
                .get("plan");
    }

    /** The references: 1.4 times the least pile that heats itself heats for certain. */
    @Test
    void thePlanSaysWhetherThePileHeats() throws StoreException {
        List<JsonNode> said = plan().get("findings")
                .valueStream()
                .filter(finding -> finding.has("outlook"))
                .toList();
        assertEquals(1, said.size());
        assertEquals("will-heat", said.get(0).get("outlook").stringValue());
        assertTrue(said.get(0).get("sizeRatio").doubleValue() >= 1.4);
        assertEquals("couch.pack", said.get(0).get("about").stringValue());
        assertTrue(said.get(0).get("text").stringValue().startsWith("The heap is "));
    }

    /** The references: a layered pile is 1 K warmer than its mean in the middle, 1 K cooler near the bottom. */
    @Test
    void everyLookSaysWhatEachProbeReads() throws StoreException {
        int looks = 0;
        for (JsonNode act : plan().get("acts")) {
            JsonNode expect = act.get("expect");
            if (!act.get("kind").stringValue().equals("check")) {
                assertFalse(expect.has("middleProbeC"), act.toString());
                continue;
            }
            looks++;
            double meanC = expect.get("grainC").doubleValue();
            assertEquals(meanC + 1, expect.get("middleProbeC").doubleValue(), 0.051);
            assertEquals(meanC - 1, expect.get("bottomProbeC").doubleValue(), 0.051);
        }
        assertTrue(looks > 0);
    }

    @Test
    void aPileTooSmallWillNotHeat() throws StoreException {
        Obstacle small =
                new Obstacle.CouchTooSmall(2.1, 14, new Obstacle.CouchTooSmall.Remedies(4.4, 21.5, 0.424, 0.21));
        String text = JSON.refusal(List.of(small, new Obstacle.NoBox()), List.of());
        JsonNode obstacles = JsonText.parse(Path.of("refusal.json"), text).get("obstacles");
        assertEquals("will-not", obstacles.get(0).get("outlook").stringValue());
        assertTrue(obstacles.get(0).get("text").stringValue().contains("would stay cold"));
        assertFalse(obstacles.get(1).has("outlook"));
    }
}
