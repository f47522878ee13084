package piecewright.store;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * A disk of 160 kB that fills up. It takes leave to mount one; without it the test skips itself. By hand: {@code sudo
 * mount -t tmpfs -o size=160k tmpfs DIR}, then {@code mvn -q test -Dtest=FullDiskTest -Dpiecewright.disk=DIR}.
 */
@Tag("disk")
class FullDiskTest {
    private static final String NAMED = System.getProperty("piecewright.disk", "");
    private static final int MOST_SAVES = 5000;

    @TempDir
    Path folder;

    private Path disk;

    @BeforeEach
    void mounted() throws IOException, InterruptedException {
        disk = NAMED.isEmpty() ? folder.resolve("disk") : Path.of(NAMED);
        Files.createDirectories(disk);
        boolean small = !NAMED.isEmpty() || run("mount", "-t", "tmpfs", "-o", "size=160k", "tmpfs", disk.toString());
        assumeTrue(small, "no leave to mount a small disk here");
    }

    @AfterEach
    void unmounted() throws IOException, InterruptedException {
        if (NAMED.isEmpty()) run("umount", disk.toString());
    }

    private static boolean run(String... command) throws IOException, InterruptedException {
        try {
            Process process = new ProcessBuilder(command)
                    .redirectErrorStream(true)
                    .redirectOutput(ProcessBuilder.Redirect.DISCARD)
                    .start();
            return process.waitFor(20, TimeUnit.SECONDS) && process.exitValue() == 0;
        } catch (IOException noSuchProgram) {
            return false;
        }
    }

    @Test
    void aFullDiskLosesNothingAndSaysSo() throws StoreException, IOException {
        Path file = disk.resolve("batch.json");
        SavedBatch batch = BatchFile.read(Path.of("src/test/resources/store/batch-format-1.json"));
        BatchFile.write(file, batch);
        int kept = 0;
        String said = "";
        while (said.isEmpty() && kept < MOST_SAVES) {
            try {
                kept = SavingForever.entry(file, batch);
            } catch (StoreException full) {
                said = String.valueOf(full.getMessage());
            }
        }
        assertTrue(said.contains("cannot be added to: the disk is full. Nothing kept before is lost; make room"), said);
        mustHold(file, batch, kept);
        StoreException full =
                assertThrows(StoreException.class, () -> BatchFile.write(file, SavingForever.known(batch, 1)));
        assertTrue(String.valueOf(full.getMessage()).contains("cannot be written: the disk is full."));
        mustHold(file, batch, kept);
        Files.delete(GoodCopy.of(file)); // room is made
        assertEquals(kept + 1, SavingForever.entry(file, batch));
        mustHold(file, batch, kept + 1);
    }

    private static void mustHold(Path file, SavedBatch batch, int entries) throws StoreException {
        assertEquals(batch, BatchFile.read(file));
        JournalFile.Content content = JournalFile.read(JournalFile.beside(file), batch.id());
        assertEquals(entries, content.journal().entries().size());
        assertEquals(List.of(), content.damaged());
    }
}
