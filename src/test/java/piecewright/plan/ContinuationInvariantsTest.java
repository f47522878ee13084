package piecewright.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import piecewright.plan.Timetable.Visit;

/** What must be true of every plan of a rest, in made-up households at a random act, on time or hours late. */
class ContinuationInvariantsTest {
    private static final int SEEDS = 12;

    private static List<String> ids(Plan plan) {
        return plan.acts().stream().map(act -> act.id() + " " + act.startsAt()).toList();
    }

    @Test
    void theRestOfAPlanKeepsToHoursToThePastAndToWhatStands() {
        Continuation continuation = new Continuation(ModelParameters.defaults());
        int late = 0;
        for (int seed = 0; seed < SEEDS; seed++) {
            PlanRequest wish = Seeded.request(seed);
            PlanResult first = new Planner(ModelParameters.defaults()).plan(wish);
            if (!(first instanceof PlanResult.Planned planned)) continue;
            List<Visit> all = Timetable.of(planned.plan()).visits();
            Random random = new Random(seed);
            int done = 1 + random.nextInt(all.size() - 1);
            onTime(continuation, wish, planned.plan(), done);
            late += late(continuation, wish, planned.plan(), done, Duration.ofMinutes(30 + random.nextInt(400)));
        }
        assertTrue(late >= SEEDS / 2, "most late pieces can still be planned: " + late);
    }

    private static Begun begun(Plan plan, List<Visit> visits, Instant now) {
        return new Begun(
                plan.outcome().rawGrainKg(),
                visits,
                Found.nothing(),
                Timetable.of(plan).visits(),
                now);
    }

    private static void onTime(Continuation continuation, PlanRequest wish, Plan plan, int done) {
        List<Visit> visits = Timetable.of(plan).visits().subList(0, done);
        Begun begun = begun(plan, visits, visits.get(done - 1).at());
        PlanResult again = continuation.continued(wish, begun);
        assertEquals(ids(plan), again.match(planned -> ids(planned.plan()), not -> List.of(not.toString())));
    }

    private static int late(Continuation continuation, PlanRequest wish, Plan plan, int done, Duration by) {
        List<Visit> visits = new ArrayList<>(Timetable.of(plan).visits().subList(0, done));
        Visit last = visits.remove(done - 1);
        Instant now = last.at().plus(by);
        visits.add(new Visit(last.id(), last.kind(), last.number(), now));
        PlanResult again = continuation.continued(wish, begun(plan, visits, now));
        if (!(again instanceof PlanResult.Planned planned)) return 0;
        List<Act> acts = planned.plan().acts();
        Availability hours = Availability.of(wish.house(), now, now.plus(Duration.ofDays(40)));
        for (int i = 0; i < acts.size(); i++) {
            Act act = acts.get(i);
            if (i < done) {
                assertEquals(visits.get(i).id() + visits.get(i).at(), act.id() + act.startsAt());
                continue;
            }
            assertFalse(act.startsAt().isBefore(now), act.id() + " before now");
            boolean somebody = hours.workableUntil(act.startsAt()).isPresent()
                    || hours.nightUntil(act.startsAt()).isPresent();
            assertTrue(somebody, act.id() + " outside hours");
        }
        return 1;
    }
}
