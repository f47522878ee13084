package piecewright.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import piecewright.plan.PlanRequest.Amount;
import piecewright.plan.PlanRequest.When;
import piecewright.plan.Timetable.Visit;

class ContinuationTest {
    private static final PlanRequest WISH = new PlanRequest(
            Households.pale(),
            Households.barley(),
            Households.garage(9, 14),
            new Amount.RawGrain(5),
            new When.ReadyBy(LocalDate.of(2031, 5, 1), LocalDate.of(2031, 1, 1)));
    private static final Plan PLAN = planned(new Planner(ModelParameters.defaults()).plan(WISH));
    private static final Continuation CONTINUATION = new Continuation(ModelParameters.defaults());

    private static Plan planned(PlanResult result) {
        return result.match(PlanResult.Planned::plan, not -> {
            throw new AssertionError(not.obstacles().toString());
        });
    }

    private static List<Visit> visits(Plan plan) {
        return Timetable.of(plan).visits();
    }

    private static Begun begun(List<Visit> done, Instant now) {
        return new Begun(PLAN.outcome().rawGrainKg(), done, Found.nothing(), visits(PLAN), now);
    }

    private static String times(Plan plan) {
        StringBuilder times = new StringBuilder();
        for (Act act : plan.acts())
            times.append(act.id()).append(' ').append(act.startsAt()).append('\n');
        return times.toString();
    }

    @Test
    void aPlanToldFromItsTimesIsTheSamePlan() {
        Plan told = CONTINUATION
                .told(WISH, begun(List.of(), PLAN.startsAt()), visits(PLAN))
                .orElseThrow();
        assertEquals(PLAN.acts(), told.acts());
        assertEquals(PLAN.outcome(), told.outcome());
    }

    @Test
    void nothingMovesWhenAllWentByPlanAtWhateverActItIsAsked() {
        List<Visit> all = visits(PLAN);
        for (int done = 0; done < all.size(); done++) {
            Instant now = done == 0
                    ? all.get(0).at().minusSeconds(3600)
                    : all.get(done - 1).at().plusSeconds(60);
            Plan again = planned(CONTINUATION.continued(WISH, begun(all.subList(0, done), now)));
            assertEquals(times(PLAN), times(again), "after " + done + " acts");
        }
    }

    /** Practice: a soak that ran long costs little; acts in the calendar after it can stay. */
    @Test
    void aSoakThreeHoursLongLeavesAllButTheLengthOfTheLastDipUnmoved() {
        List<Visit> all = visits(PLAN);
        List<Visit> done = new ArrayList<>(all.subList(0, 1));
        Visit drain = all.get(1);
        Instant late = drain.at().plus(Duration.ofHours(3));
        done.add(new Visit(drain.id(), drain.kind(), drain.number(), late));
        Plan again = planned(CONTINUATION.continued(WISH, begun(done, late)));
        assertEquals(
                withoutLastDrain(times(PLAN).replace(drain.at().toString(), late.toString())),
                withoutLastDrain(times(again)));
    }

    private static String withoutLastDrain(String times) {
        return times.replaceAll("(?m)^steep-3.drain .*$", "");
    }
}
