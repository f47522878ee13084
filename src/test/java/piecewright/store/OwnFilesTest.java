package piecewright.store;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.nio.file.FileSystems;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import piecewright.journal.Report;
import piecewright.store.JournalFile.Draft;

/** Whose files are, by whatever name, and what is left of them after a kill. */
class OwnFilesTest {
    private static final Instant AT = Instant.parse("2031-03-14T19:00:00Z");
    private static final Path BATCH = Path.of("src/test/resources/store/batch-format-1.json");

    @TempDir
    Path folder;

    private SavedBatch batch;
    private Path file;

    @BeforeEach
    void keep() throws StoreException {
        batch = BatchFile.read(BATCH);
        file = folder.resolve("batch.json");
        BatchFile.write(file, batch);
    }

    private static boolean modes() {
        return FileSystems.getDefault().supportedFileAttributeViews().contains("posix");
    }

    private static String mode(Path file) throws Exception {
        return PosixFilePermissions.toString(Files.getPosixFilePermissions(file));
    }

    private static void give(Path file, String mode) throws Exception {
        Files.setPosixFilePermissions(file, PosixFilePermissions.fromString(mode));
    }

    private void note(Path of, String words) throws StoreException {
        JournalFile.append(
                JournalFile.beside(of),
                batch.id(),
                before -> List.of(new Draft(AT, AT, Optional.empty(), new Report.Noted(words))));
    }

    @Test
    void whatIsNewIsReadByItsOwnerOnly() throws Exception {
        assumeTrue(modes());
        note(file, "one");
        Path made = folder.resolve("a/b");
        AtomicFile.makeOwnFolder(made);
        assertEquals("rwx------", mode(made));
        try (Stream<Path> all = Files.list(folder)) {
            for (Path each : all.filter(Files::isRegularFile).toList()) {
                assertEquals("rw-------", mode(each), each.toString());
            }
        }
    }

    @Test
    void aModeSomebodyGaveStays() throws Exception {
        assumeTrue(modes());
        for (String mode : List.of("rw-r-----", "rw-------", "rw-r--r--")) {
            give(file, mode);
            BatchFile.write(file, batch);
            assertEquals(mode, mode(file));
            assertEquals(mode, mode(GoodCopy.of(file)));
        }
        Path calendar = folder.resolve("calendar.ics");
        Files.writeString(calendar, "");
        give(calendar, "rw-------");
        AtomicFile.write(calendar, "BEGIN:VCALENDAR");
        assertEquals("rw-------", mode(calendar));
    }

    @Test
    void readOnlyMeansKeepOutOfFileCopyAndJournal() throws Exception {
        assumeTrue(modes());
        note(file, "one");
        for (Path kept : List.of(file, JournalFile.beside(file))) {
            give(kept, "r--r--r--");
            byte[] before = Files.readAllBytes(kept);
            byte[] copy = Files.readAllBytes(GoodCopy.of(kept));
            StoreException refused = assertThrows(StoreException.class, () -> {
                if (kept.equals(file)) BatchFile.write(file, batch.finished(AT));
                else note(file, "two");
            });
            assertTrue(String.valueOf(refused.getMessage()).contains("read-only"), refused.getMessage());
            assertEquals(
                    List.of(before, copy).stream().map(String::new).toList(),
                    Stream.of(Files.readAllBytes(kept), Files.readAllBytes(GoodCopy.of(kept)))
                            .map(String::new)
                            .toList());
            give(kept, "rw-------");
        }
    }

    @Test
    void throughALinkAndThroughItsOwnNameABatchHasOneJournalAndOneLock() throws Exception {
        Path elsewhere = Files.createDirectory(folder.resolve("elsewhere"));
        Path link = Files.createSymbolicLink(elsewhere.resolve("link.json"), file);
        note(link, "one");
        note(file, "two");
        assertEquals(
                2,
                JournalFile.read(JournalFile.beside(file), batch.id())
                        .journal()
                        .entries()
                        .size());
        BatchFile.write(link, batch.finished(AT));
        assertTrue(Files.isSymbolicLink(link));
        assertEquals(batch.finished(AT), BatchFile.read(GoodCopy.of(file)));
        try (FolderLock lock = FolderLock.of(link)) {
            assertTrue(lock.holds());
            assertThrows(StoreException.class, () -> FolderLock.of(List.of(file), java.time.Duration.ofMillis(30)));
        }
        try (Stream<Path> beside = Files.list(elsewhere)) {
            assertEquals(List.of(link), beside.toList());
        }
    }

    /** Of any kind of file; but not of a program that still writes. */
    @Test
    void whatAKilledProgramLeftIsSweptByTheNextThatStarts() throws Exception {
        long nobody = nobody();
        List<Path> left = Stream.of(
                        "barley.learned.json", "batch.json.ledger.json", "all.ics.batches.json", "sheet.html")
                .map(name -> folder.resolve("." + name + "." + nobody + "-" + UUID.randomUUID() + ".tmp"))
                .toList();
        Path old = folder.resolve(".batch.json.live.json." + UUID.randomUUID() + ".tmp");
        Path going = Unfinished.of(folder.resolve("other.json"));
        Path person = folder.resolve(".notes.tmp");
        for (Path each : left) Files.writeString(each, "half");
        for (Path each : List.of(old, going, person)) Files.writeString(each, "half");
        FolderLock.sweep(folder);
        for (Path each : left) assertFalse(Files.exists(each), each.toString());
        assertFalse(Files.exists(old));
        assertTrue(Files.exists(going));
        assertTrue(Files.exists(person));
    }

    /** The number of a process that is over. */
    private static long nobody() throws Exception {
        Process process = new ProcessBuilder(
                        Path.of(System.getProperty("java.home"), "bin", "java").toString(), "-version")
                .redirectErrorStream(true)
                .start();
        process.getInputStream().readAllBytes();
        process.waitFor();
        return process.pid();
    }
}
