package piecewright.publish;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.net.InetAddress;
import java.net.ServerSocket;
import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import piecewright.calendar.CalendarEvent;
import piecewright.calendar.DatedEvent;
import piecewright.calendar.Ledger;
import piecewright.calendar.PlanFixture;
import piecewright.calendar.PublishedCopies;
import piecewright.publish.CalDavPublisher.IfAbsent;
import piecewright.publish.PublishResult.Counts;

/** Against a server in memory; status codes and conditions as in RFC 4791 and RFC 9110. */
@Timeout(60)
class CalDavPublisherTest {
    private static final Patience SHORT =
            new Patience(Duration.ofSeconds(5), Duration.ofSeconds(5), Duration.ofMillis(10), 3);
    private static final int ALL = PlanFixture.usual().events().events().size();

    private FakeServer server;
    private Ledger ledger = Ledger.startedFor(PlanFixture.BATCH);
    private Instant now = PlanFixture.NOW;
    private PublishedCopies copies;

    @BeforeEach
    void start() throws IOException {
        server = new FakeServer();
        copies = PublishedCopies.none(server.collection().toString());
    }

    @AfterEach
    void stop() {
        server.close();
    }

    @Test
    void aPlanIsPublishedOnceAndThenOnlyItsChanges() {
        assertEquals(
                new Counts(ALL, 0, 0, 0), done(publish(PlanFixture.usual())).counts());
        assertEquals(ALL, server.stored.size());
        assertEquals(
                new Counts(0, 0, 0, ALL), done(publish(PlanFixture.usual())).counts());
        assertEquals(ALL, server.count("PUT"), "nothing is written twice");
        PlanFixture changed = PlanFixture.usual().withSoak(Duration.ofHours(11));
        assertEquals(new Counts(0, 3, 0, ALL - 3), done(publish(changed)).counts());
        assertTrue(server.text(name("steep-1.drain")).contains("SEQUENCE:1\r\nDTSTART:20310330T060000Z"));
    }

    @Test
    void aDroppedActIsDeletedAndNothingElse() {
        publish(PlanFixture.usual());
        server.stored.put("/cal/malt/birthday.ics", new FakeServer.Stored(new byte[] {'x'}, 99));
        Counts counts = done(publish(PlanFixture.usual().withTurns(5))).counts();
        assertEquals(1, counts.removed());
        assertFalse(server.stored.containsKey("/cal/malt/" + name("floor.turn-6")));
        assertTrue(server.stored.containsKey("/cal/malt/birthday.ics"));
        assertEquals(1, server.count("DELETE"));
    }

    @Test
    void aRestoredActComesBackUnderItsUid() {
        publish(PlanFixture.usual());
        publish(PlanFixture.usual().withTurns(5));
        assertEquals(1, done(publish(PlanFixture.usual())).counts().created());
        assertTrue(server.text(name("floor.turn-6")).contains("SEQUENCE:2"));
    }

    @Test
    void anEditedCopyIsLeftAloneUntilThePersonDecides() {
        publish(PlanFixture.usual());
        server.edit(name("steep-1.drain"), "SUMMARY:Drain", "SUMMARY:Ask Jo to drain");
        PublishResult.Published result = done(publish(PlanFixture.usual().withSoak(Duration.ofHours(11))));
        assertEquals(List.of(Conflict.Kind.EDITED), kinds(result));
        assertEquals(2, result.counts().updated());
        assertTrue(server.text(name("steep-1.drain")).contains("Ask Jo"));
        Decision overwrite = Decision.about(result.conflicts().get(0), Decision.Choice.OVERWRITE);
        Counts counts = done(publish(PlanFixture.usual().withSoak(Duration.ofHours(11)), overwrite))
                .counts();
        assertEquals(new Counts(0, 1, 0, ALL - 1), counts);
        assertFalse(server.text(name("steep-1.drain")).contains("Ask Jo"));
    }

