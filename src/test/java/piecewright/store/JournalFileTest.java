package piecewright.store;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Random;
import java.util.UUID;
import java.util.concurrent.CompletableFuture;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import piecewright.journal.AcrospireCount;
import piecewright.journal.Entry;
import piecewright.journal.Journal;
import piecewright.journal.Report;
import piecewright.journal.Report.Did;
import piecewright.journal.Report.Tare;
import piecewright.journal.Report.Weighed;
import piecewright.journal.Sign;
import piecewright.journal.Spot;
import piecewright.plan.ActKind;
import piecewright.quantity.Moisture;
import piecewright.store.JournalFile.Content;
import piecewright.store.JournalFile.Draft;

class JournalFileTest {
    private static final UUID BATCH = UUID.fromString("5b0e86a1-6f1c-4b5e-9d5a-0a6c1d1c9b33");
    private static final Instant AT = Instant.parse("2031-01-17T20:00:00Z");
    private static final Instant WRITTEN = Instant.parse("2031-01-17T21:00:00.5Z");

    @TempDir
    Path folder;

    private Path file() {
        return folder.resolve("batch.json.journal.jsonl");
    }

    private static Draft draft(Report report) {
        return new Draft(AT, WRITTEN, Optional.of("steep-1.drain"), report);
    }

    private Content append(Report... reports) throws StoreException {
        return JournalFile.append(
                file(),
                BATCH,
                journal -> Arrays.stream(reports).map(JournalFileTest::draft).toList());
    }

    static final List<Report> EVERY_KIND = List.of(
            new Report.Started(ActKind.SOAK),
            Did.of(ActKind.DRAIN),
            new Did(ActKind.SPRINKLE, OptionalDouble.of(0.15)),
            Weighed.net(5.56),
            new Weighed(17.2, Optional.of(new Tare("blue tub", 1.84))),
            new Report.SampleDried(new Moisture(0.435)),
            new Report.TemperatureRead(49, Spot.CORE),
            new Report.AcrospiresCounted(new AcrospireCount(List.of(0, 3, 8, 12, 6, 1))),
            new Report.ChittedCounted(41, 50),
            new Report.ColourMeasured(3.5),
            new Report.Observed(Sign.SOUR, "smells \"sour\"\nof \u202e vinegar"),
            new Report.HeatSet(65),
            new Report.VentsSet(0.5),
            new Report.VesselWeighed(new Tare("net", 0.06)),
            new Report.Noted("ıİ ß 麦芽"),
            new Report.Corrected(4, Optional.of(Weighed.net(5.36))),
            new Report.Corrected(2, Optional.empty()));

    @Test
    void everyKindOfEntryComesBackAsItWasWritten() throws StoreException {
        Content written = append(EVERY_KIND.toArray(Report[]::new));
        Content read = JournalFile.read(file(), BATCH);
        assertEquals(written.journal(), read.journal());
        assertEquals(
                EVERY_KIND, read.journal().entries().stream().map(Entry::report).toList());
        assertEquals(List.of(), read.damaged());
    }

    @Test
    void entriesAreAddedBehindThoseThatAreThere() throws StoreException {
        append(Did.of(ActKind.SOAK));
        Content both = append(Did.of(ActKind.DRAIN));
        assertEquals(
                List.of(1, 2),
                both.journal().entries().stream().map(Entry::number).toList());
        assertEquals(both.journal(), JournalFile.read(file(), BATCH).journal());
    }

    /** Cut anywhere, as a loss of power does: every whole line before the cut is read and the next entry is kept. */
    @Test
    void aFileCutAtAnyByteLosesNoAcceptedEntry() throws StoreException, IOException {
        append(EVERY_KIND.toArray(Report[]::new));
        byte[] whole = Files.readAllBytes(file());
        Random random = new Random(7);
        for (int round = 0; round < 60; round++) {
            int cut = random.nextInt(whole.length);
            byte[] left = Arrays.copyOf(whole, cut);
            int lines = (int) new String(left, java.nio.charset.StandardCharsets.ISO_8859_1)
                    .chars()
                    .filter(c -> c == '\n')
                    .count();
            Files.write(file(), left);
            Content after = append(Did.of(ActKind.TURN));
            List<Entry> entries = after.journal().entries();
            assertTrue(entries.size() >= Math.max(1, lines), "cut at " + cut);
            assertEquals(Did.of(ActKind.TURN), entries.get(entries.size() - 1).report());
            assertEquals(after, JournalFile.read(file(), BATCH), "cut at " + cut);
        }
    }

    @Test
    void aDamagedLineIsToldWithItsPlaceAndItsNumberIsNotGivenAgain() throws StoreException, IOException {
        append(Did.of(ActKind.SOAK));
        Files.writeString(file(), "{\"number\":2,\"at\":\"2031-", StandardOpenOption.APPEND);
        Content read = JournalFile.read(file(), BATCH);
        assertEquals(1, read.damaged().size());
        assertEquals(3, read.damaged().get(0).line());
        Content after = append(Did.of(ActKind.DRAIN));
        assertEquals(
                List.of(1, 3),
                after.journal().entries().stream().map(Entry::number).toList());
        assertTrue(Files.readString(file()).contains("{\"number\":2,\"at\":\"2031-\n"), "it stays in the file");
    }

    /** However often a line was cut, those written after it count on without a gap. */
    @Test
    void numbersGoOnAfterADamagedLine() throws StoreException, IOException {
        append(Did.of(ActKind.SOAK));
        for (int cuts = 0; cuts < 3; cuts++) {
            Files.writeString(file(), "{\"number\":9,\"at\"\n", StandardOpenOption.APPEND);
            for (int more = 0; more < 3; more++) append(Did.of(ActKind.TURN));
        }
        assertEquals(
                List.of(1, 3, 4, 5, 7, 8, 9, 11, 12, 13),
                JournalFile.read(file(), BATCH).journal().entries().stream()
                        .map(Entry::number)
                        .toList());
    }

    @Test
    void theJournalOfAnotherBatchIsRefused() throws StoreException {
        append(Did.of(ActKind.SOAK));
        UUID other = UUID.fromString("00000000-0000-4000-8000-000000000000");
        assertThrows(StoreException.class, () -> JournalFile.read(file(), other));
        assertThrows(StoreException.class, () -> JournalFile.append(file(), other, journal -> List.of()));
    }

    @Test
    void twoWhoWriteAtOnceLoseNothing() throws Exception {
        List<CompletableFuture<Void>> writers = new ArrayList<>();
        for (int i = 0; i < 20; i++) {
            writers.add(CompletableFuture.runAsync(() -> {
                try {
                    append(Did.of(ActKind.TURN));
                } catch (StoreException failed) {
                    throw new AssertionError(failed);
                }
            }));
        }
        CompletableFuture.allOf(writers.toArray(CompletableFuture[]::new)).get();
        Journal journal = JournalFile.read(file(), BATCH).journal();
        assertEquals(20, journal.entries().size());
    }

    @Test
    void tenThousandEntriesAreRead() throws StoreException {
        List<Report> many = new ArrayList<>();
        for (int i = 0; i < 10_000; i++) many.add(EVERY_KIND.get(i % 14));
        List<Draft> drafts = many.stream().map(JournalFileTest::draft).toList();
        JournalFile.append(file(), BATCH, journal -> drafts);
        assertEquals(
                10_000, JournalFile.read(file(), BATCH).journal().effective().size());
    }
}
