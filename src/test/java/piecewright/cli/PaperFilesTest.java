package piecewright.cli;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import piecewright.chart.Parsed;
import piecewright.plan.DemoPlan;
import piecewright.plan.Obstacle;
import piecewright.plan.PlanRequest;
import piecewright.plan.PlanResult;

/** The bench sheet and the picture as files. */
class PaperFilesTest {
    private static final Function<PlanRequest, PlanResult> DEMO = request -> new PlanResult.Planned(DemoPlan.plan());

    @TempDir
    private Path folder;

    private static Run run(Function<PlanRequest, PlanResult> planner, String... more) {
        List<String> arguments = new ArrayList<>(
                Run.plan("pale", "two-row-barley", "cool-garage", "--malt", "4 kg", "--ready-by", "2027-05-01"));
        arguments.addAll(List.of(more));
        return Run.of(planner, Run.NOW, arguments);
    }

    private String file(String name) {
        return folder.resolve(name).toString();
    }

    private List<String> names() throws IOException {
        try (Stream<Path> files = Files.list(folder)) {
            return files.map(each -> each.getFileName().toString()).sorted().toList();
        }
    }

    @Test
    void bothAreWrittenAndWrittenAnewWithTheSameBytes() throws IOException {
        Run first = run(DEMO, "--sheet", file("s.html"), "--chart", file("c.svg"));
        assertEquals(0, first.code(), first.err());
        assertTrue(first.out().contains("Bench sheet in ") && first.out().contains("Picture in "), first.out());
        assertEquals(List.of("c.svg", "s.html"), names());
        Parsed.of(Files.readString(folder.resolve("c.svg")));
        byte[] sheet = Files.readAllBytes(folder.resolve("s.html"));
        assertEquals(
                0,
                run(DEMO, "--sheet", file("s.html"), "--chart", file("c.svg")).code());
        assertArrayEquals(sheet, Files.readAllBytes(folder.resolve("s.html")));
    }

    @ParameterizedTest
    @ValueSource(strings = {"--sheet", "--chart"})
    void aFileThatIsNotOursIsLeftAlone(String option) throws IOException {
        Files.writeString(folder.resolve("mine"), "my notes");
        Run run = run(Run.NEVER, option, file("mine"));
        assertEquals(2, run.code());
        assertTrue(run.err().contains("was not made here; name another file"), run.err());
        assertEquals("my notes", Files.readString(folder.resolve("mine")));
    }

    @ParameterizedTest
    @ValueSource(strings = {"--sheet", "--chart"})
    void aFolderThatIsMissingIsToldBeforeAnythingIsPlanned(String option) {
        Run run = run(Run.NEVER, option, file("nowhere/x"));
        assertEquals(3, run.code());
        assertTrue(run.err().contains("make the folder first"), run.err());
    }

    @Test
    void noFileIsNamedTwice() {
        String lot = Path.of("demo-data", "lots", "two-row-barley.json").toString();
        for (String[] twice : List.of(
                new String[] {"--sheet", lot},
                new String[] {"--sheet", file("x"), "--chart", file("x")},
                new String[] {"--chart", file("x"), "--calendar", file("x")},
                new String[] {"--sheet", file("x"), "--into", file("x")})) {
            Run run = run(Run.NEVER, twice);
            assertEquals(2, run.code(), run.out());
            assertTrue(run.err().contains("is named by another option too"), run.err());
        }
    }

    @Test
    void theColourCommandDrawsTheStylesItNames() throws IOException {
        Run run = Run.of(Run.NEVER, "colour", "--target", "5 EBC", "--chart", file("c.svg"));
        assertEquals(0, run.code(), run.err());
        Parsed parsed = Parsed.of(Files.readString(folder.resolve("c.svg")));
        assertTrue(parsed.all("text").stream()
                .anyMatch(text -> text.getTextContent().equals("Pale ale malt")));
        assertEquals(
                0,
                Run.of(Run.NEVER, "colour", "--target", "5 EBC", "--chart", file("c.png"))
                        .code());
        assertTrue(Files.size(folder.resolve("c.png")) > 20_000);
        Files.writeString(folder.resolve("mine"), "my notes");
        assertEquals(
                2,
                Run.of(Run.NEVER, "colour", "--target", "5 EBC", "--chart", file("mine"))
                        .code());
        assertEquals("my notes", Files.readString(folder.resolve("mine")));
    }

    @Test
    void withoutAPlanNothingIsWritten() throws IOException {
        Run run = run(
                request -> new PlanResult.NotPossible(List.of(new Obstacle.TreatedSeed("lot"))),
                "--sheet",
                file("s.html"));
        assertEquals(1, run.code());
        assertEquals(List.of(), names());
    }
}