    @Test
    void keepingTheirsHoldsUntilThePlanChangesThatActAgain() {
        publish(PlanFixture.usual());
        server.edit(name("steep-1.drain"), "SUMMARY:Drain", "SUMMARY:Ask Jo to drain");
        PlanFixture longer = PlanFixture.usual().withSoak(Duration.ofHours(11));
        Conflict conflict = done(publish(longer)).conflicts().get(0);
        assertEquals(List.of(), kinds(done(publish(longer, Decision.about(conflict, Decision.Choice.KEEP_THEIRS)))));
        assertEquals(List.of(), kinds(done(publish(longer))));
        assertTrue(server.text(name("steep-1.drain")).contains("Ask Jo"));
        PlanFixture longest = PlanFixture.usual().withSoak(Duration.ofHours(12));
        assertEquals(List.of(Conflict.Kind.EDITED), kinds(done(publish(longest))));
    }

    @Test
    void aDecisionAboutAnOlderCopyIsAskedAgain() {
        publish(PlanFixture.usual());
        server.edit(name("steep-1.drain"), "SUMMARY:Drain", "SUMMARY:Jo");
        PlanFixture longer = PlanFixture.usual().withSoak(Duration.ofHours(11));
        Conflict conflict = done(publish(longer)).conflicts().get(0);
        server.edit(name("steep-1.drain"), "SUMMARY:Jo", "SUMMARY:Kim");
        Decision decision = Decision.about(conflict, Decision.Choice.OVERWRITE);
        assertEquals(List.of(Conflict.Kind.EDITED), kinds(done(publish(longer, decision))));
        assertTrue(server.text(name("steep-1.drain")).contains("Kim"));
    }

    @Test
    void aSnoozeOrAnotherWayOfWritingIsNoEdit() {
        publish(PlanFixture.usual());
        String drain = name("steep-1.drain");
        server.edit(drain, "BEGIN:VALARM", "X-SNOOZED:20310330T030000Z\r\nBEGIN:VALARM");
        server.edit(drain, "TRIGGER:-PT30M", "ACKNOWLEDGED:20310330T030000Z\r\nTRIGGER;X-A=b:-PT1800S");
        server.edit(drain, "LAST-MODIFIED:2031", "LAST-MODIFIED:2032");
        assertEquals(
                new Counts(0, 3, 0, ALL - 3),
                done(publish(PlanFixture.usual().withSoak(Duration.ofHours(11))))
                        .counts());
    }

    @Test
    void whatIsMissingThereIsMadeAgainAndNamed() {
        publish(PlanFixture.usual());
        server.stored.remove("/cal/malt/" + name("steep-1.drain"));
        PublishResult.Published result = done(publish(PlanFixture.usual()));
        assertEquals(new Counts(0, 0, 0, ALL - 1), result.counts());
        assertEquals(List.of("steep-1.drain"), keys(result));
        assertTrue(server.text(name("steep-1.drain")).contains("SEQUENCE:0"));
        server.stored.remove("/cal/malt/" + name("steep-1.drain"));
        assertEquals(
                List.of("steep-1.drain"), keys(done(publish(PlanFixture.usual().withSoak(Duration.ofHours(11))))));
        assertTrue(server.text(name("steep-1.drain")).contains("SEQUENCE:1"));
    }

    @Test
    void whatIsMissingStaysAwayOnceToldToUntilThePlanChangesIt() {
        publish(PlanFixture.usual());
        server.stored.remove("/cal/malt/" + name("steep-1.drain"));
        UUID drain = ledger.uidOf("steep-1.drain");
        assertEquals(List.of(), keys(done(publish(PlanFixture.usual(), Decision.leavingOut(drain)))));
        assertEquals(List.of(), keys(done(publish(PlanFixture.usual()))));
        assertFalse(server.stored.containsKey("/cal/malt/" + name("steep-1.drain")));
        PlanFixture longer = PlanFixture.usual().withSoak(Duration.ofHours(11));
        assertEquals(List.of("steep-1.drain"), keys(done(publish(longer))));
    }

    /** A server set up anew holds nothing: all of it is made again, whatever our notes say. */
    @Test
    void aCollectionThatWasEmptiedOrMadeAgainIsFilled() {
        publish(PlanFixture.usual());
        server.stored.clear();
        assertEquals(ALL, done(publish(PlanFixture.usual())).restored().size());
        assertEquals(ALL, server.stored.size());
        server.stored.clear();
        server.exists = false;
        PublishResult made =
                publisher(IfAbsent.MAKE_IT).publish(PlanFixture.usual().dated(), copies, List.of());
        assertEquals(ALL, done(made).restored().size());
        assertEquals(ALL, server.stored.size());
    }

