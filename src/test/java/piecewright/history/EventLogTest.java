package piecewright.history;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import piecewright.history.Account.Done;
import piecewright.history.Contradiction.NoSuchTemperature;
import piecewright.history.Contradiction.NoSuchTime;
import piecewright.history.Contradiction.NotOfTheStyle;
import piecewright.history.Contradiction.OutOfOrder;
import piecewright.history.Contradiction.Time;
import piecewright.journal.AcrospireCount;
import piecewright.journal.Entry;
import piecewright.journal.Journal;
import piecewright.journal.Report;
import piecewright.journal.Report.Did;
import piecewright.journal.Report.Started;
import piecewright.journal.Report.TemperatureRead;
import piecewright.journal.Report.Weighed;
import piecewright.journal.Sign;
import piecewright.journal.Spot;
import piecewright.plan.ActKind;
import piecewright.plan.Households;
import piecewright.store.StoreException;
import piecewright.store.StyleLibrary;
import piecewright.style.MaltStyle;

/** What one log tells: done, inferred, measured, contradicted, struck. */
class EventLogTest {
    private static final Instant NOW = Plans.at(400);

    /** A log under way. */
    private static final class Log {
        private final Followed plan;
        private final List<Entry> entries = new ArrayList<>();

        Log(Followed plan) {
            this.plan = plan;
        }

        Log at(double hours, Report report) {
            return at(Plans.at(hours), report);
        }

        Log at(Instant at, Report report) {
            entries.add(new Entry(entries.size() + 1, at, at, Optional.empty(), report));
            return this;
        }

        Log did(double hours, ActKind... kinds) {
            for (ActKind kind : kinds) at(hours, Did.of(kind));
            return this;
        }

        Account account() {
            return account(NOW);
        }

        Account account(Instant now) {
            return EventLog.account(plan, new Journal(entries), List.of(), now);
        }
    }

    private static Log pale() {
        return new Log(Plans.pale());
    }

    private static MaltStyle style(String key) {
        try {
            return StyleLibrary.builtIn().style(key);
        } catch (StoreException unread) {
            throw new AssertionError(unread);
        }
    }

    private static Log stewed() {
        Plans plan = Plans.upToTheCure(new Plans());
        plan.act(169, "oven.stew", ActKind.STEW, 0);
        return new Log(plan.inTimeOrder().of(style("crystal-light"))).did(0, ActKind.SOAK);
    }

    /** Two loads, on two evenings. */
    private static Log roasted() {
        return new Log(Plans.upToTheCure(new Plans())
                        .act(202, "kiln.off", ActKind.OFF, 0)
                        .act(203, "finish.deroot", ActKind.DEROOT, 0)
                        .act(216, "oven.roast-1", ActKind.ROAST, 1)
                        .act(240, "oven.roast-2", ActKind.ROAST, 2)
                        .of(style("amber")))
                .did(0, ActKind.SOAK)
                .did(198, ActKind.CURE)
                .did(202, ActKind.OFF);
    }

    private static List<String> ids(Account account) {
        return account.acts().stream().map(done -> done.visit().id()).toList();
    }

    private static <T extends Contradiction> T only(Class<T> kind, Account account) {
        assertEquals(
                1, account.contradictions().size(), account.contradictions().toString());
        return assertInstanceOf(kind, account.contradictions().get(0));
    }

    @Test
    void whatALaterActShowsIsInferredAtItsPlannedTime() {
        Account account = pale().did(0, ActKind.SOAK).did(20, ActKind.SOAK).account();
        assertEquals(List.of("steep-1.soak", "steep-1.drain", "steep-2.soak"), ids(account));
        assertEquals(List.of("steep-1.drain"), account.inferred());
        assertEquals(Plans.at(8), account.acts().get(1).visit().at());
    }

