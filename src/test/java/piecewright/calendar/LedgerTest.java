package piecewright.calendar;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.UUID;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

/** What happens to UIDs and stamps across exports; rules from RFC 5545, 3.8.7, and RFC 5546, 2.1.4. */
class LedgerTest {
    private static final Instant NOW = PlanFixture.NOW;
    private static final Instant LATER = NOW.plusSeconds(3600);
    private static final Ledger EMPTY = Ledger.startedFor(PlanFixture.BATCH);
    private final IcsWriter writer = new IcsWriter();

    @Test
    void samePlanLaterGivesTheSameBytes() {
        Revision first = EMPTY.next(PlanFixture.usual().events(), NOW);
        Revision second = first.ledger().next(PlanFixture.usual().events(), LATER);
        assertArrayEquals(writer.file("Malt", first.forImportFile()), writer.file("Malt", second.forImportFile()));
        assertEquals(first.ledger(), second.ledger());
    }

    @Test
    void aLongerSoakChangesOnlyWhatMoved() {
        Revision first = EMPTY.next(PlanFixture.usual().events(), NOW);
        Revision second = first.ledger()
                .next(PlanFixture.usual().withSoak(Duration.ofHours(11)).events(), LATER);
        assertEquals(uids(first.confirmed()), uids(second.confirmed()));
        Set<String> touched = new TreeSet<>();
        for (DatedEvent after : second.confirmed()) {
            DatedEvent before = find(first.confirmed(), after.event().key());
            if (after.equals(before)) {
                assertArrayEquals(writer.resource(before), writer.resource(after));
                continue;
            }
            touched.add(after.event().key());
            assertEquals(before.stamp().sequence() + 1, after.stamp().sequence());
            assertTrue(after.stamp().lastModified().isAfter(before.stamp().lastModified()));
            assertEquals(before.stamp().created(), after.stamp().created());
        }
        assertEquals(Set.of("steep-1.drain", "phase.steep-1", "phase.rest-1"), touched);
    }

    @Test
    void newWordsAloneAreNewerButNotANewSequence() {
        BatchEvents events = PlanFixture.usual().events();
        Ledger first = EMPTY.next(events, NOW).ledger();
        Revision second = first.next(withSummary(events, "floor", "Spread it out"), LATER);
        DatedEvent floor = find(second.confirmed(), "floor");
        assertEquals(new Stamp(0, NOW, LATER), floor.stamp());
    }

    @Test
    void aClockThatWentBackOrStoodStillStillGivesANewerStamp() {
        BatchEvents events = PlanFixture.usual().events();
        Ledger first = EMPTY.next(events, NOW).ledger();
        Revision same = first.next(withSummary(events, "floor", "A"), NOW.plusMillis(300));
        assertEquals(NOW.plusSeconds(1), find(same.confirmed(), "floor").stamp().lastModified());
        Revision back = same.ledger().next(withSummary(events, "floor", "B"), NOW.minusSeconds(86400));
        assertEquals(NOW.plusSeconds(2), find(back.confirmed(), "floor").stamp().lastModified());
    }

    @Test
    void aDroppedActIsCancelledInImportFilesAndAbsentFromLiveOnes() {
        Ledger first = EMPTY.next(PlanFixture.usual().events(), NOW).ledger();
        Revision second = first.next(PlanFixture.usual().withTurns(5).events(), LATER);
        DatedEvent stub = find(second.forImportFile(), "floor.turn-6");
        assertEquals(EventStatus.CANCELLED, stub.status());
        assertEquals(1, stub.stamp().sequence());
        assertEquals(LATER, stub.stamp().lastModified());
        assertEquals("Cancelled: Act: floor.turn-6", stub.event().summary());
        assertEquals(Attention.PASSIVE, stub.event().attention());
        assertFalse(keys(second.forLiveFile()).contains("floor.turn-6"));
        assertEquals(List.of(), new IcsChecks().faultsOf(writer.file("Malt", second.forImportFile())));
    }

    @Test
    void theCancelledStubStaysTheSameUntilTheBatchEndsAndThenGoes() {
        BatchEvents shorter = PlanFixture.usual().withTurns(5).events();
        Ledger first = EMPTY.next(PlanFixture.usual().events(), NOW).ledger();
        Revision second = first.next(shorter, LATER);
        Revision third = second.ledger().next(shorter, shorter.endsAt().minusSeconds(1));
        assertEquals(second.cancelled(), third.cancelled());
        Revision over = third.ledger().next(shorter, shorter.endsAt());
        assertEquals(List.of(), over.cancelled());
    }