    @Test
    void anEditOfAnEntryThatThePlanDidNotChangeIsToldToo() {
        publish(PlanFixture.usual());
        server.edit(name("steep-1.drain"), "DTSTART:2031", "DTSTART:2030");
        PublishResult.Published result = done(publish(PlanFixture.usual()));
        assertEquals(List.of(Conflict.Kind.EDITED), kinds(result));
        assertTrue(server.text(name("steep-1.drain")).contains("DTSTART:2030"));
        Decision keep = Decision.about(result.conflicts().get(0), Decision.Choice.KEEP_THEIRS);
        assertEquals(List.of(), kinds(done(publish(PlanFixture.usual(), keep))));
        assertEquals(List.of(), kinds(done(publish(PlanFixture.usual()))));
    }

    /** Sent, then no answer: the copy there is ours, though the plan has changed again before the next try. */
    @Test
    void whatGotThereWithoutAnAnswerIsNotTakenForSomebodysEdit() {
        publish(PlanFixture.usual());
        PublishedCopies before = copies;
        publish(PlanFixture.usual().withSoak(Duration.ofHours(11)));
        var revision =
                ledger.next(PlanFixture.usual().withSoak(Duration.ofHours(11)).events(), now);
        copies = before.intending(revision.confirmed()); // as if killed before the results were noted
        assertEquals(List.of(), kinds(done(publish(PlanFixture.usual().withSoak(Duration.ofHours(12))))));
        copies = PublishedCopies.none(server.collection().toString()).intending(revision.confirmed());
        assertEquals(List.of(), kinds(done(publish(PlanFixture.usual().withSoak(Duration.ofHours(12))))));
    }

    @Test
    void anEditedCopyOfADroppedActIsNotDeletedUnasked() {
        publish(PlanFixture.usual());
        server.edit(name("floor.turn-6"), "SUMMARY:", "SUMMARY:Mine ");
        PlanFixture shorter = PlanFixture.usual().withTurns(5);
        PublishResult.Published result = done(publish(shorter));
        assertEquals(List.of(Conflict.Kind.EDITED), kinds(result));
        assertTrue(result.conflicts().get(0).wanted().isEmpty());
        publish(shorter, Decision.about(result.conflicts().get(0), Decision.Choice.KEEP_THEIRS));
        assertEquals(List.of(), kinds(done(publish(shorter))));
        assertTrue(server.text(name("floor.turn-6")).contains("Mine"));
    }

    @Test
    void lostRecordsAreMadeGoodByAdoptingWhatIsOursUnchanged() {
        publish(PlanFixture.usual());
        copies = PublishedCopies.none(server.collection().toString());
        server.edit(name("floor"), "SUMMARY:", "SUMMARY:Mine ");
        server.edit(name("deroot"), "X-PIECEWRIGHT-ACT:deroot", "X-PIECEWRIGHT-ACT:other");
        PublishResult.Published result = done(publish(PlanFixture.usual()));
        assertEquals(List.of(Conflict.Kind.EDITED, Conflict.Kind.NOT_OURS), kinds(result));
        assertEquals(new Counts(0, 0, 0, ALL - 2), result.counts());
        assertEquals(ALL - 2, copies.copies().size());
    }

    @Test
    void aServerThatGivesNoMarksIsAskedForThem() {
        server.marksOnPut = false;
        publish(PlanFixture.usual());
        assertTrue(
                copies.copies().values().stream().allMatch(copy -> copy.etag().isPresent()));
        assertEquals(
                3,
                done(publish(PlanFixture.usual().withSoak(Duration.ofHours(11))))
                        .counts()
                        .updated());
    }

    @Test
    void breakingOffHalfWayLosesNothing() {
        publish(PlanFixture.usual().withTurns(0));
        int before = server.stored.size();
        server.after("PUT", 3, new FakeServer.Scripted(507, Map.of(), new byte[0]));
        PublishResult result = publish(PlanFixture.usual());
        assertEquals(507, assertInstanceOf(PublishResult.Refused.class, result).status());
        assertEquals(server.stored.size(), copies.copies().size());
        assertTrue(server.stored.size() > before);
        assertEquals(0, done(publish(PlanFixture.usual())).conflicts().size());
        assertEquals(ALL, server.stored.size());
    }

