package piecewright.store;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import piecewright.journal.Entry;
import piecewright.journal.Report;
import piecewright.store.JournalFile.Draft;
import piecewright.store.Sealed.Edited;

/** What somebody edits is theirs; what a disk spoils is put back; neither is believed without a word. */
class EditedByHandTest {
    private static final Instant AT = Instant.parse("2031-03-14T19:00:00Z");
    private static final Path BATCH = Path.of("src/test/resources/store/batch-format-1.json");

    @TempDir
    Path folder;

    private SavedBatch batch;
    private Path file;
    private Path journal;

    @BeforeEach
    void keep() throws StoreException {
        batch = BatchFile.read(BATCH);
        file = folder.resolve("batch.json");
        journal = JournalFile.beside(file);
        BatchFile.write(file, batch);
    }

    private void note(String words) throws StoreException {
        JournalFile.append(
                journal, batch.id(), before -> List.of(new Draft(AT, AT, Optional.empty(), new Report.Noted(words))));
    }

    private List<String> notes() throws StoreException {
        return JournalFile.read(journal, batch.id()).journal().entries().stream()
                .map(Entry::report)
                .map(report -> ((Report.Noted) report).words())
                .toList();
    }

    /** A disk that forgets a bit leaves the time of the file as it was. */
    @Test
    void aFlippedBitAnywhereIsFoundAndPutBack() throws Exception {
        byte[] whole = Files.readAllBytes(file);
        FileTime saved = Files.getLastModifiedTime(file);
        Random random = new Random(23);
        int found = 0;
        for (int round = 0; round < 150; round++) {
            byte[] flipped = whole.clone();
            flipped[random.nextInt(whole.length)] ^= (byte) (1 << random.nextInt(7));
            Files.write(file, flipped);
            Files.setLastModifiedTime(file, saved);
            boolean put;
            try (FolderLock lock = FolderLock.of(file)) {
                put = GoodCopy.mend(file, BatchFile::read).isPresent()
                        || Sealed.mend(file, lock).isPresent();
            }
            if (put) found++;
            assertEquals(batch, BatchFile.read(file), "round " + round);
        }
        assertTrue(found > 100, "the rest fell on blanks: " + found);
    }

    @Test
    void anEditIsTakenAndToldOfWithBothValues() throws Exception {
        String text = Files.readString(file);
        String edited = text.replaceFirst("\"styleKey\" : \"[a-z-]+\"", "\"styleKey\" : \"oat\"");
        assertFalse(edited.equals(text));
        save(edited);
        assertFalse(Sealed.isDamaged(file));
        Edited told = Sealed.edited(file).orElseThrow();
        assertTrue(told.differences().get(0).startsWith("request.styleKey: "), told.toString());
        assertTrue(told.differences().get(0).endsWith("→ oat"), told.toString());
        assertEquals("oat", BatchFile.read(file).request().styleKey());
    }

    @Test
    void otherBlanksAreNoEditAndNeitherIsAFileWithoutItsFigure() throws Exception {
        save(Files.readString(file).replace("  ", "\t").replace("\n", "\r\n"));
        assertEquals(Optional.empty(), Sealed.edited(file));
        save(Files.readString(file)
                .replaceFirst(",\\s*\"checksum\" : \"[0-9a-f]{8}\"", "")
                .replace("oat", "pale"));
        assertFalse(Files.readString(file).contains("checksum"));
        assertEquals(Optional.empty(), Sealed.edited(file));
    }

    @Test
    void withoutAGoodCopyNobodyCanTellAndThatIsSaid() throws Exception {
        Files.delete(GoodCopy.of(file));
        FileTime saved = Files.getLastModifiedTime(file);
        Files.writeString(file, Files.readString(file).replaceFirst("\"styleKey\" : \"", "\"styleKey\" : \"x"));
        Files.setLastModifiedTime(file, saved);
        assertFalse(Sealed.isDamaged(file));
        assertEquals(Optional.empty(), Sealed.edited(file).orElseThrow().copy());
    }

    private void save(String text) throws IOException {
        Files.writeString(file, text);
        Files.setLastModifiedTime(
                file, FileTime.from(Files.getLastModifiedTime(file).toInstant().plusMillis(1)));
    }

    @Test
    void anEntryTakenOutByHandStaysOutAndWhatItSaidIsKept() throws Exception {
        for (String words : List.of("one", "couch 300 C", "three")) note(words);
        List<String> lines = new ArrayList<>(Files.readAllLines(journal));
        lines.remove(2);
        Files.write(journal, lines);
        assertEquals(Optional.empty(), JournalFile.mend(journal, batch.id()));
        assertEquals(List.of(2), JournalFile.edited(journal, batch.id()));
        assertTrue(Files.readString(JournalFile.copy(journal)).contains("couch 300 C"));
        note("four");
        assertEquals(List.of("one", "three", "four"), notes());
        assertEquals(List.of(), JournalFile.edited(journal, batch.id()));
        Path earlier = journal.resolveSibling(journal.getFileName() + ".earlier");
        assertTrue(Files.readString(earlier).contains("couch 300 C"));
    }

    @Test
    void anEntryChangedByHandStaysChanged() throws Exception {
        for (String words : List.of("one", "two")) note(words);
        Files.writeString(journal, Files.readString(journal).replace("two", "zwei"));
        assertEquals(Optional.empty(), JournalFile.mend(journal, batch.id()));
        assertEquals(List.of(2), JournalFile.edited(journal, batch.id()));
        note("three");
        assertEquals(List.of("one", "zwei", "three"), notes());
    }

    /** Somebody took out entry 2; then a disk spoils entry 4: 4 comes back, 2 stays out. */
    @Test
    void onlyWhatIsMissingAtADamagedPlaceComesBack() throws Exception {
        for (String words : List.of("one", "two", "three", "four", "five")) note(words);
        List<String> lines = new ArrayList<>(Files.readAllLines(journal));
        lines.set(4, "\u0000\u0000\u0000");
        lines.remove(2);
        Files.write(journal, lines);
        assertTrue(JournalFile.mend(journal, batch.id()).isPresent());
        assertEquals(List.of("one", "three", "four", "five"), notes());
    }

    @Test
    void aJournalWhoseFirstLinesAreDamagedTakesEntriesAndCanBeReadAfterwards() throws Exception {
        for (String first : List.of("\u0001\u0002\ngarbage\n", "{\"format\":1,\n\n[]\n", "{\"fosmat\":1}\n{}\n")) {
            Files.deleteIfExists(GoodCopy.of(journal));
            Files.writeString(journal, first);
            note("one");
            note("two");
            assertEquals(List.of("one", "two"), notes(), first);
            assertTrue(Files.readString(journal).startsWith(first));
        }
    }
}
