package piecewright.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import piecewright.app.CalendarManner;
import piecewright.app.CalendarReading;
import piecewright.app.LiveCalendar;
import piecewright.app.ReadWish;
import piecewright.app.Workspace;
import piecewright.journal.Report;
import piecewright.plan.DemoPlan;
import piecewright.plan.PlanResult;
import piecewright.store.BatchFile;
import piecewright.store.JournalFile;
import piecewright.store.JournalFile.Draft;
import piecewright.store.ManifestFile;
import piecewright.store.StoreException;
import piecewright.store.StyleLibrary;
import piecewright.text.DisplayUnits;

/** A workspace goes into one file and comes out elsewhere with all that its batches are made from. */
class PackTest {
    @TempDir
    Path folder;

    private static CalendarReading reading() throws StoreException {
        return new CalendarReading(StyleLibrary.builtIn(), Run.NOW);
    }

    private Path ours() {
        return folder.resolve("ours");
    }

    private Path theirs() {
        return folder.resolve("theirs");
    }

    private Path pack() {
        return folder.resolve("pack.zip");
    }

    private static Run run(Path workspace, String... words) {
        Stream<String> all = Stream.concat(Arrays.stream(words), Stream.of("--workspace", workspace.toString()));
        return Run.of(request -> new PlanResult.Planned(DemoPlan.plan()), Run.NOW, all.toList());
    }

    /** A batch made from a lot and a house that lie outside, beside the readings the house names. */
    private void keep() throws Exception {
        Workspace.open(ours());
        Path outside = Files.createDirectory(folder.resolve("outside"));
        for (String name :
                List.of("lots/two-row-barley.json", "houses/cool-garage.json", "houses/cool-garage-2027-03.csv")) {
            Path file = Path.of("demo-data", name);
            Files.copy(file, outside.resolve(file.getFileName()));
        }
        Files.writeString(outside.resolve("two-row-barley.learned.json"), "{\"format\":1,\"learned\":[]}");
        Run planned = run(
                ours(),
                "plan",
                "--style",
                "pale",
                "--malt",
                "4 kg",
                "--ready-by",
                "2027-05-01",
                "--into",
                "spring",
                "--lot",
                outside.resolve("two-row-barley.json").toString(),
                "--house",
                outside.resolve("cool-garage.json").toString());
        assertEquals(0, planned.code(), planned.err());
        Path spring = ours().resolve("batches/spring.json");
        JournalFile.append(
                JournalFile.beside(spring),
                Run.BATCH,
                before -> List.of(new Draft(Run.NOW, Run.NOW, Optional.empty(), new Report.Noted("bought the grain"))));
        LiveCalendar.with(
                        ours().resolve("batches/all.ics"),
                        List.of(spring),
                        CalendarManner.usual(DisplayUnits.metric()),
                        reading())
                .write();
    }

    private static void remove(Path root) throws IOException {
        try (Stream<Path> files = Files.walk(root)) {
            for (Path file : files.sorted(Comparator.reverseOrder()).toList()) Files.delete(file);
        }
    }

    @Test
    void itComesOutElsewhereWithAllItsBatchesAreMadeFrom() throws Exception {
        keep();
        Run before = run(ours(), "where", "spring", "--now", "2027-02-15T10:00");
        assertEquals(0, before.code(), before.err());
        Run packed = run(ours(), "pack", pack().toString());
        assertEquals(0, packed.code(), packed.err());
        assertEquals("", packed.err());
        remove(ours());
        remove(folder.resolve("outside"));
        Run unpacked = run(theirs(), "unpack", pack().toString());
        assertEquals(0, unpacked.code(), unpacked.err());
        assertEquals("", unpacked.err());
        Run after = run(theirs(), "where", "spring", "--now", "2027-02-15T10:00");
        assertEquals(before.out(), after.out(), after.err());
        assertEquals("", after.err());
        for (Path file : ReadWish.filesOf(theirs().resolve("batches/spring.json"))) {
            assertTrue(file.startsWith(theirs()) && Files.exists(file), file.toString());
        }
        Path lot = ReadWish.filesOf(theirs().resolve("batches/spring.json")).get(0);
        assertTrue(Files.exists(lot.resolveSibling("two-row-barley.learned.json")));
        assertTrue(LiveCalendar.refresh(theirs().resolve("batches/spring.json"), reading())
                .orElseThrow()
                .changes()
                .isEmpty());
        assertTrue(run(theirs(), "record", "spring").out().contains("bought the grain"));
    }

