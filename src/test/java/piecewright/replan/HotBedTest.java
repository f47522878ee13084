package piecewright.replan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Instant;
import java.util.List;
import org.junit.jupiter.api.Test;
import piecewright.plan.Households;
import piecewright.text.DisplayUnits;
import piecewright.text.MovePage;
import piecewright.text.WherePage;

/** A heat wave comes over a bed that was planned in the cool: it is not refused, but said on top with what to do. */
class HotBedTest {
    private static final DisplayUnits UNITS = DisplayUnits.metric();

    private static Story in(double lowC, double highC) {
        Story cool = Story.PALE.byPlanUntil("floor.turn-1");
        return new Story(cool.wish().withHouse(Households.garage(lowC, highC)), cool.plan(), cool.journal());
    }

    private static Instant afterSpreading(Story story) {
        return story.act("floor.spread").startsAt().plusSeconds(1800);
    }

    @Test
    void aHotBedIsTheFirstThingSaidWithWhatToDo() {
        Story story = in(27, 33);
        Instant now = afterSpreading(story);
        HotBed hot = story.where(now).help().hotBed().orElseThrow();
        assertEquals(20, hot.warmestC());
        assertTrue(hot.expectedC() > 27, hot.toString());
        List<String> sentences = new WherePage(UNITS, story.wish().house().zone()).sentences(story.where(now));
        assertTrue(sentences.get(0).startsWith("Too hot: from "), sentences.toString());
        for (String help : List.of("Turn it now", "thin", "cooler place"))
            assertTrue(sentences.get(0).contains(help), sentences.toString());
        ReplanResult result = story.result(now);
        String page = new MovePage(UNITS, story.wish().house().zone(), story.journal()).of(result, story.plan());
        assertTrue(page.startsWith("The bed is too warm: "), page);
    }

    @Test
    void inTheCoolNothingIsSaidOfIt() {
        Story story = in(9, 14);
        assertTrue(story.where(afterSpreading(story)).help().hotBed().isEmpty());
    }
}
