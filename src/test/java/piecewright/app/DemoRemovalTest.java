package piecewright.app;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.UUID;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import piecewright.store.BatchFile;
import piecewright.store.SavedBatch;
import piecewright.store.SavedBatch.RequestTexts;
import piecewright.store.StoreException;
import piecewright.store.StyleLibrary;

/** The demo goes in one step; what somebody's own batches are made from stays, and all of it can be put back. */
class DemoRemovalTest {
    private static final Path BATCH = Path.of("src/test/resources/store/batch-format-1.json");

    @TempDir
    Path folder;

    private Workspace workspace;

    @BeforeEach
    void open() throws StoreException {
        workspace = Workspace.open(folder.resolve("ours"));
    }

    /** A kept batch that was made from the demo's barley in the demo's garage. */
    private Path own() throws StoreException, IOException {
        SavedBatch some = BatchFile.read(BATCH);
        Workspace.DemoFiles demo = workspace.demoFiles();
        Map<String, String> wish = new HashMap<>(some.request().wish());
        wish.put("lotFile", demo.lot().toAbsolutePath().toString());
        wish.put("houseFile", demo.house().toAbsolutePath().toString());
        RequestTexts texts = new RequestTexts(
                some.request().styleKey(), Files.readString(demo.lot()), Files.readString(demo.house()), wish);
        Path own = workspace.newBatch("own");
        BatchFile.write(own, new SavedBatch(UUID.randomUUID(), texts, some.planJson(), some.calendarUids()));
        return own;
    }

    private Map<String, String> demo() throws IOException {
        Map<String, String> demo = new TreeMap<>();
        Path root = workspace.folder().resolve("demo");
        if (!Files.exists(root)) return demo;
        try (Stream<Path> files = Files.walk(root)) {
            for (Path file : files.filter(Files::isRegularFile).toList()) {
                boolean lock = file.endsWith(".piecewright.lock");
                if (!lock) demo.put(root.relativize(file).toString(), Files.readString(file));
            }
        }
        return demo;
    }

    @Test
    void whatKeptBatchesAreMadeFromStaysWithItsReadings() throws Exception {
        Path own = own();
        List<Path> stays = workspace.removeDemo();
        Workspace.DemoFiles demo = workspace.demoFiles();
        assertEquals(List.of(demo.lot(), demo.house()), stays);
        assertEquals(
                List.of("houses/cool-garage-2027-03.csv", "houses/cool-garage.json", "lots/two-row-barley.json"),
                List.copyOf(demo().keySet()));
        ReadWish.of(own, BatchFile.read(own), StyleLibrary.builtIn());
    }

    @Test
    void whereABatchCannotBeReadEveryLotAndHouseStays() throws Exception {
        Files.writeString(workspace.newBatch("own"), "{");
        workspace.removeDemo();
        assertEquals(8, demo().size());
    }

    @Test
    void allOfItComesBackAsItWas() throws Exception {
        Path piece = workspace.demoBatch();
        Files.writeString(piece, "a piece");
        Files.writeString(piece.resolveSibling("pale-malt.json.journal.jsonl"), "what somebody wrote down");
        Files.writeString(piece.resolveSibling(".pale-malt.json.copy"), "a piece");
        Files.writeString(workspace.demoFiles().lot().resolveSibling("two-row-barley.learned.json"), "learned");
        Map<String, String> before = demo();
        workspace.removeDemo();
        assertFalse(workspace.hasDemo());
        assertTrue(workspace.canRestoreDemo());
        workspace.restoreDemo();
        assertEquals(before, demo());
        assertFalse(workspace.canRestoreDemo());
    }

    @Test
    void puttingBackDoesNotWriteOverWhatCameSince() throws Exception {
        workspace.removeDemo();
        workspace.addDemo();
        Files.writeString(workspace.demoFiles().lot(), "changed since");
        workspace.restoreDemo();
        assertEquals("changed since", Files.readString(workspace.demoFiles().lot()));
    }
}