    /** A turn shows that the bed was spread, though nobody wrote it down and whenever that was planned. */
    @Test
    void whatWasTurnedWasSpread() {
        for (double turned : new double[] {48, 60, 90}) {
            Account account = pale().did(0, ActKind.SOAK)
                    .did(8, ActKind.DRAIN)
                    .did(turned, ActKind.TURN)
                    .did(turned + 12, ActKind.TURN)
                    .account();
            List<String> ids = ids(account);
            int spread = ids.indexOf("floor.spread");
            assertEquals(
                    1,
                    account.acts().stream()
                            .filter(done -> done.visit().kind() == ActKind.FLOOR)
                            .count());
            int turn = ids.indexOf(
                    ids.stream().filter(id -> id.contains("turn")).findFirst().orElseThrow());
            assertEquals(turn - 1, spread, ids.toString());
            assertEquals(List.of(), account.contradictions());
        }
    }

    @Test
    void castingEarlyLeavesOutASoakForGood() {
        Account account = pale().did(0, ActKind.SOAK)
                .did(8, ActKind.DRAIN)
                .did(10, ActKind.FLOOR)
                .did(60, ActKind.TURN)
                .account();
        assertEquals(List.of("steep-1.soak", "steep-1.drain", "floor.spread", "floor.turn-1"), ids(account));
    }

    @Test
    void whatIsTurnedWasSpreadThoughThePlanHasItLater() {
        Followed late = new Plans()
                .act(0, "steep-1.soak", ActKind.SOAK, 1)
                .act(8, "steep-1.drain", ActKind.DRAIN, 1)
                .act(70, "floor.spread", ActKind.FLOOR, 0)
                .act(90, "kiln.load", ActKind.LOAD, 0)
                .of(Households.pale());
        Log log = new Log(late).did(0, ActKind.SOAK).did(8, ActKind.DRAIN).did(60, ActKind.TURN);
        assertEquals(List.of("steep-1.soak", "steep-1.drain", "floor.spread", "floor.turn-1"), ids(log.account()));
        assertEquals(List.of("floor.spread"), log.account().inferred());
        log.did(90, ActKind.LOAD);
        assertEquals(
                List.of("steep-1.soak", "steep-1.drain", "floor.spread", "floor.turn-1", "kiln.load"),
                ids(log.account()));
    }

    /** Somebody loads and writes nothing down, then stirs. */
    @Test
    void whatIsStirredWasLoaded() {
        Log log = pale().did(0, ActKind.SOAK)
                .did(8, ActKind.DRAIN)
                .did(52, ActKind.FLOOR)
                .did(176, ActKind.STIR);
        assertTrue(log.account().did("kiln.load"));
        log.did(198, ActKind.CURE);
        List<String> ids = ids(log.account());
        assertTrue(ids.indexOf("kiln.load") < ids.indexOf("kiln.stir-1"), ids.toString());
    }

    /** Stirred too early to have been loaded; the curing shows that it was, later. */
    @Test
    void whatIsCuredWasLoadedWhateverWasStirredBefore() {
        Account account = pale().did(0, ActKind.SOAK)
                .did(8, ActKind.DRAIN)
                .did(52, ActKind.FLOOR)
                .did(100, ActKind.STIR)
                .did(198, ActKind.CURE)
                .account();
        assertTrue(account.did("kiln.load"), ids(account).toString());
    }

    @Test
    void whatIsTurnedBetweenTwoSoaksIsOnlyStirred() {
        Account account = pale().did(0, ActKind.SOAK)
                .did(8, ActKind.DRAIN)
                .did(12, ActKind.TURN)
                .account();
        assertFalse(account.did("floor.spread"));
    }

    @Test
    void anInferredSoakExplainsAHeavierWeight() {
        Account account = pale().did(0, ActKind.SOAK)
                .at(8, Weighed.net(6.4))
                .did(8, ActKind.DRAIN)
                .at(28, Weighed.net(7.2))
                .did(28, ActKind.DRAIN)
                .account();
        assertEquals(List.of("steep-2.soak"), account.inferred());
        assertEquals(List.of(), account.contradictions());
    }

    @Test
    void impossibleTemperaturesAreContradictedWhereverTheGrainIs() {
        for (double readC : new double[] {-40, 75, 99, 300}) {
            Account account = pale().did(0, ActKind.SOAK)
                    .did(52, ActKind.FLOOR)
                    .at(60, new TemperatureRead(readC, Spot.CORE))
                    .account();
            assertEquals(readC, only(NoSuchTemperature.class, account).readC());
        }
        Account kilned = pale().did(0, ActKind.SOAK)
                .did(172, ActKind.LOAD)
                .at(180, new TemperatureRead(99, Spot.BOTTOM))
                .account();
        assertEquals(List.of(), kilned.contradictions());
    }

