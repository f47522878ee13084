package piecewright.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Batches, lots and houses by their names. */
class WorkspaceNamesTest {
    @TempDir
    Path folder;

    private Path workspace() {
        return folder.resolve("ours");
    }

    private Run run(String... words) {
        List<String> all = new ArrayList<>(List.of(words));
        all.addAll(List.of("--workspace", workspace().toString()));
        return Run.of(Run.REAL, Run.NOW, all);
    }

    private void planned() {
        Run.of(Run.NEVER, "styles");
        Run first = run(
                "plan",
                "--full",
                "--style",
                "pale",
                "--lot",
                "demo-data/lots/two-row-barley.json",
                "--house",
                "demo-data/houses/cool-garage.json",
                "--malt",
                "4 kg",
                "--ready-by",
                "2027-05-01",
                "--into",
                "spring");
        assertEquals(0, first.code(), first.err());
    }

    @Test
    void aBatchIsKeptAndFoundByItsName() {
        planned();
        assertTrue(Files.exists(workspace().resolve("batches/spring.json")));
        Run recorded = run("record", "spring", "--now", "2027-03-25T22:00", "started 21:50");
        assertEquals("1. Thu 25 Mar 21:50: begun: Soak\n", recorded.out(), recorded.err());
        assertTrue(run("where", "spring", "--now", "2027-03-25T22:00").out().contains("Next: “Drain 1”"));
    }

    @Test
    void lotsAndHousesHaveNamesToo() {
        planned();
        Run judged = run("judge", "--lot", "treated-seed");
        assertTrue(judged.code() <= 1 && !judged.out().isEmpty(), judged.err());
        Run learned = run("learned", "--house", "cool-garage");
        assertEquals(0, learned.code(), learned.err());
    }

    @Test
    void aNameThatIsNotThereIsToldWithThoseThatAre() {
        Run none = run("where", "spring");
        assertEquals(2, none.code());
        assertTrue(none.err().contains("there is no batch named spring in this workspace; none is kept here yet"));
        assertFalse(Files.exists(workspace()), "asking makes nothing");
        planned();
        Run other = run("where", "sprung");
        assertTrue(other.err().contains("those here are spring."), other.err());
        assertTrue(other.err().contains("write its path, such as ./sprung.json"), other.err());
    }

    @Test
    void aDamagedBatchIsPutBackWithAPlainMessage() throws IOException {
        planned();
        Path file = workspace().resolve("batches/spring.json");
        Files.writeString(file, Files.readString(file).substring(0, 5000));
        Run where = run("where", "spring", "--now", "2027-03-20T19:00");
        assertEquals(0, where.code(), where.err());
        assertEquals(
                "piecewright: " + file
                        + " could no longer be read. It was put back as it was last kept; what lay there is now"
                        + " spring.json.damaged.\n",
                where.err());
        assertEquals("", run("where", "spring", "--now", "2027-03-20T19:00").err());
    }

    /** A window that shows a plan of yesterday must not put it over the one accepted in a terminal today. */
    @Test
    void aPlanMadeFromAnOlderBatchIsNotWrittenOverANewerOne() throws Exception {
        planned();
        Path file = workspace().resolve("batches/spring.json");
        run("record", "spring", "--now", "2027-03-26T23:00", "started 22:50");
        var library = piecewright.store.StyleLibrary.builtIn();
        var now = java.time.Instant.parse("2027-03-26T22:10:00Z");
        var window = piecewright.app.BatchAtHand.open(file, library, Run.GOING_ON);
        var stale = (piecewright.replan.ReplanResult.Replanned) window.replan(now);
        run("record", "spring", "--now", "2027-03-27T15:00", "drained 6.62 kg 14:40");
        assertEquals(
                0,
                run("replan", "spring", "--now", "2027-03-27T15:00", "--accept").code());
        String accepted = Files.readString(file);
        var manner = piecewright.app.CalendarManner.usual(new piecewright.text.DisplayUnits(
                piecewright.text.UnitSystem.METRIC, piecewright.text.ColourUnit.EBC, java.util.Locale.ENGLISH));
        var refused = org.junit.jupiter.api.Assertions.assertThrows(
                piecewright.app.NotWrittenException.class,
                () -> window.accept(stale, java.util.Optional.empty(), manner, now));
        assertTrue(String.valueOf(refused.getMessage()).contains("was changed by another window or terminal"));
        assertEquals(accepted, Files.readString(file));
    }
}
