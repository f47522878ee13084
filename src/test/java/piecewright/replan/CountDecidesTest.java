package piecewright.replan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Duration;
import java.time.Instant;
import org.junit.jupiter.api.Test;
import piecewright.journal.Report.ChittedCounted;
import piecewright.journal.Report.Weighed;
import piecewright.plan.Act;
import piecewright.plan.ActKind;
import piecewright.plan.Plan;

/** A count or a weight taken at an act decides whether it comes. */
class CountDecidesTest {
    private static Act next(Plan plan, ActKind kind) {
        return plan.acts().stream()
                .filter(act -> act.kind() == kind)
                .findFirst()
                .orElseThrow();
    }

    private static Plan counted(int chitted) {
        Act spread = Story.PALE.act("floor.spread");
        Instant now = spread.startsAt();
        return Story.PALE
                .byPlanUntil("floor.spread")
                .tells(now, new ChittedCounted(chitted, 100))
                .replanned(now)
                .plan();
    }

    @Test
    void nothingIsSpreadWhileFewHaveChitted() {
        Instant planned = Story.PALE.act("floor.spread").startsAt();
        Act spread = next(counted(25), ActKind.FLOOR);
        assertTrue(Duration.between(planned, spread.startsAt()).toHours() >= 4, spread.toString());
    }

    @Test
    void whatHasChittedIsSpreadAsPlanned() {
        assertEquals(
                Story.PALE.act("floor.spread").startsAt(),
                next(counted(93), ActKind.FLOOR).startsAt());
    }

    /** Whoever weighs as planned before loading loads then, not at the next hour anybody has. */
    @Test
    void whatIsWeighedAtAnActDoesNotPutItOff() {
        Act load = Story.PALE.act("kiln.load");
        Story weighed = Story.PALE
                .byPlanUntil("kiln.load")
                .tells(load.startsAt(), Weighed.net(load.expect().massKg()));
        Act after = next(weighed.replanned(load.startsAt()).plan(), ActKind.LOAD);
        assertFalse(after.startsAt().isAfter(load.startsAt()), after.toString());
    }
}