    @Test
    void aRestoredActKeepsItsUidAndHasAHigherSequence() {
        Ledger first = EMPTY.next(PlanFixture.usual().events(), NOW).ledger();
        Ledger dropped =
                first.next(PlanFixture.usual().withTurns(5).events(), LATER).ledger();
        DatedEvent restored = find(
                dropped.next(PlanFixture.usual().events(), LATER.plusSeconds(60))
                        .confirmed(),
                "floor.turn-6");
        assertEquals(first.uidOf("floor.turn-6"), restored.uid());
        assertEquals(2, restored.stamp().sequence());
        assertEquals(EventStatus.CONFIRMED, restored.status());
    }

    @Test
    void aCopiedBatchSharesNoUid() {
        UUID copy = UUID.fromString("aaaaaaaa-bbbb-4ccc-8ddd-eeeeeeeeeeee");
        Set<UUID> original = uids(EMPTY.next(PlanFixture.usual().events(), NOW).confirmed());
        Set<UUID> copied = uids(Ledger.startedFor(copy)
                .next(PlanFixture.usual().events(copy), NOW)
                .confirmed());
        assertEquals(original.size(), copied.size());
        assertTrue(original.stream().noneMatch(copied::contains));
    }

    @Test
    void aLostLedgerGivesEveryActItsOldUidBack() {
        Set<UUID> before = uids(EMPTY.next(PlanFixture.usual().events(), NOW).confirmed());
        Set<UUID> after = uids(Ledger.startedFor(PlanFixture.BATCH)
                .next(PlanFixture.usual().events(), LATER)
                .confirmed());
        assertEquals(before, after);
    }

    @Test
    void aLedgerLostButForTheFileNeverLowersASequence() {
        Revision first = EMPTY.next(PlanFixture.usual().events(), NOW);
        Revision second = first.ledger().next(PlanFixture.usual().withTurns(5).events(), LATER);
        List<WrittenEvent> seen =
                WrittenEvents.in(writer.file("Malt", second.forImportFile())).orElseThrow();
        Revision third =
                EMPTY.caughtUpWith(seen).next(PlanFixture.usual().withTurns(5).events(), NOW);
        assertTrue(find(third.cancelled(), "floor.turn-6").stamp().sequence() > 1);
        assertEquals(
                "Cancelled: Act: floor.turn-6",
                find(third.cancelled(), "floor.turn-6").event().summary());
        for (DatedEvent event : third.confirmed()) {
            Stamp before = find(second.confirmed(), event.event().key()).stamp();
            assertTrue(event.stamp().sequence() >= before.sequence());
            assertTrue(event.stamp().lastModified().isAfter(before.lastModified()));
        }
    }

    /** File in place, ledger not saved, and then the plan goes back to what it was before. */
    @Test
    void aCrashBetweenFileAndLedgerNeverLowersASequence() {
        Ledger saved = EMPTY.next(PlanFixture.usual().events(), NOW).ledger();
        PlanFixture longer = PlanFixture.usual().withSoak(Duration.ofHours(11));
        byte[] file = writer.file("Malt", saved.next(longer.events(), LATER).forImportFile());
        Ledger caughtUp = saved.caughtUpWith(WrittenEvents.in(file).orElseThrow());
        Revision next = caughtUp.next(PlanFixture.usual().events(), LATER.plusSeconds(60));
        DatedEvent drain = find(next.confirmed(), "steep-1.drain");
        assertEquals(2, drain.stamp().sequence());
        assertEquals(LATER.plusSeconds(60), drain.stamp().lastModified());
        assertEquals(new Stamp(0, NOW, NOW), find(next.confirmed(), "kiln.load").stamp());
    }

    @Test
    void anOlderFileTeachesTheLedgerNothing() {
        Revision first = EMPTY.next(PlanFixture.usual().events(), NOW);
        Ledger second = first.ledger()
                .next(PlanFixture.usual().withSoak(Duration.ofHours(11)).events(), LATER)
                .ledger();
        byte[] old = writer.file("Malt", first.forImportFile());
        assertEquals(second, second.caughtUpWith(WrittenEvents.in(old).orElseThrow()));
    }

