package piecewright.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A steep recorded line by line teaches the lot, and the next plan goes by it. */
class LearnCommandTest {
    @TempDir
    private Path folder;

    private Path batch = Path.of("");

    @BeforeEach
    void plannedInACopyOfTheDemo() throws IOException {
        Files.copy(Path.of("demo-data/lots/two-row-barley.json"), folder.resolve("barley.json"));
        Files.copy(Path.of("demo-data/houses/cool-garage.json"), folder.resolve("home.json"));
        Files.copy(Path.of("demo-data/houses/cool-garage-2027-03.csv"), folder.resolve("cool-garage-2027-03.csv"));
        batch = folder.resolve("spring.json");
        Run plan = Run.of(Run.REAL, Run.NOW, planning("--into", batch.toString()));
        assertEquals(0, plan.code(), plan.err());
    }

    private List<String> planning(String... more) {
        List<String> words = new ArrayList<>(List.of("plan", "--full", "--style", "pale", "--malt", "4 kg"));
        words.addAll(List.of(
                "--ready-by",
                "2027-05-01",
                "--lot",
                folder.resolve("barley.json").toString()));
        words.addAll(List.of("--house", folder.resolve("home.json").toString()));
        words.addAll(List.of(more));
        return words;
    }

    private Run run(String command, String... words) {
        List<String> all = new ArrayList<>(List.of(command, batch.toString()));
        all.addAll(List.of(words));
        return Run.of(Run.NEVER, Run.NOW, all);
    }

    private void record(String now, String line) {
        Run run = run("record", "--now", now, line);
        assertEquals(0, run.code(), run.out() + run.err());
    }

    /** An entry as an earlier version may have kept it: today it would be refused. */
    private void weighedByHand(String at, double grossKg) throws IOException {
        Path journal = batch.resolveSibling(batch.getFileName() + ".journal.jsonl");
        int number = Files.readAllLines(journal).size();
        String entry = "{\"number\":" + number + ",\"at\":\"" + at + "\",\"writtenAt\":\"" + at
                + "\",\"report\":{\"kind\":\"weighed\",\"grossKg\":" + grossKg + "}}\n";
        Files.writeString(journal, entry, StandardOpenOption.APPEND);
    }

    private void recordASteep() {
        record("2027-03-26T19:00", "soaked 18:50");
        record("2027-03-27T04:00", "drained 6.75 kg 03:00");
        record("2027-03-27T15:00", "soaked 14:00");
        record("2027-03-27T23:00", "drained 7.55 kg 22:00");
    }

    @Test
    void aBatchTeachesTheNextPlanOfItsLot() {
        assertEquals(1, run("learn", "--now", "2027-03-26T12:00").code(), "nothing was soaked yet");
        recordASteep();
        Run shown = run("learn", "--now", "2027-03-28T08:00", "--only-show");
        assertEquals(0, shown.code(), shown.err());
        assertTrue(shown.out().startsWith("two-row barley: this batch taught by 2 readings."), shown.out());
        assertTrue(Files.notExists(folder.resolve("barley.learned.json")));
        Run kept = run("learn", "--now", "2027-03-28T08:00");
        assertTrue(kept.out().contains("speed of drinking"), kept.out());
        assertTrue(kept.out().endsWith("the next plan goes by it.\n"), kept.out());
        Run known = Run.of(
                Run.NEVER, "learned", "--lot", folder.resolve("barley.json").toString());
        assertTrue(known.out().contains("learned from one batch, on 2027-03-28"), known.out());
        Run next = Run.of(Run.REAL, Run.NOW, planning());
        assertTrue(next.out().contains("Earlier batches of this lot taught the plan"), next.out());
    }

    /** Scenario S3 of the reference in small: a tub of 1.84 kg that nobody took off. */
    @Test
    void anUntaredTubIsQuestionedAndTeachesNothing() throws IOException {
        recordASteep();
        record("2027-03-28T19:00", "spread on the floor 7.5 kg");
        String before =
                row(run("learn", "--now", "2027-03-30T08:00", "--only-show").out());
        weighedByHand("2027-03-29T17:00:00Z", 9.34);
        Run run = run("learn", "--now", "2027-03-30T08:00", "--only-show");
        String flat = run.out().replaceAll("\\s+", " ");
        assertTrue(
                flat.contains("9.340 kg after 7.500 kg cannot be; grain out of the water does not get heavier"),
                run.out());
        assertTrue(
                flat.contains("Was a vessel weighed with it (1.840 kg too much)? It is left out until it is corrected"),
                run.out());
        assertEquals(before, row(run.out()));
        Run json = run("learn", "--now", "2027-03-30T08:00", "--only-show", "--json");
        assertTrue(json.out().contains("\"question\" : "), json.out());
        assertFalse(json.out().contains("NaN"), json.out());
    }

    private static String row(String page) {
        return page.lines()
                .filter(line -> line.contains("speed of drinking"))
                .findFirst()
                .orElseThrow();
    }
}
