package piecewright.ensemble;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import piecewright.plan.Act;
import piecewright.plan.ActKind;
import piecewright.plan.Blueprint;
import piecewright.plan.InnerSchedule;
import piecewright.style.HotCouchSchedule;

/** What is done about hot couch, stew and roast where things are other than believed. */
class HeatedRehearsalTest {
    private static final Blueprint DARK = Followed.demo("dark", "workshop");
    private static final Blueprint CRYSTAL = Followed.demo("crystal-light", "terrace-kitchen");
    private static final Blueprint AMBER = Followed.demo("amber", "terrace-kitchen");

    private static Happening with(Blueprint plan, Doubt doubt, double ratio) {
        return Ensemble.of(plan, plan.plan().startsAt()).happening(Followed.but(plan, doubt, ratio));
    }

    private static int minute(Happening happening, ActKind kind) {
        return met(happening, kind).minute();
    }

    private static Met met(Happening happening, ActKind kind) {
        return happening.met().values().stream()
                .filter(met -> met.visit().kind() == kind)
                .min(java.util.Comparator.comparingInt(Met::minute))
                .orElseThrow();
    }

    private static int couchMinutes(Happening happening) {
        return minute(happening, ActKind.BREAK) - minute(happening, ActKind.PACK);
    }

    /** Reference run B: 45 °C after some 15 h, a peak of its own accord at 51 to 52 °C, then slowly down. */
    @Test
    void aCouchPasses45PeaksAndDropsInThisOrder() {
        Happening usual = with(DARK, Doubt.COUCH_HEAT, 1);
        double packed = minute(usual, ActKind.PACK);
        double caught = usual.milestoneMinutes().get(Milestone.CAUGHT);
        double peak = usual.milestoneMinutes().get(Milestone.PEAK);
        double dropped = usual.milestoneMinutes().get(Milestone.DROPPED);
        assertTrue(packed < caught && caught < peak && peak < dropped, caught + " " + peak + " " + dropped);
        assertEquals(51.9, usual.figures().get(Figure.COUCH_PEAK_C), 0.8);
    }

    @Test
    void aColdCouchIsBrokenLaterAndAHotOneSooner() {
        int usual = couchMinutes(with(DARK, Doubt.COUCH_HEAT, 1));
        assertTrue(couchMinutes(with(DARK, Doubt.COUCH_HEAT, 0.6)) > usual + 240);
        assertTrue(couchMinutes(with(DARK, Doubt.COUCH_HEAT, 1.7)) < usual - 120);
    }

    @Test
    void theThermometerEndsTheCouchNearTheIndexOfTheStyle() {
        HotCouchSchedule style = DARK.setup().couching().orElseThrow().schedule();
        for (double heat : new double[] {0.7, 1, 1.4}) {
            double index = with(DARK, Doubt.COUCH_HEAT, heat).figures().get(Figure.COUCH_INDEX_HOURS);
            assertEquals(style.indexHours(), index, 6, "heat " + heat);
        }
    }

    @Test
    void aPileThatNeverHeatsIsGivenUpWhenItsHoursAreOverAndSaysSo() {
        Happening dead = with(DARK, Doubt.COUCH_HEAT, 0.05);
        double longest = DARK.setup().couching().orElseThrow().schedule().longestHours();
        assertTrue(couchMinutes(dead) <= 60 * longest + 60);
        assertFalse(dead.milestoneMinutes().containsKey(Milestone.CAUGHT));
        assertTrue(dead.breaches().contains(new Breach("couch.break", Fault.TOO_COLD, Breach.Severity.HARD)));
    }

    /** The ceiling of the binding page: above 53 °C spread and turn. */
    @Test
    void aPileOverItsCeilingIsTurnedAtTheNextLook() {
        Happening hot = with(DARK, Doubt.COUCH_CUT, 1.08);
        assertTrue(hot.figures().get(Figure.COUCH_PEAK_C) > 53);
        assertTrue(hot.breaches().stream().anyMatch(breach -> breach.fault() == Fault.TOO_WARM));
    }

