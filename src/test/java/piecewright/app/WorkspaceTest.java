package piecewright.app;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import piecewright.app.Workspace.Origin;
import piecewright.store.SavedWindow;
import piecewright.store.StoreException;
import piecewright.text.ColourUnit;
import piecewright.text.UnitSystem;

class WorkspaceTest {
    @TempDir
    Path folder;

    private static final Path LOT = Path.of("demo-data/lots/winter-wheat.json");

    private Workspace open() throws StoreException {
        return Workspace.open(folder.resolve("ours"));
    }

    @Test
    void theFirstTimeThereIsADemoAndItIsMarked() throws StoreException {
        Workspace workspace = open();
        assertTrue(workspace.hasDemo());
        assertFalse(workspace.contents().lots().isEmpty());
        assertTrue(workspace.contents().lots().stream().allMatch(kept -> kept.origin() == Origin.DEMO));
        assertEquals(List.of(), workspace.contents().refusals());
    }

    @Test
    void theDemoGoesInOneCallAndDoesNotComeBackByItself() throws StoreException {
        open().removeDemo();
        Workspace again = open();
        assertFalse(again.hasDemo());
        assertEquals(List.of(), again.contents().lots());
    }

    @Test
    void whatSomebodyPutBesideTheDemoStays() throws Exception {
        Workspace workspace = open();
        Path own = workspace.folder().resolve("demo").resolve("lots").resolve("own.json");
        Files.copy(LOT, own);
        workspace.removeDemo();
        assertTrue(Files.exists(own));
    }

    @Test
    void aDroppedLotIsTakenOnceAndADroppedPictureIsRefusedWithAReason() throws Exception {
        Workspace workspace = open();
        Path taken = workspace.take(LOT);
        assertTrue(Files.exists(taken));
        assertEquals("lots", taken.getParent().getFileName().toString());
        StoreException twice = assertThrows(StoreException.class, () -> workspace.take(LOT));
        assertTrue(String.valueOf(twice.getMessage()).contains("there already"));
        StoreException page = assertThrows(StoreException.class, () -> workspace.take(Path.of("README.md")));
        assertTrue(String.valueOf(page.getMessage()).contains("no lot, no house"));
    }

    @Test
    void droppedTemperaturesAreLaidBesideTheHousesAndOtherTablesAreRefused() throws Exception {
        Workspace workspace = open();
        Path taken = workspace.take(Path.of("demo-data/houses/cool-garage-2027-03.csv"));
        assertEquals("houses", taken.getParent().getFileName().toString());
        Path other = folder.resolve("prices.csv");
        Files.writeString(other, "sack;price\n25;38.50\n");
        StoreException refused = assertThrows(StoreException.class, () -> workspace.take(other));
        assertTrue(String.valueOf(refused.getMessage()).contains("prices.csv"));
    }

    @Test
    void aBrokenFileIsNamedAndTheOthersAreRead() throws Exception {
        Workspace workspace = open();
        Files.writeString(workspace.folder().resolve("lots").resolve("broken.json"), "{");
        assertEquals(1, workspace.contents().refusals().size());
        assertTrue(workspace.contents().refusals().get(0).contains("broken.json"));
        assertFalse(workspace.contents().lots().isEmpty());
    }

    @Test
    void aChangeFromOutsideChangesTheStamp() throws Exception {
        Workspace workspace = open();
        long before = workspace.stamp();
        assertEquals(before, workspace.stamp());
        Files.copy(LOT, workspace.folder().resolve("lots").resolve("new.json"));
        assertNotEquals(before, workspace.stamp());
    }

    @Test
    void theWindowIsRememberedWhole() throws StoreException {
        Workspace workspace = open();
        assertEquals(Optional.empty(), workspace.window());
        SavedWindow left = new SavedWindow(
                "dark",
                150,
                UnitSystem.US,
                ColourUnit.SRM,
                Optional.of(new SavedWindow.SavedWish(
                        "pale", 4.5, OptionalDouble.of(3.5), LocalDate.of(2031, 5, 1), "a/b.json", "c.json")),
                Optional.of(new SavedWindow.Frame(-20, 14.5, 1000, 700, false)),
                Optional.of("batches/spring.json"));
        workspace.keepWindow(left);
        assertEquals(Optional.of(left), open().window());
    }

    @Test
    void twoBatchesOfOneNameGetTwoFiles() throws Exception {
        Workspace workspace = open();
        Path first = workspace.newBatch("pale-2031-03-14");
        Files.writeString(first, "{}");
        assertNotEquals(first, workspace.newBatch("pale-2031-03-14"));
    }
}