    @ParameterizedTest
    @ValueSource(ints = {401, 403, 415, 500})
    void aRefusalSaysItsStatus(int status) {
        server.next.add(new FakeServer.Scripted(status, Map.of(), new byte[0]));
        assertEquals(
                status,
                assertInstanceOf(PublishResult.Refused.class, publish(PlanFixture.usual()))
                        .status());
        assertEquals(0, server.stored.size());
    }

    @Test
    void aWrongPasswordIsRefused() {
        Account wrong = new Account("brew", "wrong".toCharArray());
        PublishResult result = new CalDavPublisher(server.collection(), wrong, IfAbsent.REFUSE, SHORT)
                .publish(PlanFixture.usual().dated(), copies, List.of());
        assertEquals(401, assertInstanceOf(PublishResult.Refused.class, result).status());
    }

    @Test
    void aBusyServerIsTriedAgainButNotForEver() {
        for (int busy = 0; busy < 2; busy++) {
            server.next.add(new FakeServer.Scripted(503, Map.of("Retry-After", "3600"), new byte[0]));
        }
        assertEquals(ALL, done(publish(PlanFixture.usual())).counts().created());
        for (int busy = 0; busy < 3; busy++) server.next.add(new FakeServer.Scripted(429, Map.of(), new byte[0]));
        assertEquals(
                429,
                assertInstanceOf(PublishResult.Refused.class, publish(PlanFixture.usual()))
                        .status());
    }

    /** Servers close connections that were kept open; whether the request was heard before that is not known. */
    @Test
    void aConnectionThatDiesIsNotTheEnd() {
        server.after("PUT", 3, new FakeServer.Scripted(FakeServer.HANG_UP, Map.of(), new byte[0]));
        assertEquals(ALL, done(publish(PlanFixture.usual())).counts().created());
        server.deafOnPut = true;
        PlanFixture longer = PlanFixture.usual().withSoak(Duration.ofHours(11));
        PublishResult.Published result = done(publish(longer));
        assertEquals(List.of(), result.conflicts());
        assertEquals(2, result.counts().updated(), "the third was found to be there already");
        for (int time = 0; time < 3; time++) {
            server.next.add(new FakeServer.Scripted(FakeServer.HANG_UP, Map.of(), new byte[0]));
        }
        assertInstanceOf(PublishResult.Offline.class, publish(PlanFixture.usual()));
        assertEquals(0, server.next.size());
    }

    @Test
    void redirectsAreFollowedOnTheSameServerOnly() {
        server.next.add(new FakeServer.Scripted(308, Map.of("Location", "/cal/malt/"), new byte[0]));
        assertEquals(ALL, done(publish(PlanFixture.usual())).counts().created());
        String elsewhere = "http://localhost:" + server.collection().uri().getPort() + "/cal/malt/";
        for (String target : List.of(elsewhere, "https://evil.example.org/", "http://[", "file:///etc/passwd")) {
            int before = server.log.size();
            server.next.add(new FakeServer.Scripted(302, Map.of("Location", target), new byte[0]));
            assertEquals(
                    302,
                    assertInstanceOf(PublishResult.Refused.class, publish(PlanFixture.usual()))
                            .status());
            assertEquals(before + 1, server.log.size());
        }
        for (int turn = 0; turn < 9; turn++) {
            server.next.add(new FakeServer.Scripted(307, Map.of("Location", "/cal/malt/"), new byte[0]));
        }
        assertInstanceOf(PublishResult.Refused.class, publish(PlanFixture.usual()));
        server.next.clear();
    }

    @Test
    void aMissingCollectionIsMadeOnlyIfWanted() {
        server.exists = false;
        assertEquals(
                404,
                assertInstanceOf(PublishResult.Refused.class, publish(PlanFixture.usual()))
                        .status());
        PublishResult result =
                publisher(IfAbsent.MAKE_IT).publish(PlanFixture.usual().dated(), copies, List.of());
        assertEquals(ALL, done(result).counts().created());
        assertEquals(1, server.count("MKCALENDAR"));
    }

