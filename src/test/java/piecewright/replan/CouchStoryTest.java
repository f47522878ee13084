package piecewright.replan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import piecewright.journal.Report;
import piecewright.journal.Sign;
import piecewright.journal.Spot;
import piecewright.plan.Act;
import piecewright.plan.ActKind;
import piecewright.plan.Couched;
import piecewright.plan.PlanRequest;
import piecewright.replan.ReplanResult.Replanned;
import piecewright.replan.Rescue.Rule;

/** A piece in a hot couch: followed by its thermometer, planned anew when it heats late, early or not at all. */
class CouchStoryTest {
    /** The first seeded household with a wet couch that has a plan. */
    private static final Story COUCHED = couched();

    /** Without a day it is wanted by: how the couch goes decides alone. */
    private static Story couched() {
        PlanRequest wish = Couched.request(1);
        Instant start = Story.of(wish).plan().startsAt();
        return Story.of(wish.withWhen(new PlanRequest.When.StartOn(
                LocalDate.ofInstant(start, wish.house().zone()))));
    }

    private static final Duration HOUR = Duration.ofHours(1);

    private static Instant at(ActKind kind) {
        return COUCHED.plan().acts().stream()
                .filter(act -> act.kind() == kind)
                .findFirst()
                .orElseThrow()
                .startsAt();
    }

    private static String id(ActKind kind) {
        return COUCHED.plan().acts().stream()
                .filter(act -> act.kind() == kind)
                .findFirst()
                .orElseThrow()
                .id();
    }

    private static Story packed() {
        Story story = COUCHED.byPlanUntil(id(ActKind.PACK));
        return story.did(id(ActKind.PACK), Duration.ZERO);
    }

    private static Instant hours(double hours) {
        return at(ActKind.PACK).plus(Duration.ofMinutes(Math.round(hours * 60)));
    }

    private static Set<Rule> rules(ReplanResult result) {
        return result.rescues().stream().map(Rescue::rule).collect(Collectors.toSet());
    }

    private static CouchForecast forecast(Story story, Instant now) {
        return story.where(now).help().couch().orElseThrow();
    }

    @Test
    void beforeAnyReadingItPassesFortyFiveAndPeaksWhereTheModelSays() {
        CouchForecast forecast = forecast(packed(), hours(1));
        CouchForecast.Band caught = forecast.caught().orElseThrow();
        assertTrue(caught.early().isBefore(caught.middle()) && caught.middle().isBefore(caught.late()));
        assertTrue(caught.middle().isBefore(forecast.peak().middle()));
        // reference, ignition: peaks of couches that catch lie between 50.1 and 52.7
        assertEquals(51.4, forecast.peakC().middleC(), 1.5);
        assertTrue(
                forecast.drops().orElseThrow().middle().isAfter(forecast.peak().middle()));
    }

    @Test
    void aColdReadingPutsItOffAndAWarmOneBringsItForward() {
        Instant read = hours(6);
        CouchForecast usual = forecast(packed(), read);
        double pileC = packed().where(read).state().grainC();
        CouchForecast cold = forecast(packed().tells(read, new Report.TemperatureRead(pileC - 3, Spot.CORE)), read);
        CouchForecast warm = forecast(packed().tells(read, new Report.TemperatureRead(pileC + 5, Spot.CORE)), read);
        Instant caught = usual.caught().orElseThrow().middle();
        assertTrue(cold.caught().orElseThrow().middle().isAfter(caught.plus(HOUR)));
        assertTrue(warm.caught().orElseThrow().middle().isBefore(caught.minus(HOUR)));
    }

    /** The middle reads one kelvin over the mean of the pile, the bottom one under; a rim tells nothing of the mean. */
    @Test
    void aReadingCountsByWhereItWasTaken() {
        Instant read = hours(6);
        assertEquals(29, stateC(Spot.CORE, 30, read), 0.01);
        assertEquals(31, stateC(Spot.BOTTOM, 30, read), 0.01);
        assertEquals(packed().where(read).state().grainC(), stateC(Spot.TOP, 20, read), 0.01);
    }

    private static double stateC(Spot spot, double readC, Instant read) {
        return packed().tells(read, new Report.TemperatureRead(readC, spot))
                .where(read)
                .state()
                .grainC();
    }

