package piecewright.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import piecewright.plan.DemoPlan;
import piecewright.plan.PlanResult;
import piecewright.text.PlainWords;

/** What every command prints of demo data, read as a newcomer does: no word of ours, no id, no sentence without end. */
class PlainPagesTest {
    private static final List<String> COMMANDS = List.of(
            "plan",
            "calendar",
            "agenda",
            "record",
            "where",
            "papers",
            "replan",
            "finish",
            "compare",
            "styles",
            "judge",
            "buy",
            "colour",
            "learn",
            "learned",
            "pack",
            "unpack",
            "window");

    @TempDir
    Path folder;

    private final List<String> faults = new ArrayList<>();

    private void read(String... arguments) {
        Run run = Run.of(request -> new PlanResult.Planned(DemoPlan.plan()), arguments);
        String said = run.out() + "\n\n" + run.err();
        PlainWords.banned(said).forEach(found -> faults.add(String.join(" ", arguments) + ": " + found));
        sentences(said).forEach(found -> faults.add(String.join(" ", arguments) + ": " + found));
    }

    /** Of a page only what is prose: tables and lists of figures have no sentences. */
    private static List<String> sentences(String page) {
        StringBuilder prose = new StringBuilder();
        for (String line : page.split("\n")) {
            boolean table = line.strip().matches(".*\\S {2,}\\S.*|Usage: .*|\\[.*|BATCH.*") || line.isBlank();
            prose.append(table ? "\n\n" : line + "\n");
        }
        return PlainWords.tooLongFilledIn(prose.toString());
    }

    @Test
    void helpIsPlain() {
        read();
        for (String command : COMMANDS) read(command, "--help");
        assertEquals(List.of(), faults);
    }

    /** "help plan" is what everybody tries first; shells complete what the program itself knows. */
    @Test
    void helpNamesACommandAndShellsCompleteAll() {
        assertEquals(
                Run.of(Run.NEVER, "plan", "--help").out(),
                Run.of(Run.NEVER, "help", "plan").out());
        String script = Run.of(Run.NEVER, "completion").out();
        for (String command : COMMANDS) assertTrue(script.contains("_piecewright_" + command), command);
        assertTrue(script.contains("--ready-by"), script);
    }

    @Test
    void pagesOfDemoDataArePlain() throws IOException {
        String lot = "demo-data/lots/two-row-barley.json";
        String house = "demo-data/houses/cool-garage.json";
        String batch = folder.resolve("spring.json").toString();
        String[] wish = {
            "plan",
            "--style",
            "pale",
            "--lot",
            lot,
            "--house",
            house,
            "--malt",
            "4 kg",
            "--ready-by",
            "2027-05-01",
            "--today",
            "2027-03-01"
        };
        read(wish);
        for (String more : List.of("--full", "--explain", "--sure")) read(with(wish, more));
        read(with(wish, "--units", "us", "--full"));
        Run.keepDemo(Path.of(batch));
        read("where", batch);
        read("agenda", "--batch", batch, "--days", "60", "--now", "2027-03-27T06:00");
        read("record", batch, "--now", "2027-03-27T09:00", "soaked");
        read("record", batch, "--now", "2027-03-27T21:20", "drained 6.4 kg");
        read("record", batch);
        read("where", batch, "--now", "2027-03-27T22:00");
        read("replan", batch, "--now", "2027-03-29T22:00");
        read("finish", batch, "--now", "2027-03-29T22:00");
        read("calendar", "--batch", batch, "--file", folder.resolve("all.ics").toString());
        read("calendar", "--batch", batch, "--live", folder.resolve("live.ics").toString(), "--preview");
        read("papers", batch, "--sheet", folder.resolve("s.html").toString());
        read("styles");
        for (Path one : Files.list(Path.of("demo-data/lots")).sorted().toList()) read("judge", "--lot", one.toString());
        read("buy", "--malt", "pale=5 kg", "--lot", lot, "--sack", "barley=25 kg@38.50");
        read("colour", "--target", "3 EBC", "--house", house);
        read("learned", lot);
        read("learn", batch, "--only-show");
        read("plan", "--style", "nothing");
        read("where", "no-such-batch");
        assertEquals(List.of(), faults);
    }

    private static String[] with(String[] arguments, String... more) {
        List<String> all = new ArrayList<>(List.of(arguments));
        all.addAll(List.of(more));
        return all.toArray(String[]::new);
    }
}
