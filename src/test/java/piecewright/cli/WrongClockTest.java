package piecewright.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.ObjectMapper;

/** Whatever the clock says or said, no command ends in an internal fault, and everything goes on once it is right again. */
class WrongClockTest {
    private static final OffsetDateTime LONG_AGO = OffsetDateTime.parse("1970-01-01T00:10:00Z");
    private static final List<String> LINES = List.of(
            "soaked",
            "drained",
            "turned",
            "bed 14 C",
            "7.1 kg",
            "loaded",
            "started curing",
            "off the kiln",
            "rootlets off",
            "4.1 kg",
            "4 EBC",
            "power out");

    @TempDir
    private Path folder;

    private Batchwork batch;
    private OffsetDateTime begun;

    @BeforeEach
    void plan() {
        batch = new Batchwork(folder.resolve("workspace"), "spring");
        String lot = copied("lots/two-row-barley.json");
        copied("houses/cool-garage-2027-03.csv");
        String house = copied("houses/cool-garage.json");
        batch.planned("--style", "pale", "--lot", lot, "--house", house, "--grain", "5 kg", "--start", "2027-03-27");
        begun = batch.act("steep-1.soak").at();
    }

    private String copied(String file) {
        Path copy = folder.resolve(Path.of(file).getFileName());
        try {
            Files.copy(Path.of("demo-data").resolve(file), copy);
        } catch (IOException failed) {
            throw new UncheckedIOException(failed);
        }
        return copy.toString();
    }

    private Run run(String command, OffsetDateTime now, String... words) {
        List<String> all = new ArrayList<>(List.of(command, "spring"));
        all.addAll(List.of(words));
        all.addAll(List.of(
                "--now",
                now.toString(),
                "--workspace",
                folder.resolve("workspace").toString()));
        Run run = Run.of(Run.REAL, Run.NOW, all);
        assertTrue(run.code() != 70 && !run.err().contains("Exception"), all + ": " + run.out() + run.err());
        return run;
    }

    /** Types a line and, when it is asked, takes the first offer. */
    private void types(OffsetDateTime now, String line) {
        String typed = line;
        for (int more = 0; more < 3; more++) {
            Run asked = run("record", now, typed, "--json");
            if (asked.code() == 0) return;
            JsonNode offers = new ObjectMapper().readTree(asked.out()).findPath("offers");
            if (offers.isEmpty()) return;
            typed = offers.get(0).get("line").stringValue();
        }
    }

    /** Every command answers: where it stands, what is to do, what was learned, and its papers and calendar. */
    private void everything(OffsetDateTime now) {
        answers("where", now);
        run("record", now);
        run("replan", now);
        run("replan", now, "--accept");
        String stands = answers("where", now);
        Path sheet = folder.resolve("sheet.html");
        answers(
                "papers",
                now,
                "--sheet",
                sheet.toString(),
                "--chart",
                folder.resolve("plan.svg").toString());
        String page = read(sheet);
        for (String step : List.of("Soak 1", "Drain 1", "Rub off the rootlets"))
            assertTrue(page.contains(step), step + " is missing at " + now);
        assertTrue(read(folder.resolve("plan.svg")).contains("<svg"));
        String agenda = answers("agenda", now, "--days", "366");
        boolean done = stands.contains("All steps are done");
        boolean names = agenda.contains("Soak")
                || agenda.contains("Drain")
                || agenda.contains("kiln")
                || agenda.contains("Rub off");
        assertTrue(done || names, "the next step of " + stands + " is missing in " + agenda);
        run("learn", now, "--only-show");
        Run calendar = Run.of(
                Run.REAL,
                Run.NOW,
                List.of(
                        "calendar",
                        "--batch",
                        "spring",
                        "--file",
                        folder.resolve("c.ics").toString(),
                        "--workspace",
                        folder.resolve("workspace").toString()));
        assertEquals(0, calendar.code(), calendar.out() + calendar.err());
        assertTrue(read(folder.resolve("c.ics")).contains("BEGIN:VEVENT"));
        run("finish", now, "--weight", "4.1 kg");
    }

    private String answers(String command, OffsetDateTime now, String... words) {
        Run run = run(command, now, words);
        assertEquals(0, run.code(), command + " at " + now + ": " + run.out() + run.err());
        return run.out();
    }

    private static String read(Path file) {
        try {
            return Files.readString(file);
        } catch (IOException failed) {
            throw new UncheckedIOException(failed);
        }
    }

