package piecewright.publish;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.UUID;
import java.util.concurrent.atomic.AtomicBoolean;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import piecewright.calendar.BatchEvents;
import piecewright.calendar.IcsChecks;
import piecewright.calendar.Ledger;
import piecewright.calendar.PlanFixture;
import piecewright.calendar.WrittenEvent;
import piecewright.calendar.WrittenEvents;
import piecewright.publish.CalendarFile.Member;
import piecewright.publish.CalendarFile.Outcome;
import piecewright.publish.CalendarFile.Purpose;
import piecewright.store.StoreException;

class CalendarFileTest {
    private static final Instant NOW = PlanFixture.NOW;
    private static final BatchEvents USUAL = PlanFixture.usual().events();
    private static final BatchEvents SHORTER = PlanFixture.usual().withTurns(5).events();

    @TempDir
    Path folder;

    private Ledger kept = Ledger.startedFor(PlanFixture.BATCH);

    @Test
    void aLiveFileIsWrittenThenLeftAloneWhileNothingChanges() throws StoreException, IOException {
        assertEquals(Outcome.WRITTEN, live(USUAL, NOW));
        byte[] first = Files.readAllBytes(path());
        assertEquals(List.of(), new IcsChecks().faultsOf(first));
        assertEquals(Outcome.UNCHANGED, live(USUAL, NOW.plusSeconds(99)));
        assertArrayEquals(first, Files.readAllBytes(path()));
    }

    @Test
    void droppedActsLeaveTheLiveFileAndStayCancelledInAOneOffFile() throws StoreException, IOException {
        live(USUAL, NOW);
        live(SHORTER, NOW.plusSeconds(60));
        assertFalse(sequences().containsKey("floor.turn-6"));
        assertEquals(Outcome.WRITTEN, write(Purpose.ONE_OFF, SHORTER, NOW.plusSeconds(120)));
        assertEquals(1, sequences().get("floor.turn-6"));
        assertTrue(Files.readString(path()).contains("STATUS:CANCELLED"));
    }

    @Test
    void allBatchesShareOneFileAndEachKeepsItsOwnLedger() throws StoreException, IOException {
        UUID other = UUID.fromString("aaaaaaaa-bbbb-4ccc-8ddd-eeeeeeeeeeee");
        List<Ledger> shelf = new ArrayList<>();
        List<Member> members = List.of(
                new Member(USUAL, Ledger.startedFor(PlanFixture.BATCH), shelf::add),
                new Member(PlanFixture.usual().events(other), Ledger.startedFor(other), shelf::add));
        new CalendarFile(path(), Purpose.LIVE, "Malt").write(members, NOW);
        assertEquals(2 * USUAL.events().size(), seen().size());
        assertEquals(
                List.of(PlanFixture.BATCH, other),
                shelf.stream().map(Ledger::batch).toList());
    }

    @Test
    void aCrashBeforeTheLedgerIsKeptNeverLowersASequence() throws StoreException, IOException {
        live(USUAL, NOW);
        BatchEvents longer = PlanFixture.usual().withSoak(Duration.ofHours(11)).events();
        AtomicBoolean fileWasThere = new AtomicBoolean();
        LedgerShelf crashing = ledger -> {
            fileWasThere.set(sequences().get("steep-1.drain") == 1);
            throw new StoreException(path(), "power cut");
        };
        Member member = new Member(longer, kept, crashing);
        assertThrows(
                StoreException.class,
                () -> new CalendarFile(path(), Purpose.LIVE, "Malt").write(List.of(member), NOW.plusSeconds(60)));
        assertTrue(fileWasThere.get(), "the ledger is kept only once the file is in place");
        live(USUAL, NOW.plusSeconds(30));
        assertEquals(2, sequences().get("steep-1.drain"));
        WrittenEvent drain = seen().stream()
                .filter(event -> event.key().equals("steep-1.drain"))
                .findFirst()
                .orElseThrow();
        assertEquals(NOW.plusSeconds(61), drain.stamp().lastModified());
        assertEquals(0, sequences().get("kiln.load"));
    }

    @Test
    void aLostLedgerIsMadeGoodFromTheFile() throws StoreException, IOException {
        live(USUAL, NOW);
        live(PlanFixture.usual().withSoak(Duration.ofHours(11)).events(), NOW.plusSeconds(60));
        kept = Ledger.startedFor(PlanFixture.BATCH);
        live(USUAL, NOW.plusSeconds(120));
        assertEquals(2, sequences().get("steep-1.drain"));
    }

    @Test
    void aFileOfSomebodyElseIsNotTouched() throws StoreException, IOException {
        for (String text : List.of("", "my notes\n", "BEGIN:VCALENDAR\r\nPRODID:-//Else//EN\r\nEND:VCALENDAR\r\n")) {
            Files.writeString(path(), text);
            assertEquals(Outcome.NOT_OURS, live(USUAL, NOW));
            assertEquals(text, Files.readString(path()));
            assertEquals(Ledger.startedFor(PlanFixture.BATCH), kept);
        }
        assertThrows(
                StoreException.class,
                () -> new CalendarFile(folder, Purpose.LIVE, "Malt")
                        .write(List.of(new Member(USUAL, kept, ledger -> {})), NOW));
    }

    @Test
    void withoutEventsTheFileGoesAndNoneIsMade() throws StoreException {
        assertEquals(Outcome.NOTHING_TO_WRITE, write(List.of(), NOW));
        live(USUAL, NOW);
        assertEquals(Outcome.REMOVED, write(List.of(), NOW));
        assertFalse(Files.exists(path()));
    }

    @Test
    void aReaderNeverSeesHalfAFile() throws Exception {
        live(USUAL, NOW);
        AtomicBoolean done = new AtomicBoolean();
        List<String> torn = new ArrayList<>();
        Thread reader = new Thread(() -> {
            while (!done.get()) {
                try {
                    byte[] bytes = Files.readAllBytes(path());
                    if (!new IcsChecks().faultsOf(bytes).isEmpty()) torn.add("torn at " + bytes.length);
                } catch (IOException gone) {
                    torn.add(gone.toString());
                }
            }
        });
        reader.start();
        for (int round = 1; round <= 30; round++) {
            live(round % 2 == 0 ? USUAL : SHORTER, NOW.plusSeconds(round));
        }
        done.set(true);
        reader.join();
        assertEquals(List.of(), torn);
    }

    private Outcome live(BatchEvents events, Instant now) throws StoreException {
        return write(Purpose.LIVE, events, now);
    }

    private Outcome write(Purpose purpose, BatchEvents events, Instant now) throws StoreException {
        Member member = new Member(events, kept, ledger -> kept = ledger);
        return new CalendarFile(path(), purpose, "Malt").write(List.of(member), now);
    }

    private Outcome write(List<Member> members, Instant now) throws StoreException {
        return new CalendarFile(path(), Purpose.LIVE, "Malt").write(members, now);
    }

    private Path path() {
        return folder.resolve("malt.ics");
    }

    private List<WrittenEvent> seen() {
        try {
            return WrittenEvents.in(Files.readAllBytes(path())).orElseThrow();
        } catch (IOException failed) {
            throw new AssertionError(failed);
        }
    }

    private Map<String, Integer> sequences() {
        Map<String, Integer> sequences = new TreeMap<>();
        seen().forEach(event -> sequences.put(event.key(), event.stamp().sequence()));
        return sequences;
    }
}
