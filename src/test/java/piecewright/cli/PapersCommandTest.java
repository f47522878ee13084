package piecewright.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import piecewright.chart.Parsed;

/** Papers of a batch that is kept: before it begins and under way. */
class PapersCommandTest {
    @TempDir
    private Path folder;

    @BeforeEach
    void planned() {
        Run.keepDemo(folder.resolve("b.json"));
    }

    private String file(String name) {
        return folder.resolve(name).toString();
    }

    private Run run(String command, String... words) {
        List<String> all = new ArrayList<>(List.of(command, file("b.json")));
        all.addAll(List.of(words));
        return Run.of(Run.NEVER, Run.NOW, all);
    }

    private String text(String name) throws IOException {
        return Files.readString(folder.resolve(name));
    }

    @Test
    void underWayDoneActsAreTickedAndWeighingsStandOverTheForecast() throws IOException {
        assertEquals(
                0, run("record", "--now", "2027-03-26T19:00", "soaked 18:55").code());
        assertEquals(
                0,
                run("record", "--now", "2027-03-27T10:00", "drained 6.7 kg 9:55")
                        .code());
        Run run = run("papers", "--now", "2027-03-27T10:05", "--sheet", file("s.html"), "--chart", file("c.svg"));
        assertEquals(0, run.code(), run.err());
        assertEquals("Bench sheet in " + file("s.html") + "\n\nPicture in " + file("c.svg") + "\n", run.out());
        Parsed sheet = Parsed.of(text("s.html"));
        assertEquals(
                2,
                sheet.all("article").stream()
                        .filter(act -> act.getAttribute("class").equals("act done"))
                        .count());
        assertTrue(text("c.svg").contains(">weighed<") && text("c.svg").contains(">before any reading<"));
        assertTrue(text("s.html").contains(">weighed<"), "the sheet carries the same picture");
    }

    @Test
    void beforeItBeginsTheSheetIsThatOfThePlan() throws IOException {
        Run run = run("papers", "--now", "2027-03-20T10:00", "--sheet", file("s.html"), "--chart", file("c.png"));
        assertEquals(0, run.code(), run.err());
        assertFalse(text("s.html").contains("act done"));
        byte[] png = Files.readAllBytes(folder.resolve("c.png"));
        assertEquals("PNG", new String(png, 1, 3, java.nio.charset.StandardCharsets.US_ASCII));
        assertEquals(
                0,
                run("papers", "--now", "2027-03-20T10:00", "--chart", file("c.png"))
                        .code(),
                "a picture of ours is replaced");
    }

    @Test
    void whatCannotBeDrawnOrReplacedIsRefused() throws IOException {
        Files.writeString(folder.resolve("mine.png"), "my picture");
        for (String[] wrong : List.of(
                new String[] {"papers"},
                new String[] {"papers", "--couch-chart", file("x.svg")},
                new String[] {"papers", "--chart", file("mine.png")},
                new String[] {"papers", "--chart", file("b.json")},
                new String[] {"papers", "--chart", file("b.json.journal.jsonl")})) {
            Run run = run(wrong[0], List.of(wrong).subList(1, wrong.length).toArray(String[]::new));
            assertEquals(2, run.code(), run.out());
            assertEquals(1, run.err().lines().count(), run.err());
        }
        assertEquals("my picture", text("mine.png"));
        assertFalse(Files.exists(folder.resolve("x.svg")));
    }
}