    @Test
    void anAddressThatIsNoCalendarForEventsIsSaidSo() {
        server.components = "<C:comp name=\"VTODO\"/>";
        assertInstanceOf(PublishResult.NotACalendar.class, publish(PlanFixture.usual()));
        server.components = "";
        server.type = "";
        assertInstanceOf(PublishResult.NotACalendar.class, publish(PlanFixture.usual()));
        server.next.add(new FakeServer.Scripted(200, Map.of(), "<html/>".getBytes(StandardCharsets.UTF_8)));
        assertInstanceOf(PublishResult.NotACalendar.class, publish(PlanFixture.usual()));
        assertEquals(0, server.count("PUT"));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "<!DOCTYPE a [<!ENTITY b SYSTEM \"file:///etc/passwd\">]><multistatus xmlns=\"DAV:\">&b;</multistatus>",
                "<!DOCTYPE a [<!ENTITY b \"bbbb\"><!ENTITY c \"&b;&b;&b;\">]><a>&c;</a>",
                "not xml",
                ""
            })
    void hostileOrBrokenAnswersEndItQuietly(String xml) {
        server.next.add(new FakeServer.Scripted(207, Map.of(), xml.getBytes(StandardCharsets.UTF_8)));
        assertInstanceOf(PublishResult.Offline.class, publish(PlanFixture.usual()));
        assertEquals(0, server.count("PUT"));
    }

    @Test
    void anEndlessAnswerIsCutOff() {
        server.next.add(new FakeServer.Scripted(207, Map.of(), new byte[9 << 20]));
        assertInstanceOf(PublishResult.Offline.class, publish(PlanFixture.usual()));
    }

    @Test
    void noServerMeansOfflineAndNothingLost() throws IOException {
        publish(PlanFixture.usual());
        PublishedCopies before = copies;
        server.close();
        PublishResult result = publish(PlanFixture.usual().withTurns(5));
        assertEquals(
                before, assertInstanceOf(PublishResult.Offline.class, result).copies());
    }

    @Test
    void aServerThatNeverAnswersIsGivenUp() throws IOException {
        try (ServerSocket silent = new ServerSocket(0, 5, InetAddress.getLoopbackAddress())) {
            CollectionUrl there = CollectionUrl.of("http://127.0.0.1:" + silent.getLocalPort() + "/malt/");
            Patience brief = new Patience(Duration.ofSeconds(1), Duration.ofMillis(300), Duration.ofMillis(10), 1);
            PublishResult result = new CalDavPublisher(there, account(), IfAbsent.REFUSE, brief)
                    .publish(PlanFixture.usual().dated(), PublishedCopies.none(there.toString()), List.of());
            assertInstanceOf(PublishResult.Offline.class, result);
        }
    }

    @Test
    void copiesOfAnotherCollectionAreRefused() {
        assertThrows(
                IllegalArgumentException.class,
                () -> publisher(IfAbsent.REFUSE)
                        .publish(List.of(), PublishedCopies.none("https://else.example.org/"), List.of()));
    }

    @Test
    void anEventUnderAnotherNameIsLeftThere() {
        server.after("PUT", 0, new FakeServer.Scripted(409, Map.of(), new byte[0]));
        PublishResult.Published result = done(publish(PlanFixture.usual()));
        assertEquals(List.of(Conflict.Kind.ELSEWHERE), kinds(result));
        assertEquals(ALL - 1, result.counts().created());
    }

    private PublishResult publish(PlanFixture plan, Decision... decisions) {
        now = now.plusSeconds(60);
        var revision = ledger.next(plan.events(), now);
        ledger = revision.ledger();
        List<DatedEvent> events = revision.forLiveFile();
        PublishResult result = publisher(IfAbsent.REFUSE).publish(events, copies, List.of(decisions));
        copies = result.copies();
        return result;
    }

    private CalDavPublisher publisher(IfAbsent ifAbsent) {
        return new CalDavPublisher(server.collection(), account(), ifAbsent, SHORT);
    }

    private static Account account() {
        return new Account("brew", "secret".toCharArray());
    }

    private static PublishResult.Published done(PublishResult result) {
        return assertInstanceOf(PublishResult.Published.class, result);
    }

    private static List<Conflict.Kind> kinds(PublishResult.Published result) {
        return result.conflicts().stream().map(Conflict::kind).toList();
    }

    private static List<String> keys(PublishResult.Published result) {
        return result.restored().stream().map(CalendarEvent::key).toList();
    }

    private static String name(String key) {
        return Ledger.startedFor(PlanFixture.BATCH).uidOf(key) + ".ics";
    }
}
