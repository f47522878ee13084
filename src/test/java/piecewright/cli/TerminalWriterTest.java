package piecewright.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tools.jackson.databind.ObjectMapper;

/** Nothing that is written to a terminal drives it: sequences of ISO/IEC 6429, marks of the Unicode bidirectional algorithm. */
class TerminalWriterTest {
    private static final String RED = "\u001b[31m";
    private static final String LINK = "\u001b]8;;file:example\u0007here\u001b]8;;\u0007";
    private static final String TURNED = "\u202egro.elpmaxe\u202c";

    @TempDir
    Path folder;

    private static String written(String text) {
        StringWriter terminal = new StringWriter();
        new Surroundings.Streams(new PrintWriter(terminal), new PrintWriter(terminal))
                .out()
                .print(text);
        return terminal.toString();
    }

    @Test
    void whatDrivesATerminalComesOutAsItsCode() {
        assertEquals("\\u001b[31m", written(RED));
        assertEquals("\\u202egro.elpmaxe\\u202c", written(TURNED));
        assertEquals("\\u009b2J", written("\u009b2J"));
        assertEquals("safe\\u000dover", written("safe\rover"));
        assertEquals("a\r\nb\n\tc", written("a\r\nb\n\tc"));
        assertEquals("Gerstenmalz ü – 8 °C ☃ 𝄞", written("Gerstenmalz ü – 8 °C ☃ 𝄞"));
    }

    /** A document stays one, and says the same. */
    @Test
    void jsonKeepsWhatItSays() {
        String json = "{\"a\":\"" + TURNED + "\u007f\"}";
        assertEquals(
                TURNED + "\u007f",
                new ObjectMapper().readTree(written(json)).get("a").stringValue());
    }

    /** Notes, names of files, rejected words and lines, by way of the commands themselves. */
    @Test
    void noCommandLetsSequencesThrough() throws Exception {
        Path batch = folder.resolve("a" + RED + TURNED + ".json");
        Run.keepDemo(batch);
        Path broken = folder.resolve("b" + LINK + ".json");
        Files.writeString(broken, "{" + RED);
        List<List<String>> commands = List.of(
                List.of("record", batch.toString(), "note " + RED + LINK + TURNED),
                List.of("record", batch.toString(), "weighed " + LINK),
                List.of("where", batch.toString()),
                List.of("agenda", batch.toString(), broken.toString()),
                List.of("where", broken.toString()),
                List.of("agenda", "--days", RED),
                List.of(RED, LINK),
                List.of("plan", "--style", RED));
        for (List<String> command : commands) {
            List<String> all = new ArrayList<>(command);
            Run run = Run.of(Run.NEVER, Run.NOW, all);
            for (String text : List.of(run.out(), run.err())) {
                assertTrue(
                        text.chars().allMatch(letter -> letter == '\n' || !Character.isISOControl(letter)),
                        command + ": " + text);
                assertTrue(
                        text.chars().noneMatch(letter -> letter >= 0x202a && letter <= 0x202e), command + ": " + text);
            }
            assertTrue(!run.out().isEmpty() || !run.err().isEmpty(), command.toString());
        }
    }
}
