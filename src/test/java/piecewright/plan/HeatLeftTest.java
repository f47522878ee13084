package piecewright.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.DayOfWeek;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import piecewright.house.House;
import piecewright.house.LocalHours;
import piecewright.house.Person;
import piecewright.plan.PlanRequest.Amount;
import piecewright.plan.PlanRequest.When;
import piecewright.plan.Timetable.Visit;

/** Somebody turned the heat up on a weekday morning and goes to work at seven: it is turned down before. */
class HeatLeftTest {
    private static final ZoneId BERLIN = ZoneId.of("Europe/Berlin");
    private static final PlanRequest WISH = new PlanRequest(
            Households.pale(),
            Households.barley(),
            Households.garage(9, 14),
            new Amount.RawGrain(5),
            new When.StartOn(LocalDate.of(2031, 3, 22)));
    private static final Plan PLAN = planned(new Planner(ModelParameters.defaults()).plan(WISH));
    private static final Instant SEVEN = tuesday(7, 0);

    private static Plan planned(PlanResult result) {
        return result.match(PlanResult.Planned::plan, not -> {
            throw new AssertionError(not.obstacles().toString());
        });
    }

    private static Instant tuesday(int hour, int minute) {
        return LocalDate.of(2031, 4, 1)
                .atTime(LocalTime.of(hour, minute))
                .atZone(BERLIN)
                .toInstant();
    }

    /** Loaded on Sunday, dried since, and this heat set on Tuesday at half past six. */
    private static Begun hot(String id, ActKind kind, int number) {
        List<Visit> done = new ArrayList<>();
        for (Visit visit : Timetable.of(PLAN).visits()) {
            if (visit.kind() == ActKind.LOAD) break;
            done.add(visit);
        }
        Instant loaded = tuesday(7, 0).minus(Duration.ofHours(45));
        assertTrue(done.get(done.size() - 1).at().isBefore(loaded));
        done.add(new Visit("kiln.load", ActKind.LOAD, 0, loaded));
        done.add(new Visit(id, kind, number, tuesday(6, 30)));
        return new Begun(
                PLAN.outcome().rawGrainKg(),
                done,
                Found.nothing(),
                Timetable.of(PLAN).visits(),
                tuesday(6, 35));
    }

    private static List<Act> rest(Begun begun) {
        Plan plan = planned(new Continuation(ModelParameters.defaults()).continued(WISH, begun));
        return plan.acts().subList(begun.visits().size(), plan.acts().size());
    }

    private static Optional<Act> first(List<Act> acts, ActKind kind) {
        return acts.stream().filter(act -> act.kind() == kind).findFirst();
    }

    @Test
    void aRaiseIsTakenBackBeforeWork() {
        List<Act> rest = rest(hot("kiln.raise-3", ActKind.RAISE, 3));
        Act lower = rest.get(0);
        assertEquals(ActKind.LOWER, lower.kind(), rest.toString());
        assertFalse(lower.endsAt().isAfter(SEVEN), lower.toString());
        assertEquals(60, lower.setting().setC().orElseThrow(), 1e-9);
        Act cure = first(rest, ActKind.CURE).orElseThrow();
        assertTrue(cure.startsAt().isAfter(tuesday(17, 44)), cure.toString());
    }

    /** Half an hour is no cure: it is begun once more in the evening, under a name of its own. */
    @Test
    void aCureIsBrokenOffAndBegunAgain() {
        List<Act> rest = rest(hot("kiln.cure", ActKind.CURE, 0));
        Act lower = rest.get(0);
        assertEquals(ActKind.LOWER, lower.kind(), rest.toString());
        assertFalse(lower.endsAt().isAfter(SEVEN), lower.toString());
        Act cure = first(rest, ActKind.CURE).orElseThrow();
        assertEquals("kiln.cure-again", cure.id());
        Act off = first(rest, ActKind.OFF).orElseThrow();
        assertTrue(Duration.between(cure.startsAt(), off.startsAt()).toMinutes() >= 120, off.toString());
    }

    /** Planned anew at every step, the plan goes on from where it stands. */
    @Test
    void whatIsPlannedAnewAfterItStands() {
        Begun begun = hot("kiln.cure", ActKind.CURE, 0);
        Plan plan = planned(new Continuation(ModelParameters.defaults()).continued(WISH, begun));
        List<Visit> all = Timetable.of(plan).visits();
        for (int done = begun.visits().size() + 1; done < all.size(); done++) {
            Instant now = all.get(done - 1).at().plusSeconds(60);
            Begun later = new Begun(PLAN.outcome().rawGrainKg(), all.subList(0, done), Found.nothing(), all, now);
            Plan again = planned(new Continuation(ModelParameters.defaults()).continued(WISH, later));
            assertEquals(all, Timetable.of(again).visits(), "after " + all.get(done - 1));
        }
    }

    /**
     * The same with somebody who only comes by at noon: what the brewer alone would do in the evening is no rival while
     * the one at noon can turn the heat down.
     */
    @Test
    void whoComesAtNoonTurnsItDownThoughTheOthersComeLater() {
        House like = WISH.house();
        Map<DayOfWeek, List<LocalHours>> noon = new EnumMap<>(DayOfWeek.class);
        for (DayOfWeek day : DayOfWeek.values())
            noon.put(day, List.of(new LocalHours(LocalTime.of(12, 0), LocalTime.of(13, 0))));
        PlanRequest two = WISH.withHouse(new House(
                like.name(),
                like.zone(),
                like.places(),
                like.steepWaterC(),
                List.of(like.people().get(0), new Person("the one at noon", noon, Map.of())),
                like.nights(),
                like.kit()));
        for (int minute : new int[] {30, 41, 51}) {
            Begun hot = hot("kiln.cure", ActKind.CURE, 0);
            List<Visit> done =
                    new ArrayList<>(hot.visits().subList(0, hot.visits().size() - 1));
            done.add(new Visit("kiln.cure", ActKind.CURE, 0, tuesday(12, minute - 5)));
            Begun begun = new Begun(hot.grainKg(), done, Found.nothing(), hot.planned(), tuesday(12, minute));
            Plan plan = planned(new Continuation(ModelParameters.defaults()).continued(two, begun));
            Act next = plan.acts().get(done.size());
            assertTrue(
                    next.kind() == ActKind.LOWER || next.kind() == ActKind.OFF,
                    plan.acts().toString());
            assertTrue(next.startsAt().isBefore(tuesday(13, 0)), next.toString());
        }
    }
}