    @Test
    void noTimeOfAClockThatWasWrongIsBelieved() {
        Log log = pale().did(0, ActKind.SOAK)
                .at(Instant.parse("1970-01-01T00:10:00Z"), Did.of(ActKind.DRAIN))
                .at(Instant.parse("2017-05-01T12:00:00Z"), new Report.Observed(Sign.POWER_OUT, ""));
        log.entries.add(new Entry(
                4, Instant.parse("2100-01-01T00:00:00Z"), Plans.at(9), Optional.empty(), Did.of(ActKind.DRAIN)));
        Account account = log.account();
        assertEquals(List.of("steep-1.soak"), ids(account));
        assertEquals(
                List.of(Time.BEFORE_THE_BATCH, Time.BEFORE_THE_BATCH, Time.AHEAD_OF_ITS_WRITING),
                account.contradictions().stream()
                        .map(one -> ((NoSuchTime) one).time())
                        .toList());
        assertEquals(List.of(), account.found().coldSpells());
    }

    @Test
    void wetGrainDoesNotWaitForYears() {
        Followed plan = Plans.pale();
        List<Entry> entries = List.of(
                new Entry(1, Plans.at(0), Plans.at(0), Optional.empty(), Did.of(ActKind.SOAK)),
                new Entry(2, Plans.at(50_000), Plans.at(50_000), Optional.empty(), Did.of(ActKind.FLOOR)));
        Account account = EventLog.account(plan, new Journal(entries), List.of(), Plans.at(60_000));
        assertEquals(Time.AFTER_THE_BATCH, only(NoSuchTime.class, account).time());
        assertTrue(account.followedUntil().isBefore(Plans.at(203 + 24 * 61)));
    }

    private static Done stew(Account account) {
        assertEquals(List.of(), account.contradictions());
        List<Done> stews = account.acts().stream()
                .filter(done -> done.visit().kind() == ActKind.STEW)
                .toList();
        assertEquals(1, stews.size());
        return stews.get(0);
    }

    /** The planned stew takes three hours, from 169 to 172; the style's takes an hour and a half at the least. */
    @Test
    void aStewInterruptedAndTakenUpAgainIsOneStewOfAllItsMinutes() {
        Log log = stewed().at(168, new Started(ActKind.STEW)).did(168.75, ActKind.STEW);
        Done cut = stew(log.account(Plans.at(170)));
        assertEquals(Plans.at(169.25), cut.visit().at(), "three quarters of an hour are done, the rest is still to do");
        assertEquals(OptionalDouble.of(45), cut.workedMinutes());
        log.at(172, new Started(ActKind.STEW));
        assertEquals(
                Plans.at(171.25), stew(log.account(Plans.at(172.5))).visit().at(), "the pause moves it on");
        Account over = log.did(173.5, ActKind.STEW).account(Plans.at(178));
        assertEquals(OptionalDouble.of(45 + 90), stew(over).workedMinutes());
        assertEquals(Plans.at(170.5), stew(over).visit().at(), "found done, it is done");
        Account loaded = log.did(173.6, ActKind.LOAD).account();
        assertEquals(Plans.at(170.5), stew(loaded).visit().at());
        assertEquals("kiln.load", loaded.last().orElseThrow().id());
    }

    /** Whoever writes one word for all of it writes it as it begins or when it is over: what is nearer to the plan. */
    @Test
    void aStewToldOfInOneWordBeganWhenThePlanSays() {
        assertEquals(
                Plans.at(169.5),
                stew(stewed().did(169.5, ActKind.STEW).account(Plans.at(170)))
                        .visit()
                        .at());
        assertEquals(
                Plans.at(169.25),
                stew(stewed().did(172.25, ActKind.STEW).account(Plans.at(173)))
                        .visit()
                        .at());
    }

