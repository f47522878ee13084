package piecewright.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.ObjectMapper;

/** Malt that comes off the kiln too wet to keep: said at the act, wherever one looks, and asked before it is closed. */
class WetMaltTest {
    @TempDir
    private Path folder;

    private Batchwork batch;
    private OffsetDateTime loaded;

    @BeforeEach
    void load() {
        batch = new Batchwork(folder.resolve("workspace"), "spring");
        String lot = batch.file("s2-barley");
        batch.planned(
                "--style",
                "pale",
                "--lot",
                lot,
                "--house",
                batch.file("s2-flat"),
                "--grain",
                "4 kg",
                "--bed",
                "3 cm",
                "--start",
                "2026-10-01",
                "--today",
                "2026-09-20");
        batch.didAllBefore("kiln.load");
        batch.did(batch.act("kiln.load"));
        loaded = batch.act("kiln.load").at();
    }

    private Run run(String command, OffsetDateTime now, String... words) {
        List<String> all = new ArrayList<>(List.of(command, "spring"));
        all.addAll(List.of(words));
        all.addAll(List.of(
                "--now",
                now.toString(),
                "--workspace",
                folder.resolve("workspace").toString()));
        return Run.of(Run.REAL, Run.NOW, all);
    }

    private static String flat(String page) {
        return page.replaceAll("\\s+", " ");
    }

    private String strike(String said) {
        return said.replaceFirst("(?s).*“(strike [0-9 ]+)”.*", "$1");
    }

    @Test
    void itIsSaidAtTheActAndWhereverOneLooks() {
        OffsetDateTime off = loaded.plus(Duration.ofMinutes(225));
        String said = flat(batch.said("record", off, "off the kiln"));
        assertTrue(said.contains("still wet and spoils within hours"), said);
        assertTrue(said.contains("Put it back into the kiln now, at 50 °C"), "the first rung of the style: " + said);
        String where = flat(batch.said("where", off));
        assertTrue(where.contains("still wet and spoils within hours"), where);
        assertFalse(where.contains("Next:"), "roots are not rubbed off wet malt: " + where);
        assertFalse(where.contains("smell it first"), where);
        assertTrue(flat(batch.said("where", off.plusDays(2))).contains("smell it first"), "it has lain for two days");
        assertTrue(flat(batch.said("where", off, "--units", "us")).contains("now, at 122 °F"), "a dial in °F");
        JsonNode wet = batch.json("where", off).get("wetMalt");
        assertTrue(wet.get("moistureWetBasisFraction").doubleValue() > 0.25, wet.toString());
        assertTrue(flat(batch.said("replan", off)).contains("too wet to keep"), "a re-plan says so too");
        assertEquals(said.contains(strike(said)), where.contains(strike(said)));
    }

    @Test
    void itGoesOnDryingOnceTheTakingOffIsStruck() {
        OffsetDateTime off = loaded.plus(Duration.ofMinutes(225));
        String line = strike(batch.said("record", off, "off the kiln"));
        for (String back : List.of("back in the kiln", "loaded", "loaded 5.1 kg")) {
            JsonNode asked = new ObjectMapper()
                    .readTree(run("record", off.plusMinutes(15), back, "--json").out());
            assertEquals(line, asked.get("offers").get(0).get("line").stringValue(), back + asked);
        }
        batch.said("record", off.plusMinutes(15), line);
        String where = flat(batch.said("where", off.plusMinutes(15)));
        assertFalse(where.contains("off the kiln at"), where);
        assertTrue(where.contains("Next: “Start curing”"), where);
    }

    @Test
    void itIsAskedBeforeItIsClosed() throws Exception {
        OffsetDateTime off = loaded.plus(Duration.ofMinutes(225));
        batch.said("record", off, "off the kiln");
        String journal = Files.readString(folder.resolve("workspace/batches/spring.json.journal.jsonl"));
        for (String[] weight : new String[][] {{}, {"--weight", "4.7 kg"}}) {
            Run run = run("finish", off.plusHours(1), weight);
            assertEquals(1, run.code(), run.out());
            assertTrue(flat(run.out()).contains("still wet and spoils"), run.out());
            assertTrue(run.out().contains("--anyway"), run.out());
        }
        assertEquals(journal, Files.readString(folder.resolve("workspace/batches/spring.json.journal.jsonl")));
        String closed = batch.said("finish", off.plusHours(1), "--weight", "4.7 kg", "--anyway");
        assertTrue(closed.contains("FINISHED"), closed);
    }

    @Test
    void whoeverSitsThereIsAskedAndYesClosesIt() {
        OffsetDateTime off = loaded.plus(Duration.ofMinutes(225));
        batch.said("record", off, "off the kiln");
        List<String> finish = List.of(
                "finish",
                "spring",
                "--weight",
                "4.7 kg",
                "--now",
                off.plusHours(1).toString(),
                "--workspace",
                folder.resolve("workspace").toString());
        for (String no : List.of("", "no", "y yes")) {
            Run left = Run.answered(Run.NOW, no, finish);
            assertEquals(1, left.code(), no + ": " + left.out());
            assertFalse(left.out().contains("FINISHED"), left.out());
        }
        Run closed = Run.answered(Run.NOW, "yes", finish);
        assertEquals(0, closed.code(), closed.out());
        assertTrue(closed.out().contains("FINISHED"), closed.out());
    }

    /** An entry nobody made is struck by nobody: said in words, in an empty journal too. */
    @Test
    void anEntryThatIsNotThereIsSaidInWords() {
        for (String line : List.of("strike 77", "undo 77", "correct 77 6 kg", "delete entry 77")) {
            Run run = run("record", loaded.plusHours(1), line);
            assertEquals(2, run.code(), line + run.err());
            assertTrue(run.out().contains("There is no entry 77."), line + ": " + run.out());
        }
    }

    /** Where the scale says that it is dry the scale is right, and a weight no malt of it can have is refused first. */
    @Test
    void theScaleDecides() throws Exception {
        OffsetDateTime off = loaded.plus(Duration.ofMinutes(225));
        batch.said("record", off, "off the kiln");
        String journal = Files.readString(folder.resolve("workspace/batches/spring.json.journal.jsonl"));
        assertEquals(
                1,
                run("finish", off.plusHours(1), "--weight", "41 kg", "--anyway").code());
        assertEquals(journal, Files.readString(folder.resolve("workspace/batches/spring.json.journal.jsonl")));
        String closed = flat(batch.said("finish", off.plusHours(1), "--weight", "3.31 kg"));
        assertTrue(closed.contains("FINISHED"), closed);
        assertFalse(flat(batch.said("where", off.plusHours(1))).contains("still wet"), closed);
    }
}
