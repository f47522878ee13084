package piecewright.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import piecewright.app.CalendarManner;
import piecewright.app.CalendarUpdate;
import piecewright.app.LiveCalendar;
import piecewright.app.OtherBatches;
import piecewright.app.Workspace;
import piecewright.store.HouseFile;
import piecewright.store.StoreException;
import piecewright.store.StyleLibrary;
import piecewright.text.ColourUnit;
import piecewright.text.DisplayUnits;
import piecewright.text.UnitSystem;

/** One file that cannot be read keeps no other from being used: it is named, with what to do about it. */
class UnreadableFilesTest {
    private static final Instant NOW = Instant.parse("2027-02-15T10:00:00Z");
    private static final CalendarManner MANNER =
            CalendarManner.usual(new DisplayUnits(UnitSystem.METRIC, ColourUnit.EBC, Locale.ENGLISH));

    @TempDir
    Path folder;

    private Workspace workspace;

    @BeforeEach
    void open() throws StoreException {
        workspace = Workspace.open(folder.resolve("ours"));
        Run.keepDemo(batch("spring"));
    }

    private Path batch(String name) {
        return workspace.batches().resolve(name + ".json");
    }

    private Run agenda(String... more) {
        List<String> all = new java.util.ArrayList<>(List.of("agenda", "--days", "366", "--now", "2027-02-15T10:00"));
        all.addAll(List.of("--workspace", workspace.folder().toString()));
        all.addAll(List.of(more));
        return Run.of(Run.NEVER, NOW, all);
    }

    /** The calendar of all batches lies among them, and so do its list and its ledgers. */
    @Test
    void whatBelongsToACalendarIsNoBatch() throws Exception {
        LiveCalendar.with(workspace.batches().resolve("all-pieces.ics"), workspace.batchFiles(), MANNER, reading())
                .write();
        assertTrue(Files.exists(workspace.batches().resolve("all-pieces.ics.batches.json")));
        assertEquals(List.of(batch("spring")), workspace.batchFiles());
        Run run = agenda();
        assertEquals(0, run.code(), run.err());
        assertTrue(run.out().contains("Drain"), run.out());
    }

    /** A name somebody chose is no companion only because it ends like one. */
    @Test
    void aBatchMayBeCalledLive() throws IOException {
        Files.copy(batch("spring"), batch("winter.live"));
        assertTrue(workspace.batchFiles().contains(batch("winter.live")));
    }

    @Test
    void theAgendaNamesWhatItCannotReadAndSaysTheRest() throws IOException {
        Files.writeString(batch("autumn"), "{\"format\":2");
        Files.createDirectory(batch("a-folder"));
        Run page = agenda();
        assertEquals(0, page.code(), page.err());
        assertTrue(page.out().contains("Drain"), page.out());
        assertTrue(page.out().contains("autumn.json: line 1"), page.out());
        assertTrue(page.out().replaceAll("\\s+", " ").contains("a-folder.json: this is a folder"), page.out());
        Run named = agenda("spring", "autumn");
        assertEquals(2, named.code());
        assertTrue(named.out().contains("Drain"), named.out());
        Run json = agenda("--json");
        assertTrue(json.out().contains("\"unread\""), json.out());
    }

    @Test
    void theCalendarOfAllShowsTheOthersAndNamesTheOne() throws Exception {
        Files.writeString(batch("autumn"), "garbage");
        Path calendar = workspace.batches().resolve("all-pieces.ics");
        CalendarUpdate update = LiveCalendar.withReadable(calendar, workspace.batchFiles(), MANNER, reading())
                .write();
        assertTrue(Files.readString(calendar).contains("SUMMARY:Drain"));
        assertTrue(
                update.leftOut().get(0).contains("autumn.json"),
                update.leftOut().toString());
    }

    /** A batch that is shown already and can no longer be read does not hold up the accepted plans of the others. */
    @Test
    void aLiveCalendarGoesOnWithoutTheOneThatBroke() throws Exception {
        Path calendar = folder.resolve("all.ics");
        Path other = batch("autumn");
        Files.writeString(
                other,
                Files.readString(batch("spring"))
                        .replace(Run.BATCH.toString(), "6c0e86a1-6f1c-4b5e-9d5a-0a6c1d1c9b34"));
        LiveCalendar.with(calendar, List.of(batch("spring"), other), MANNER, reading())
                .write();
        Files.writeString(other, "garbage");
        CalendarUpdate update = LiveCalendar.refresh(batch("spring"), reading()).orElseThrow();
        assertTrue(
                update.leftOut().get(0).contains("autumn.json"),
                update.leftOut().toString());
        assertTrue(Files.readString(calendar).contains("SUMMARY:Drain"));
    }

    @Test
    void whatIsPlannedBesideOthersIsPlannedBesideThoseThatCanBeRead() throws Exception {
        Files.writeString(batch("autumn"), "garbage");
        var house = HouseFile.read(Path.of("demo-data/houses/cool-garage.json"));
        assertEquals(
                1,
                new OtherBatches(StyleLibrary.builtIn())
                        .takenHere(house, workspace.batchFiles())
                        .size());
    }

    @Test
    void aFolderThatIsAFileIsNamedAndTheRestIsUsed() throws Exception {
        Path lots = workspace.folder().resolve("demo/lots");
        for (Path file : Files.list(lots).toList()) Files.delete(file);
        Files.delete(lots);
        Files.writeString(lots, "no folder");
        assertFalse(workspace.contents().houses().isEmpty());
    }

    private static piecewright.app.CalendarReading reading() throws piecewright.store.StoreException {
        return new piecewright.app.CalendarReading(piecewright.store.StyleLibrary.builtIn(), NOW);
    }
}