    @Test
    void aRoastIsRecordedLoadByLoad() {
        Account first = roasted().did(217, ActKind.ROAST).account();
        assertTrue(
                first.did("oven.roast-1") && !first.did("oven.roast-2"),
                ids(first).toString());
        Account both = roasted().did(217, ActKind.ROAST).did(241, ActKind.ROAST).account();
        assertTrue(
                both.did("oven.roast-1") && both.did("oven.roast-2"), ids(both).toString());
        assertEquals(Plans.at(241), both.last().orElseThrow().at());
        Account oneEvening = roasted()
                .at(216, new Started(ActKind.ROAST))
                .did(217, ActKind.ROAST)
                .at(217.2, new Started(ActKind.ROAST))
                .did(218.2, ActKind.ROAST)
                .account();
        assertTrue(
                oneEvening.did("oven.roast-1") && oneEvening.did("oven.roast-2"),
                ids(oneEvening).toString());
        assertEquals(List.of(), oneEvening.contradictions());
    }

    @Test
    void aRoastIsRecordedByOneEntryForAllLoads() {
        Account account = roasted().did(241, ActKind.ROAST).account();
        assertTrue(account.did("oven.roast-2"), ids(account).toString());
        assertTrue(
                account.inferred().contains("oven.roast-1"), account.inferred().toString());
    }

    @Test
    void rootletsCanBeRubbedOffRoastedMalt() {
        Log log = new Log(Plans.upToTheCure(new Plans())
                .act(202, "kiln.off", ActKind.OFF, 0)
                .act(216, "oven.roast", ActKind.ROAST, 0)
                .act(230, "finish.deroot", ActKind.DEROOT, 0)
                .of(style("amber")));
        Account account = log.did(0, ActKind.SOAK)
                .did(216, ActKind.ROAST)
                .did(230, ActKind.DEROOT)
                .account();
        assertEquals(List.of(), account.contradictions());
        assertEquals("finish.deroot", account.last().orElseThrow().id());
        Account asTold =
                roasted().did(216, ActKind.ROAST).did(218, ActKind.DEROOT).account();
        assertEquals(List.of(), asTold.contradictions());
    }

    @Test
    void whatTheStyleDoesNotHaveIsAskedAbout() {
        assertEquals(
                ActKind.PACK,
                only(
                                NotOfTheStyle.class,
                                pale().did(0, ActKind.SOAK)
                                        .did(150, ActKind.PACK)
                                        .account())
                        .act());
    }

    @Test
    void whatIsSaidTwiceIsOneAct() {
        Account account = pale().did(0, ActKind.SOAK)
                .did(0.5, ActKind.SOAK)
                .did(0.6, ActKind.SOAK)
                .account();
        assertEquals(List.of("steep-1.soak"), ids(account));
        assertEquals(List.of(), account.contradictions());
    }

    @Test
    void shootsDoNotShrinkAndPilesDoNotJump() {
        Report half = new Report.AcrospiresCounted(new AcrospireCount(List.of(0, 2, 44, 4, 0, 0)));
        Report none = new Report.AcrospiresCounted(new AcrospireCount(List.of(48, 2, 0, 0, 0, 0)));
        Log floored = pale().did(0, ActKind.SOAK).did(52, ActKind.FLOOR);
        only(Contradiction.Shrunk.class, floored.at(120, half).at(140, none).account());
        only(
                Contradiction.Jumped.class,
                pale().did(0, ActKind.SOAK)
                        .did(52, ActKind.FLOOR)
                        .at(80, new TemperatureRead(14, Spot.CORE))
                        .at(81, new TemperatureRead(31, Spot.CORE))
                        .at(83, new TemperatureRead(15, Spot.CORE))
                        .account());
    }

    @Test
    void anActAfterALaterOneIsAskedAbout() {
        Account account = pale().did(0, ActKind.SOAK)
                .did(52, ActKind.FLOOR)
                .did(54, ActKind.DRAIN)
                .account();
        assertEquals("floor.spread", only(OutOfOrder.class, account).afterActId());
    }

    @Test
    void tenThousandEntriesAreRead() {
        Log log = pale().did(0, ActKind.SOAK).did(52, ActKind.FLOOR);
        for (int i = 0; i < 10_000; i++) log.at(60 + i / 100.0, Did.of(ActKind.TURN));
        Account account = log.account();
        assertEquals(10_002, account.fates().size());
        assertTrue(Duration.between(Plans.START, account.followedUntil()).toHours() > 0);
    }
}