    @Test
    void outsideTheCouchThereIsNoForecast() {
        assertEquals(
                Optional.empty(),
                COUCHED.byPlanUntil(id(ActKind.PACK)).where(hours(-1)).help().couch());
    }

    /** Heated late: the break is not moved before now, the couch is given more time or stays as it was. */
    @Test
    void aCouchThatHeatsLateIsNotBrokenSooner() {
        Instant read = hours(20);
        Replanned replanned = packed().tells(hours(10), new Report.TemperatureRead(26, Spot.CORE))
                .tells(read, new Report.TemperatureRead(30, Spot.CORE))
                .replanned(read.plusSeconds(600));
        Instant broken = first(replanned, ActKind.BREAK);
        assertFalse(broken.isBefore(at(ActKind.BREAK)), broken + " before " + at(ActKind.BREAK));
        assertTrue(first(replanned, ActKind.LOAD).isAfter(broken));
    }

    @Test
    void aCouchThatRanEarlyIsNotLeftLonger() {
        Instant read = hours(5);
        Replanned replanned =
                packed().tells(read, new Report.TemperatureRead(50, Spot.CORE)).replanned(read.plusSeconds(600));
        assertFalse(first(replanned, ActKind.BREAK).isAfter(at(ActKind.BREAK)));
    }

    @Test
    void overFiftyThreeDegreesItIsOpenedAndTurnedNow() {
        Instant read = hours(12);
        Replanned replanned =
                packed().tells(read, new Report.TemperatureRead(54, Spot.CORE)).replanned(read.plusSeconds(600));
        assertTrue(
                rules(replanned).contains(Rule.COUCH_TOO_HOT), rules(replanned).toString());
    }

    @Test
    void aHeapThatStaysColdIsSaidToStall() {
        Story story = packed();
        for (int hour = 4; hour <= 40; hour += 6) {
            story = story.tells(hours(hour), new Report.TemperatureRead(12, Spot.CORE));
        }
        boolean stalls = forecast(story, hours(40)).stalls();
        ReplanResult result = story.result(hours(40).plusSeconds(600));
        assertEquals(stalls, rules(result).contains(Rule.COUCH_STALLED));
    }

    @Test
    void whatIsDoneStaysAndWhatIsToComeIsNeverInThePast() {
        for (ActKind kind : List.of(ActKind.PACK, ActKind.BREAK, ActKind.LOAD, ActKind.CURE)) {
            String id = id(kind);
            Instant now = at(kind).plus(Duration.ofMinutes(95));
            Story story = COUCHED.byPlanUntil(id).did(id, Duration.ofMinutes(80));
            Replanned replanned = story.replanned(now);
            int done = replanned.account().visits().size();
            List<Act> acts = replanned.plan().acts();
            assertEquals(now.minus(Duration.ofMinutes(15)), acts.get(done - 1).startsAt(), id);
            assertTrue(acts.stream().skip(done).noneMatch(act -> act.startsAt().isBefore(now)), id);
        }
    }

    /** Practice: thin and cool it keeps for two days and more, in a fridge three. */
    @Test
    void aKilnThatIsTakenAsksForAThinCoolBed() {
        Instant now = COUCHED.plan().acts().stream()
                .filter(act -> act.kind() == ActKind.FLOOR)
                .findFirst()
                .orElseThrow()
                .startsAt()
                .plus(HOUR);
        Story floor = COUCHED;
        for (Act act : COUCHED.plan().acts()) {
            if (act.startsAt().isBefore(now)) floor = floor.did(act.id(), Duration.ZERO);
        }
        Replanned replanned = floor.saw(now, Sign.KILN_BUSY).replanned(now);
        Rescue rescue = replanned.rescues().stream()
                .filter(each -> each.rule() == Rule.KILN_NOT_READY)
                .findFirst()
                .orElseThrow();
        assertTrue(rescue.actId().isPresent());
    }

    private static Instant first(Replanned replanned, ActKind kind) {
        return replanned.plan().acts().stream()
                .filter(act -> act.kind() == kind)
                .findFirst()
                .orElseThrow()
                .startsAt();
    }
}
