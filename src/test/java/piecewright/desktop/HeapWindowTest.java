package piecewright.desktop;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What a window with ten pieces holds in memory, after everything that can be let go was let go. */
@Tag("window")
class HeapWindowTest {
    private static final long MOST_MB = 200;

    @TempDir
    Path folder;

    @Test
    void tenPiecesAreOpenInAtMostTwoHundredMegabytes() throws Exception {
        Path ours = folder.resolve("ours");
        long before = usedMb();
        try (Screen screen = Screen.open(ours, 1280, 800)) {
            screen.until(() -> screen.scene().lookup("#piece-0") != null);
            Path demo = ours.resolve("demo/batches");
            for (int copy = 1; copy < 10; copy++) copied(demo, ours.resolve("batches"), copy);
            screen.until(() -> screen.scene().lookup("#piece-9") != null);
            for (String way : new String[] {"plan", "colour", "grain", "house", "learned"}) screen.go(way);
            screen.settle();
            long usedMb = usedMb() - before;
            Files.writeString(Files.createDirectories(Path.of("target")).resolve("heap.txt"), usedMb + " MB\n");
            assertTrue(usedMb <= MOST_MB, usedMb + " MB");
        }
    }

    /** Other windows of the same run may not have been let go yet. */
    private static long usedMb() {
        System.gc();
        Runtime runtime = Runtime.getRuntime();
        return (runtime.totalMemory() - runtime.freeMemory()) >> 20;
    }

    /** The same piece under another identity and name. */
    private static void copied(Path from, Path to, int number) throws Exception {
        Files.createDirectories(to);
        String batch = Files.readString(from.resolve("pale-malt.json"));
        String id = batch.replaceAll("(?s).*?\"batch\" : \"([0-9a-f-]{36})\".*", "$1");
        String other = String.format("00000000-0000-4000-8000-%012d", 100 + number);
        for (String file : List.of("pale-malt.json.journal.jsonl", "pale-malt.json")) {
            String text = Files.readString(from.resolve(file)).replace(id, other);
            Files.writeString(to.resolve(file.replace("pale-malt", "copy-" + number)), text);
        }
    }
}
