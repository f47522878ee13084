package piecewright.replan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import piecewright.journal.Report;
import piecewright.plan.Act;
import piecewright.plan.ActKind;
import piecewright.plan.PlanRequest;
import piecewright.replan.ReplanResult.Replanned;
import piecewright.replan.Rescue.Rule;
import piecewright.store.HouseFile;
import piecewright.store.LotFile;
import piecewright.store.StoreException;
import piecewright.store.StyleLibrary;

/** A roasted batch under way: its loads, late ones, and one that came out too dark or too pale. */
class RoastStoryTest {
    private static final Story AMBER = amber();

    private static Story amber() {
        try {
            return Story.of(new PlanRequest(
                    StyleLibrary.builtIn().style("amber"),
                    LotFile.read(Path.of("demo-data/lots/two-row-barley.json")),
                    HouseFile.read(Path.of("demo-data/houses/terrace-kitchen.json")),
                    new PlanRequest.Amount.RawGrain(3.6),
                    new PlanRequest.When.StartOn(LocalDate.of(2027, 4, 2))));
        } catch (StoreException unread) {
            throw new AssertionError(unread);
        }
    }

    private static List<Act> roasts() {
        return AMBER.plan().acts().stream()
                .filter(act -> act.kind() == ActKind.ROAST)
                .toList();
    }

    private static Set<Rule> rules(ReplanResult result) {
        return result.rescues().stream().map(Rescue::rule).collect(Collectors.toSet());
    }

    @Test
    void aRoastThatWasPutOffADayMovesAndNothingBeforeItDoes() {
        Act roast = roasts().get(0);
        Instant now = roast.startsAt().plus(Duration.ofHours(26));
        Replanned replanned = AMBER.byPlanUntil(roast.id()).replanned(now);
        int done = replanned.account().visits().size();
        List<Act> acts = replanned.plan().acts();
        assertTrue(acts.stream().skip(done).noneMatch(act -> act.startsAt().isBefore(now)));
        assertEquals(
                roasts().size(),
                acts.stream().filter(act -> act.kind() == ActKind.ROAST).count(),
                "every load is still to be roasted");
        assertTrue(
                replanned.moves().stream().anyMatch(move -> move.actId().equals(roast.id())),
                Story.told(replanned.moves()));
    }

    @Test
    void aSteepThatRanLongLeavesAPlanWithAllItsLoads() {
        Act drain = AMBER.act("steep-1.drain");
        Replanned replanned = AMBER.byPlanUntil(drain.id())
                .did(drain.id(), Duration.ofHours(5))
                .replanned(drain.startsAt().plus(Duration.ofHours(5)));
        assertTrue(rules(replanned).contains(Rule.STEEP_RAN_LONG));
        assertEquals(
                roasts().size(),
                replanned.plan().acts().stream()
                        .filter(act -> act.kind() == ActKind.ROAST)
                        .count());
    }

    /** Practice: too dark, name it by its colour and use less; too pale, it can go back into the heat. */
    @Test
    void aLoadThatMissedItsColourIsNamedByWhatItIs() {
        Act roast = roasts().get(0);
        double aimEbc = AMBER.plan().outcome().finished().kiln().colourEbc();
        Instant seen = roast.startsAt().plus(Duration.ofHours(3));
        Story roasted = AMBER.byPlanUntil(roast.id()).did(roast.id(), Duration.ZERO);
        assertTrue(rules(roasted.tells(seen, new Report.ColourMeasured(aimEbc * 1.6))
                        .result(seen))
                .contains(Rule.TOO_DARK));
        assertTrue(rules(roasted.tells(seen, new Report.ColourMeasured(aimEbc / 1.6))
                        .result(seen))
                .contains(Rule.TOO_PALE));
        Set<Rule> right =
                rules(roasted.tells(seen, new Report.ColourMeasured(aimEbc)).result(seen));
        assertTrue(!right.contains(Rule.TOO_DARK) && !right.contains(Rule.TOO_PALE));
    }
}