    @Test
    void eventsOfOtherBatchesAreNoneOfItsBusiness() {
        byte[] file = writer.file("Malt", PlanFixture.usual().dated());
        Ledger other = Ledger.startedFor(UUID.fromString("aaaaaaaa-bbbb-4ccc-8ddd-eeeeeeeeeeee"));
        assertEquals(other, other.caughtUpWith(WrittenEvents.in(file).orElseThrow()));
        assertThrows(
                IllegalArgumentException.class,
                () -> other.next(PlanFixture.usual().events(), NOW));
    }

    @Test
    void previewSaysWhatMovesFromWhenToWhenBeforeAnythingIsWritten() {
        Ledger first = EMPTY.next(PlanFixture.usual().events(), NOW).ledger();
        PlanFixture changed = PlanFixture.usual().withSoak(Duration.ofHours(11)).withTurns(5);
        CalendarChanges changes = first.changes(withSummary(changed.events(), "floor", "Spread"));
        CalendarChanges.Moved drain = changes.moved().stream()
                .filter(moved -> moved.event().key().equals("steep-1.drain"))
                .findFirst()
                .orElseThrow();
        assertEquals(Instant.parse("2031-03-30T03:00:00Z"), drain.from().startsAt());
        assertEquals(Instant.parse("2031-03-30T06:00:00Z"), drain.to().startsAt());
        assertEquals(1, changes.dropped().size());
        assertEquals("floor.turn-6", changes.dropped().get(0).key());
        assertEquals(1, changes.reworded());
        assertEquals(List.of(), changes.added());
        int all = changed.events().events().size();
        assertEquals(all, changes.moved().size() + changes.reworded() + changes.unchanged());
    }

    @Test
    void previewOfTheSamePlanIsEmptyAndOfAFirstExportAllNew() {
        BatchEvents events = PlanFixture.usual().events();
        assertEquals(events.events(), EMPTY.changes(events).added());
        assertTrue(EMPTY.next(events, NOW).ledger().changes(events).isEmpty());
    }

    @Test
    void previewCountsARestoredActAsNew() {
        Ledger first = EMPTY.next(PlanFixture.usual().events(), NOW).ledger();
        Ledger dropped =
                first.next(PlanFixture.usual().withTurns(5).events(), LATER).ledger();
        CalendarChanges changes =
                dropped.changes(PlanFixture.usual().withTurns(5).events());
        assertTrue(changes.isEmpty(), "an act dropped before is not dropped again");
        List<CalendarEvent> added =
                dropped.changes(PlanFixture.usual().events()).added();
        assertEquals(
                List.of("floor.turn-6"), added.stream().map(CalendarEvent::key).toList());
    }

    @Test
    void anEntryUnderAnotherBatchsUidIsRefused() {
        Ledger ledger = EMPTY.next(PlanFixture.usual().events(), NOW).ledger();
        UUID other = UUID.fromString("aaaaaaaa-bbbb-4ccc-8ddd-eeeeeeeeeeee");
        assertThrows(IllegalArgumentException.class, () -> new Ledger(other, new TreeMap<>(ledger.entries())));
        assertNotEquals(ledger.uidOf("floor"), Ledger.startedFor(other).uidOf("floor"));
    }

    private static BatchEvents withSummary(BatchEvents events, String key, String summary) {
        List<CalendarEvent> changed = new ArrayList<>();
        for (CalendarEvent event : events.events()) {
            changed.add(
                    event.key().equals(key)
                            ? new CalendarEvent(
                                    key,
                                    event.span(),
                                    summary,
                                    event.description(),
                                    event.attention(),
                                    event.colour(),
                                    event.alarms())
                            : event);
        }
        return new BatchEvents(events.batch(), events.endsAt(), changed);
    }

    private static DatedEvent find(List<DatedEvent> events, String key) {
        return events.stream()
                .filter(event -> event.event().key().equals(key))
                .findFirst()
                .orElseThrow();
    }

    private static Set<UUID> uids(List<DatedEvent> events) {
        return events.stream().map(DatedEvent::uid).collect(Collectors.toSet());
    }

    private static Set<String> keys(List<DatedEvent> events) {
        return events.stream().map(event -> event.event().key()).collect(Collectors.toSet());
    }
}
