package piecewright.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.time.LocalDateTime;
import java.time.OffsetDateTime;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** A batch of the cool garage driven from the terminal: recorded, asked where it stands, planned anew. */
class UnderWayTest {
    @TempDir
    Path folder;

    private Path batch;

    @BeforeEach
    void planned() {
        batch = folder.resolve("spring.json");
        Run.keepDemo(batch);
    }

    private Run run(String command, String... words) {
        List<String> all = new ArrayList<>(List.of(command, batch.toString()));
        all.addAll(List.of(words));
        return Run.of(Run.NEVER, Run.NOW, all);
    }

    private String said(String command, String... words) {
        Run run = run(command, words);
        assertEquals(0, run.code(), run.out() + run.err());
        return run.out();
    }

    @Test
    void aSteepThatRanLongIsRecordedReadBackAndPlannedAnew() throws IOException {
        LocalDateTime soak = at("steep-1.soak");
        LocalDateTime drain = at("steep-1.drain").plusHours(3);
        assertTrue(said("where", "--now", later(soak, -600)).contains("Next: “Soak 1” " + shown(soak)));
        assertEquals(
                "1. " + shown(soak) + ": begun: Soak\n",
                said("record", "--now", later(soak, 10), "started " + clock(soak)));
        assertEquals(
                "2. " + shown(drain) + ": done: Drain\n3. " + shown(drain) + ": the grain weighs 6.450 kg\n",
                kept(said("record", "--now", later(drain, 20), "drained 6.45 kg " + clock(drain))
                        .replaceAll(" \\+0[12]:00", "")));
        String where = said("where", "--now", later(drain, 20));
        assertTrue(
                where.matches("(?s).*Moisture 3[45]\\.\\d %, give or take 0\\.8 %; weight now 6\\.4[45]\\d kg\\..*"),
                where);
        String replan = said("replan", "--now", later(drain, 20));
        assertTrue(replan.contains("Nothing moves"), replan);
        assertTrue(replan.contains("The steep ran long."), replan);
    }

    /** What was read back, without the last entries. */
    private static String kept(String out) {
        return out.replaceFirst("(?s)Last entries:.*", "");
    }

    @Test
    void whatIsUnclearIsAskedAndNotKept() {
        said("record", "--now", "2027-03-27T18:10", "soaked 18:00");
        Run asked = run("record", "--now", "2027-03-28T10:00", "drained 02:30");
        assertEquals(2, asked.code());
        assertTrue(
                asked.out()
                        .startsWith(
                                "There was no 02:30 on Sun 28 Mar: the clocks went forward over it. Which is meant?\n"
                                        + "  1. Sun 28 Mar 01:30"),
                asked.out());
        assertFalse(said("record").contains("rain"), said("record"));
    }

    @Test
    void anAcceptedPlanStandsAndItsCalendarMovesOnlyWhatMoved() throws IOException {
        Path calendar = folder.resolve("spring.ics");
        said("record", "--now", later(at("steep-1.soak"), 10), "started " + clock(at("steep-1.soak")));
        said("record", "--now", later(at("steep-1.drain"), 10), "drained " + clock(at("steep-1.drain")));
        LocalDateTime soaked = at("steep-2.soak");
        said("record", "--now", later(soaked, 10), "soaked " + clock(soaked));
        String[] accept = {"--accept", "--calendar", calendar.toString()};
        assertEquals(0, run("replan", with(later(soaked, 10), accept)).code());
        String before = Files.readString(calendar);
        LocalDateTime drained = at("steep-3.soak").minusMinutes(30);
        said("record", "--now", later(drained, 10), "drained 7.3 kg " + clock(drained));
        String replan = said("replan", with(later(drained, 10), accept));
        assertTrue(replan.contains("“Soak 3”"), replan);
        String line = replan.replace('\n', ' ');
        assertTrue(line.contains("because of entry 4, " + shown(drained)), replan);
        String after = Files.readString(calendar);
        assertEquals(uids(before), uids(after), "the same entries");
        assertTrue(said("replan", "--now", later(drained, 10)).contains("Nothing moves"));
    }

    /** When an act of the kept plan stands, on the clock of the house. */
    private LocalDateTime at(String id) throws IOException {
        for (JsonNode act : new JsonMapper().readTree(batch.toFile()).at("/plan/plan/acts")) {
            if (act.get("id").asString().equals(id))
                return OffsetDateTime.parse(act.get("startsAt").asString()).toLocalDateTime();
        }
        throw new AssertionError(id);
    }

    private static String[] with(String now, String... more) {
        return Stream.concat(Stream.of("--now", now), Stream.of(more)).toArray(String[]::new);
    }

    private static String shown(LocalDateTime at) {
        return DateTimeFormatter.ofPattern("EEE d MMM HH:mm", Locale.ENGLISH).format(at);
    }

    private static String clock(LocalDateTime at) {
        return DateTimeFormatter.ofPattern("HH:mm").format(at);
    }

    private static String later(LocalDateTime at, int minutes) {
        return at.plusMinutes(minutes).toString();
    }

    private static List<String> uids(String ics) {
        return ics.lines().filter(line -> line.startsWith("UID:")).sorted().toList();
    }

    @Test
    void aCutOffLineIsToldAndNothingElseIsLost() throws IOException {
        said("record", "--now", "2027-03-26T19:00", "started 18:50");
        Path journal = folder.resolve("spring.json.journal.jsonl");
        Files.writeString(journal, "{\"number\":2,\"at\"", StandardOpenOption.APPEND);
        Run shown = run("record");
        assertEquals(0, shown.code());
        assertEquals("1. Fri 26 Mar 18:50: begun: Soak\n", shown.out());
        assertTrue(shown.err().contains("spring.json.journal.jsonl: line 3 cannot be read"), shown.err());
        assertTrue(said("record", "--now", "2027-03-27T12:00", "drained 11:40").startsWith("3. Sat 27 Mar 11:40"));
    }

    @Test
    void figuresAreReadAndWrittenInThePersonsUnits() {
        assertEquals(
                "1. Fri 26 Mar 18:50: begun: Soak\n",
                said("record", "--now", "2027-03-26T19:00", "--units", "us", "--locale", "en-US", "started 6:50 pm"));
        assertEquals(
                "2. Sat 27 Mar 11:40: done: Drain\n3. Sat 27 Mar 11:40: the grain weighs 14 lb 6 oz\n",
                kept(said(
                        "record",
                        "--now",
                        "2027-03-27T12:00",
                        "--units",
                        "us",
                        "--locale",
                        "en-US",
                        "drained 14 lb 6 oz 11:40 am")));
        assertEquals(
                "4. Sa. 27 März 12:00: 9,5 °C in the grain\n",
                kept(said("record", "--now", "2027-03-27T12:00", "--locale", "de-DE", "bed 9,5 C")
                        .replaceAll("Sa\\.? 27\\.? M", "Sa. 27 M")));
    }

    @Test
    void aWrongMomentOrFileIsRefusedWithItsMend() {
        assertEquals(2, run("where", "--now", "soon").code());
        assertEquals(2, run("where", "--now", "2027-10-31T02:30").code());
        assertEquals(2, run("replan", "--calendar", "x.ics").code());
        Run none = Run.of(Run.NEVER, "where", folder.resolve("none.json").toString());
        assertEquals(2, none.code());
        assertTrue(none.err().contains("there is no such file"), none.err());
    }
}
