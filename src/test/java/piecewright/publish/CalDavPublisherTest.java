package piecewright.publish;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Duration;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import piecewright.calendar.PlanFixture;
import piecewright.calendar.PublishedCopies;
import piecewright.publish.CalDavPublisher.IfAbsent;
import piecewright.publish.PublishResult.Counts;

/** Against a server in memory; status codes and conditions as in RFC 4791 and RFC 9110. */
@Timeout(60)
class CalDavPublisherTest extends AgainstAServer {
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
}