    @Test
    void theKilnIsLoadedSoonAfterTheCouchIsBroken() {
        for (double heat : new double[] {0.6, 1, 1.6}) {
            Happening happening = with(DARK, Doubt.COUCH_HEAT, heat);
            int waited = minute(happening, ActKind.LOAD) - minute(happening, ActKind.BREAK);
            assertTrue(waited >= 20 && waited <= 240, "waited " + waited);
        }
    }

    @Test
    void aStewEndsWhenTheCornsAreLiquidAndIsSpreadAtOnce() {
        Member member = Members.random(Belief.prior(CRYSTAL), 3);
        Happening happening = Ensemble.of(CRYSTAL, CRYSTAL.plan().startsAt()).happening(member);
        double under = happening.figures().get(Figure.STEW_MINUTES);
        var schedule = CRYSTAL.setup().style().oven().stew().orElseThrow();
        assertTrue(under >= schedule.shortestMinutes() && under <= schedule.longestMinutes() + 15, "under " + under);
        double prepared = minute(happening, ActKind.LOAD) - minute(happening, ActKind.STEW) - under;
        assertEquals(15, prepared);
    }

    private static InnerSchedule inner(Blueprint plan) {
        return plan.plan().acts().stream()
                .filter(act -> act.kind() == ActKind.ROAST)
                .findFirst()
                .flatMap(Act::inner)
                .orElseThrow();
    }

    /** The page's minutes: planned end, and out by the last one whatever the sample says. */
    @Test
    void maltThatColoursFastComesOutSoonerAndSlowMaltNeverAfterTheLatestMinute() {
        InnerSchedule inner = inner(AMBER);
        var in = inner.first(InnerSchedule.Kind.GOES_IN).at();
        double planned = inner.first(InnerSchedule.Kind.STOP).at().minus(in).toSeconds() / 60.0;
        double latest = inner.first(InnerSchedule.Kind.LATEST).at().minus(in).toSeconds() / 60.0;
        assertTrue(with(AMBER, Doubt.COLOUR, 1.5).figures().get(Figure.ROAST_MINUTES) < planned);
        Happening slow = with(AMBER, Doubt.COLOUR, 0.3);
        assertEquals(latest, slow.figures().get(Figure.ROAST_MINUTES));
        assertTrue(slow.breaches().stream().anyMatch(breach -> breach.fault() == Fault.LATE));
    }

    /** Samples take out most of what the clock would leave in: by it colours went with the rate, 1.4-fold either way. */
    @Test
    void samplesKeepTheColourNearerThanTheClockWould() {
        double usual = with(AMBER, Doubt.COLOUR, 1).figures().get(Figure.COLOUR_EBC);
        for (double rate : new double[] {1 / 1.4, 1.4}) {
            double colour = with(AMBER, Doubt.COLOUR, rate).figures().get(Figure.COLOUR_EBC);
            assertTrue(Math.abs(Math.log(colour / usual)) < 0.8 * Math.log(1.4), "rate " + rate + ": " + colour);
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"dark@workshop", "crystal-light@terrace-kitchen", "amber@terrace-kitchen"})
    void everyActFallsIntoSomebodysHoursAndIsPartOfThePlan(String demo) {
        Blueprint plan = Followed.demo(demo.split("@")[0], demo.split("@")[1]);
        Script script = new Script(plan);
        Ensemble ensemble = Ensemble.of(plan, plan.plan().startsAt());
        List<ActKind> inner = List.of(ActKind.LOAD);
        for (int seed = 0; seed < 40; seed++) {
            for (Met met : ensemble.happening(Members.random(Belief.prior(plan), seed))
                    .met()
                    .values()) {
                boolean afterStew = inner.contains(met.visit().kind()) && script.has(ActKind.STEW);
                if (afterStew) continue;
                String who = "seed " + seed + " " + met.visit().id();
                assertEquals(met.minute(), script.moments().next(met.minute(), 5), who);
            }
        }
    }
}