    private OffsetDateTime clock(String which) {
        return which.equals("ahead") ? begun.plusYears(5).plusDays(40) : LONG_AGO;
    }

    @ParameterizedTest
    @ValueSource(strings = {"ahead", "1970"})
    void nothingFailsInABatchThatWasNotBegun(String which) {
        everything(clock(which));
        everything(begun.minusDays(1));
    }

    /** A batch begun half a year after its plan counts as soon as the plan is new. */
    @Test
    void aBatchBegunMonthsLateCountsOnceItsPlanIsNew() {
        OffsetDateTime autumn = begun.plusDays(200);
        assertEquals(2, run("record", autumn, "soaked").code(), "asked first");
        String kept = run("record", autumn, "really soaked").out().replaceAll("\\s+", " ");
        assertTrue(kept.contains("plan the rest anew and keep that plan"), kept);
        answers("replan", autumn.plusMinutes(10), "--accept");
        JsonNode where = new ObjectMapper().readTree(answers("where", autumn.plusHours(1), "--json"));
        assertEquals(0, where.get("questions").size(), where.toString());
        assertEquals("steep-1.soak", where.get("done").get(0).get("act").stringValue(), where.toString());
    }

    /** Long after, what was not done is overdue; long before, the first step is named and the clock doubted. */
    @Test
    void theListOfAllBatchesSaysWhatIsOverdueAndWhatIsNext() {
        batch.didAllBefore("steep-2.soak");
        String late = answers("agenda", begun.plusDays(2));
        assertTrue(late.contains("Soak 2, overdue"), late);
        assertTrue(!late.contains("Drain 1"), "done: " + late);
        String ahead = answers("agenda", clock("ahead"));
        assertTrue(ahead.contains("Soak 2, overdue") && ahead.contains("Rub off the rootlets, overdue"), ahead);
        String ago = answers("agenda", LONG_AGO).replaceAll("\\s+", " ");
        assertTrue(ago.contains("The next step is “Soak 1”") && ago.contains("Is the clock right?"), ago);
    }

    @ParameterizedTest
    @ValueSource(strings = {"ahead", "1970"})
    void nothingFailsInTheSteepWhateverWasWrittenByThatClock(String which) {
        batch.didAllBefore("steep-2.soak");
        for (String line : LINES) types(clock(which), line);
        everything(clock(which));
        everything(batch.act("steep-2.soak").at());
    }

    @ParameterizedTest
    @ValueSource(strings = {"ahead", "1970"})
    void nothingFailsInMaltWhateverWasWrittenByThatClock(String which) {
        batch.didAllBefore("finish.deroot");
        for (String line : LINES) types(clock(which), line);
        everything(clock(which));
        everything(batch.act("finish.deroot").at().plusHours(3));
    }

    /** A step years after the plan's last, or before the batch, is never kept without a question. */
    @ParameterizedTest
    @ValueSource(strings = {"ahead", "1970"})
    void whatSuchAClockWritesIsAskedOrRefused(String which) {
        batch.didAllBefore("steep-2.soak");
        for (String line : LINES)
            assertEquals(2, run("record", clock(which), line).code(), line);
    }

    /** What was bought weeks before is noted without a question; a year before, the clock is asked about. */
    @Test
    void aNoteAYearBeforeTheBatchIsAskedAndKeptWhenMeant() {
        Run early = run("record", begun.minusDays(365), "note: bought the grain");
        assertEquals(2, early.code());
        assertTrue(early.out().contains("really note bought the grain"), early.out());
        assertEquals(
                0,
                run("record", begun.minusDays(365), "really note bought the grain")
                        .code());
        assertEquals(
                0, run("record", begun.minusDays(20), "note: emptied the tub").code());
        String kept = run("record", begun).out();
        assertTrue(kept.contains("note: bought the grain") && kept.contains("note: emptied the tub"), kept);
    }

    /** A first soak a week before the plan's is asked; a second one without a drain between too. */
    @Test
    void aSoakDaysEarlyIsAskedAndSoIsASecondOneUnderWater() {
        assertEquals(2, run("record", begun.minusDays(7), "soaked").code());
        assertEquals(0, run("record", begun.plusMinutes(5), "soaked").code());
        assertEquals(2, run("record", begun.plus(Duration.ofHours(5)), "soaked").code());
        assertEquals(
                2,
                run("record", begun.plus(Duration.ofHours(6)), "turned, bed 14 C")
                        .code());
    }
}