    @Test
    void theSameWorkspaceGivesTheSameFileAndIsNotTouched() throws Exception {
        keep();
        assertEquals(0, run(ours(), "pack", pack().toString()).code());
        Path again = folder.resolve("again.zip");
        assertEquals(0, run(ours(), "pack", again.toString()).code());
        assertEquals(-1, Files.mismatch(pack(), again));
        assertEquals(2, run(ours(), "pack", again.toString()).code());
        Run inside = run(ours(), "pack", ours().resolve("in.zip").toString());
        assertTrue(inside.err().contains("lies in the workspace"), inside.err());
    }

    /** A calendar that lay outside stays with the machine it was on. */
    @Test
    void aCalendarOutsideIsLeftAndSaid() throws Exception {
        keep();
        Path spring = ours().resolve("batches/spring.json");
        LiveCalendar.without(ours().resolve("batches/all.ics"), List.of(spring), reading())
                .write();
        LiveCalendar.with(
                        folder.resolve("out.ics"),
                        List.of(spring),
                        CalendarManner.usual(DisplayUnits.metric()),
                        reading())
                .write();
        run(ours(), "pack", pack().toString());
        Run unpacked = run(theirs(), "unpack", pack().toString());
        assertTrue(unpacked.err().contains("out.ics lay outside"), unpacked.err());
        assertTrue(LiveCalendar.refresh(theirs().resolve("batches/spring.json"), reading())
                .isEmpty());
    }

    @Test
    void nothingIsUnpackedFromWhatIsNoPackOrOverWhatIsThere() throws Exception {
        keep();
        run(ours(), "pack", pack().toString());
        byte[] whole = Files.readAllBytes(pack());
        Run over = run(ours(), "unpack", pack().toString());
        assertTrue(over.err().contains("is not empty"), over.err());
        for (int cut : new int[] {0, 10, whole.length / 3, whole.length / 2}) {
            Files.write(pack(), Arrays.copyOf(whole, cut));
            assertEquals(2, run(theirs(), "unpack", pack().toString()).code(), "cut at " + cut);
            assertFalse(Files.exists(theirs()), "cut at " + cut);
        }
    }

    @Test
    void noEntryLeavesTheFolder() throws Exception {
        for (String name :
                List.of("../evil.json", "/evil.json", "a/../../evil.json", ".piecewright.lock", "a\\..\\b")) {
            try (OutputStream file = Files.newOutputStream(pack());
                    ZipOutputStream zip = new ZipOutputStream(file)) {
                zip.putNextEntry(new ZipEntry(ManifestFile.ENTRY));
                zip.write(ManifestFile.write("/old", java.util.Map.of()).getBytes(StandardCharsets.UTF_8));
                zip.putNextEntry(new ZipEntry(name));
                zip.write(1);
            }
            Run run = run(theirs(), "unpack", pack().toString());
            assertEquals(2, run.code(), name);
            assertTrue(run.err().contains("outside the workspace"), run.err());
            assertFalse(Files.exists(theirs()), name);
        }
    }

    /** Packed on a system that writes paths otherwise. */
    @Test
    void pathsOfAnotherSystemAreLed() throws Exception {
        keep();
        Path spring = ours().resolve("batches/spring.json");
        var saved = BatchFile.read(spring);
        var wish = new java.util.HashMap<>(saved.request().wish());
        wish.put("lotFile", "C:\\Users\\b\\piecewright\\lots\\barley.json");
        var old = saved.request();
        BatchFile.write(
                spring,
                saved.withRequest(new piecewright.store.SavedBatch.RequestTexts(
                        old.styleKey(), old.lotText(), old.houseText(), wish)));
        try (OutputStream file = Files.newOutputStream(pack());
                ZipOutputStream zip = new ZipOutputStream(file)) {
            zip.putNextEntry(new ZipEntry(ManifestFile.ENTRY));
            zip.write(ManifestFile.write("C:\\Users\\b\\piecewright", java.util.Map.of())
                    .getBytes(StandardCharsets.UTF_8));
            zip.putNextEntry(new ZipEntry("batches/spring.json"));
            zip.write(Files.readAllBytes(spring));
        }
        Run run = run(theirs(), "unpack", pack().toString());
        assertEquals(0, run.code(), run.err());
        assertEquals(
                theirs().resolve("lots/barley.json").toAbsolutePath(),
                ReadWish.filesOf(theirs().resolve("batches/spring.json")).get(0));
    }
}
