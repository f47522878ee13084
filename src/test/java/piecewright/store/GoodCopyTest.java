package piecewright.store;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import piecewright.journal.Entry;
import piecewright.journal.Report;
import piecewright.store.GoodCopy.Mended;
import piecewright.store.JournalFile.Draft;

class GoodCopyTest {
    private static final Instant AT = Instant.parse("2031-03-14T19:00:00Z");
    private static final Path BATCH = Path.of("src/test/resources/store/batch-format-1.json");

    @TempDir
    Path folder;

    private Path file() {
        return folder.resolve("batch.json");
    }

    private Path journal() {
        return folder.resolve("batch.json.journal.jsonl");
    }

    private SavedBatch kept() throws StoreException {
        SavedBatch batch = BatchFile.read(BATCH);
        BatchFile.write(file(), batch);
        return batch;
    }

    @Test
    void aBatchDamagedAtAnyByteIsPutBackAndTheDamagedOneIsKept() throws StoreException, IOException {
        SavedBatch batch = kept();
        byte[] whole = Files.readAllBytes(file());
        Random random = new Random(11);
        for (int round = 0; round < 20; round++) {
            byte[] damaged = Arrays.copyOf(whole, random.nextInt(whole.length - 2));
            Files.write(file(), damaged);
            Mended mended = GoodCopy.mend(file(), BatchFile::read).orElseThrow();
            assertEquals(batch, BatchFile.read(file()));
            assertTrue(Arrays.equals(damaged, Files.readAllBytes(mended.aside())));
        }
    }

    @Test
    void aBatchThatCanBeReadIsLeftAlone() throws StoreException, IOException {
        SavedBatch batch = kept();
        Files.writeString(GoodCopy.of(file()), "{");
        assertEquals(Optional.empty(), GoodCopy.mend(file(), BatchFile::read));
        assertEquals(batch, BatchFile.read(file()));
    }

    @Test
    void withBothDamagedNothingIsChanged() throws StoreException, IOException {
        kept();
        Files.writeString(GoodCopy.of(file()), "{");
        Files.writeString(file(), "[");
        assertEquals(Optional.empty(), GoodCopy.mend(file(), BatchFile::read));
        assertEquals("[", Files.readString(file()));
    }

    @Test
    void aBatchThatSomebodyDeletedDoesNotComeBack() throws StoreException, IOException {
        kept();
        Files.delete(file());
        assertEquals(Optional.empty(), GoodCopy.mend(file(), BatchFile::read));
        assertFalse(Files.exists(file()));
    }

    @Test
    void entriesOfADamagedJournalComeBackAndThoseWrittenSinceStay() throws StoreException, IOException {
        SavedBatch batch = kept();
        for (String words : List.of("one", "two", "three")) note(batch, words);
        String whole = Files.readString(journal());
        String four = whole.lines()
                .skip(3)
                .findFirst()
                .orElseThrow()
                .replace("three", "four")
                .replace(":3,", ":4,");
        String damaged =
                "\u0000".repeat(300) + "\n" + whole.lines().skip(3).findFirst().orElseThrow() + "\n" + four + "\n";
        Files.write(journal(), (head(whole) + damaged).getBytes(StandardCharsets.UTF_8));
        Mended mended = JournalFile.mend(journal(), batch.id()).orElseThrow();
        assertTrue(Files.exists(mended.aside()));
        assertEquals(List.of("one", "two", "three", "four"), notes(batch));
    }

    @Test
    void aJournalThatLostItsHeadOrItsWholeTextComesBackWithTheNextEntry() throws StoreException, IOException {
        SavedBatch batch = kept();
        note(batch, "one");
        note(batch, "two");
        String whole = Files.readString(journal());
        for (String left : List.of("", "\u0000\u0000\u0000", whole.substring(whole.indexOf('\n') + 1))) {
            Files.writeString(journal(), left);
            Files.writeString(GoodCopy.of(journal()), whole);
            note(batch, "three");
            assertEquals(List.of("one", "two", "three"), notes(batch), "left: " + left);
        }
    }

    private static String head(String whole) {
        return whole.substring(0, whole.indexOf('\n') + 1);
    }

    private void note(SavedBatch batch, String words) throws StoreException {
        JournalFile.append(
                journal(), batch.id(), before -> List.of(new Draft(AT, AT, Optional.empty(), new Report.Noted(words))));
    }

    private List<String> notes(SavedBatch batch) throws StoreException {
        return JournalFile.read(journal(), batch.id()).journal().entries().stream()
                .map(Entry::report)
                .map(report -> ((Report.Noted) report).words())
                .toList();
    }
}
