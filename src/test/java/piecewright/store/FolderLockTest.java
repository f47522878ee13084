package piecewright.store;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.atomic.AtomicInteger;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class FolderLockTest {
    @TempDir
    Path folder;

    @Test
    void whoComesSecondIsToldWhatToDoAndGetsItAfterwards() throws StoreException {
        Path file = folder.resolve("batch.json");
        try (FolderLock first = FolderLock.of(file)) {
            StoreException busy =
                    assertThrows(StoreException.class, () -> FolderLock.of(List.of(file), Duration.ofMillis(60)));
            String said = String.valueOf(busy.getMessage());
            assertTrue(said.contains("a window or a terminal, is writing here"), said);
            assertTrue(said.contains("wait until it is done, or close it"), said);
            assertTrue(first.holds());
        }
        try (FolderLock second = FolderLock.of(List.of(file), Duration.ofMillis(60))) {
            assertTrue(second.holds());
        }
    }

    @Test
    void twoFoldersAreOneLockAndHalfALockIsNeverKept() throws StoreException, IOException {
        Path lot = Files.createDirectory(folder.resolve("lots")).resolve("a.json");
        Path house = Files.createDirectory(folder.resolve("houses")).resolve("b.json");
        try (FolderLock lots = FolderLock.of(lot)) {
            assertThrows(StoreException.class, () -> FolderLock.of(List.of(house, lot), Duration.ofMillis(40)));
            assertTrue(lots.holds());
            try (FolderLock houses = FolderLock.of(List.of(house), Duration.ofMillis(40))) {
                assertTrue(houses.holds(), "it was let go of");
            }
        }
    }

    @Test
    void manyWhoWantBothFoldersGetThemOneAfterTheOther() throws Exception {
        Path lot = Files.createDirectory(folder.resolve("lots")).resolve("a.json");
        Path house = Files.createDirectory(folder.resolve("houses")).resolve("b.json");
        AtomicInteger inside = new AtomicInteger();
        AtomicInteger done = new AtomicInteger();
        List<CompletableFuture<Void>> all = java.util.stream.IntStream.range(0, 8)
                .mapToObj(i -> CompletableFuture.runAsync(() -> {
                    try (FolderLock lock = FolderLock.of(i % 2 == 0 ? List.of(lot, house) : List.of(house, lot))) {
                        assertEquals(1, inside.incrementAndGet());
                        assertTrue(lock.holds());
                        inside.decrementAndGet();
                        done.incrementAndGet();
                    } catch (StoreException busy) {
                        throw new AssertionError(busy);
                    }
                }))
                .toList();
        CompletableFuture.allOf(all.toArray(CompletableFuture[]::new)).get();
        assertEquals(8, done.get());
    }

    @Test
    void aFolderThatIsNotThereIsNamed() {
        StoreException refused = assertThrows(
                StoreException.class, () -> FolderLock.of(folder.resolve("none").resolve("a.json")));
        assertTrue(String.valueOf(refused.getMessage()).contains("make the folder first"));
    }
}
