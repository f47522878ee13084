package piecewright.cli;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import piecewright.calendar.IcsChecks;
import piecewright.calendar.PlanFixture;
import piecewright.calendar.WrittenEvent;
import piecewright.calendar.WrittenEvents;
import piecewright.plan.PlanResult;

/** Previews, files to import and files to watch, of one batch and of several; plans are made up. */
class CalendarCommandTest {
    private static final Instant LATER = Run.NOW.plus(Duration.ofHours(3));
    private static final PlanFixture USUAL = PlanFixture.usual();
    private static final PlanFixture LONGER = USUAL.withSoak(Duration.ofHours(11));
    private static final PlanFixture SHORTER = USUAL.withTurns(5);
    private static final PlanFixture NEXT_MONTH = USUAL.startingAt(USUAL.start().plus(Duration.ofDays(28)));

    @TempDir
    private Path folder;

    private Path file(String name) {
        return folder.resolve(name);
    }

    private Run plan(PlanFixture fixture, Instant now, String... more) {
        List<String> arguments = new ArrayList<>(
                Run.plan("pale", "two-row-barley", "cool-garage", "--malt", "4 kg", "--ready-by", "2027-05-01"));
        arguments.add("--skip-checks");
        arguments.addAll(List.of(more));
        return Run.of(request -> new PlanResult.Planned(fixture.plan()), now, arguments);
    }

    private void keep(String batch, PlanFixture fixture, Instant now) {
        Run run = plan(fixture, now, "--into", file(batch).toString());
        assertEquals(0, run.code(), run.err());
    }

    /** Kept under an identity of its own, which a second run of the made-up planner would not give. */
    private void keepAnother(String batch, PlanFixture fixture) throws IOException {
        keep(batch, fixture, Run.NOW);
        Path file = file(batch);
        Files.writeString(
                file, Files.readString(file).replace(Run.BATCH.toString(), "aaaaaaaa-bbbb-4ccc-8ddd-eeeeeeeeeeee"));
    }

    private Run calendar(Instant now, String... words) {
        List<String> arguments = new ArrayList<>(List.of("calendar"));
        for (String word : words) {
            boolean name = word.endsWith(".json") || word.endsWith(".ics");
            arguments.add(name ? file(word).toString() : word);
        }
        return Run.of(Run.NEVER, now, arguments);
    }

    private List<WrittenEvent> events(String name) throws IOException {
        byte[] octets = Files.readAllBytes(file(name));
        assertEquals(List.of(), new IcsChecks().faultsOf(octets));
        return WrittenEvents.in(octets).orElseThrow();
    }

    private static List<String> changes(Run run) {
        return run.out().lines().filter(line -> line.startsWith("  ")).toList();
    }

    private static long lines(Run run, String start) {
        return run.out().lines().filter(line -> line.startsWith("  " + start)).count();
    }

    @Test
    void aSecondExportSaysWhatMovedFromWhenToWhen() {
        String ics = file("a.ics").toString();
        Run first = plan(USUAL, Run.NOW, "--calendar", ics);
        assertTrue(first.out().endsWith(ics + ": 0 moved, 0 dropped, 17 new, 0 unchanged.\n"), first.out());
        Run second = plan(LONGER, LATER, "--calendar", ics);
        assertTrue(second.out().endsWith(ics + """
                : 3 moved, 0 dropped, 0 new, 14 unchanged.
                  lasts: Under water – Pale malt, Sat 29 Mar 20:00, until Sun 30 Mar 05:00 → Sun 30 Mar 08:00
                  moved: Drain 1 → 6.000 kg – Pale malt, Sun 30 Mar 05:00 → Sun 30 Mar 08:00
                  moved: Air rest – Pale malt, Sun 30 Mar 05:00 → Sun 30 Mar 08:00
                """), second.out());
    }

    @Test
    void aPreviewWritesNothing() throws IOException {
        String ics = file("a.ics").toString();
        plan(USUAL, Run.NOW, "--calendar", ics, "--into", file("b.json").toString());
        List<byte[]> before = contents();
        Run preview =
                plan(SHORTER, LATER, "--calendar", ics, "--into", file("b.json").toString(), "--preview");
        assertEquals(0, preview.code(), preview.err());
        assertTrue(preview.out().contains(ics + " would change: "), preview.out());
        assertEquals(1, lines(preview, "dropped: Turn 6 – Pale malt, "), preview.out());
        assertFalse(preview.out().contains("Batch kept"), preview.out());
        List<byte[]> after = contents();
        assertEquals(before.size(), after.size());
        for (int at = 0; at < before.size(); at++) assertArrayEquals(before.get(at), after.get(at));
    }

    private List<byte[]> contents() throws IOException {
        List<byte[]> all = new ArrayList<>();
        try (Stream<Path> files = Files.list(folder)) {
            for (Path file : files.sorted().toList()) all.add(Files.readAllBytes(file));
        }
        return all;
    }

    @Test
    void whatAPreviewSaysIsWhatTheWritingSays() throws IOException {
        keep("b.json", USUAL, Run.NOW);
        calendar(Run.NOW, "--batch", "b.json", "--file", "a.ics");
        Files.move(file("a.ics"), file("kept.ics")); // or the new plan would write it anew
        keep("b.json", LONGER, LATER);
        Files.move(file("kept.ics"), file("a.ics"));
        Run preview = calendar(LATER, "--batch", "b.json", "--file", "a.ics", "--preview");
        Run written = calendar(LATER, "--batch", "b.json", "--file", "a.ics");
        assertEquals(2, lines(preview, "moved: "), preview.out());
        assertEquals(changes(preview), changes(written));
        Run again = calendar(LATER, "--batch", "b.json", "--file", "a.ics", "--preview");
        assertTrue(again.out().contains("would stay as it is"), again.out());
    }

    @Test
    void aLiveFileFollowsEveryAcceptedPlan() throws IOException {
        keep("b.json", USUAL, Run.NOW);
        Run first = calendar(Run.NOW, "--batch", "b.json", "--live", "live.ics");
        assertEquals(0, first.code(), first.err());
        assertTrue(first.out().contains("Subscribe to this file"), first.out());
        Run replanned = plan(SHORTER, LATER, "--into", file("b.json").toString());
        assertEquals(1, lines(replanned, "dropped: Turn 6 – Pale malt, "), replanned.out());
        assertTrue(
                events("live.ics").stream().noneMatch(event -> event.key().equals("floor.turn-6")),
                "a watched file says nothing of what is no longer planned");
        String before = Files.readString(file("live.ics"));
        plan(SHORTER, LATER.plusSeconds(60), "--into", file("b.json").toString());
        assertEquals(before, Files.readString(file("live.ics")));
    }

    @Test
    void whatAnotherFileWasToldIsNewsToALiveFile() {
        keep("b.json", USUAL, Run.NOW);
        calendar(Run.NOW, "--batch", "b.json", "--file", "a.ics");
        Run live = calendar(LATER, "--batch", "b.json", "--live", "live.ics", "--preview");
        assertTrue(live.out().contains("0 moved, 0 dropped, 17 new, 0 unchanged"), live.out());
    }

    @Test
    void severalBatchesShareALiveFileAndOneOfThemCanBeTakenOut() throws IOException {
        keep("b.json", USUAL, Run.NOW);
        keepAnother("c.json", NEXT_MONTH);
        calendar(Run.NOW, "--batch", "b.json", "--live", "live.ics");
        Run both = calendar(Run.NOW, "--batch", "c.json", "--live", "live.ics");
        assertEquals(0, both.code(), both.err());
        assertEquals(34, events("live.ics").size());
        assertTrue(Files.readString(file("live.ics")).contains("X-WR-CALNAME:Malting\r\n"));
        keep("b.json", SHORTER, LATER);
        assertEquals(33, events("live.ics").size(), "the other batch stays");
        Run out = calendar(LATER, "--batch", "c.json", "--live", "live.ics", "--take-out");
        assertTrue(out.out().contains(": 0 moved, 17 dropped, 0 new, 16 unchanged."), out.out());
        assertEquals(16, events("live.ics").size());
        assertFalse(Files.exists(file("c.json.live.json")));
        calendar(LATER, "--batch", "b.json", "--live", "live.ics", "--take-out");
        assertFalse(Files.exists(file("live.ics")), "a calendar must not be empty");
        keep("b.json", USUAL, LATER);
        assertFalse(Files.exists(file("live.ics")));
    }

    @Test
    void aBatchThatIsGoneIsLeftOutAndSaid() throws IOException {
        keep("b.json", USUAL, Run.NOW);
        keepAnother("c.json", NEXT_MONTH);
        calendar(Run.NOW, "--batch", "b.json", "--batch", "c.json", "--live", "live.ics");
        Files.delete(file("c.json"));
        Run run = plan(USUAL, LATER, "--into", file("b.json").toString());
        assertTrue(run.out().replace("\n  ", " ").contains("c.json is no longer there"), run.out());
        assertEquals(17, events("live.ics").size());
    }

    @Test
    void allBatchesGoIntoOneFileWithTheirOwnNamesAndOneCategory() throws IOException {
        keep("b.json", USUAL, Run.NOW);
        keepAnother("c.json", NEXT_MONTH);
        Run run = calendar(Run.NOW, "--batch", "b.json", "--batch", "c.json", "--file", "all.ics");
        assertEquals(0, run.code(), run.err());
        assertEquals(
                34, events("all.ics").stream().map(WrittenEvent::uid).distinct().count());
        List<String> categories = Files.readString(file("all.ics"))
                .lines()
                .filter(line -> line.startsWith("CATEGORIES"))
                .distinct()
                .toList();
        assertEquals(List.of("CATEGORIES:Malting"), categories);
        assertEquals(
                List.of(
                        "darkseagreen",
                        "firebrick",
                        "lightcoral",
                        "lightsteelblue",
                        "peru",
                        "seagreen",
                        "steelblue",
                        "tan"),
                Files.readString(file("all.ics"))
                        .lines()
                        .filter(line -> line.startsWith("COLOR:"))
                        .map(line -> line.substring(6))
                        .distinct()
                        .sorted()
                        .toList());
        Run alone = calendar(LATER, "--batch", "b.json", "--file", "all.ics");
        assertEquals(2, alone.code(), "entries of the other batch would be lost");
        assertEquals(34, events("all.ics").size());
    }

    @Test
    void phasesAlarmsAndQuietHoursAreThePersonsChoice() throws IOException {
        keep("b.json", USUAL, Run.NOW);
        calendar(
                Run.NOW,
                "--batch",
                "b.json",
                "--file",
                "a.ics",
                "--no-phases",
                "--alarm",
                "45",
                "--alarm",
                "10",
                "--quiet",
                "00:00-05:30");
        String text = Files.readString(file("a.ics"));
        assertEquals(12, events("a.ics").size());
        assertFalse(text.contains("TRANSP:TRANSPARENT"));
        assertTrue(text.contains("TRIGGER:-PT45M") && text.contains("TRIGGER:-PT10M"), text);
        calendar(LATER, "--batch", "b.json", "--file", "a.ics", "--no-phases", "--alarm", "none");
        assertFalse(Files.readString(file("a.ics")).contains("BEGIN:VALARM"));
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            --batch b.json                                          | --file: or --live or --collection must be given
            --batch b.json --file a.ics --live l.ics                | --file: or --live or --collection must be given
            --file a.ics                                            | --batch: is missing
            --batch no.json --file a.ics                            | no.json
            --batch b.json --batch b.json --file a.ics              | is the same batch as one named before
            --batch b.json --file a.ics --alarm soon                | --alarm: must be whole minutes
            --batch b.json --file a.ics --alarm 5 --alarm 5         | --alarm: stands there twice alike
            --batch b.json --file a.ics --quiet 22:00-22:00         | --quiet:
            --batch b.json --file a.ics --quiet late                | --quiet:
            --batch b.json --file a.ics --take-out                  | --take-out: needs --live or --collection
            --batch b.json --live l.ics --take-out                  | is no live calendar of ours
            --batch b.json --collection http://calendar.example.org/x/ --user me | --collection: must begin with https://
            --batch b.json --collection https://me:pw@calendar.example.org/x/    | --collection: must not hold name or password
            --batch b.json --collection calendar                    | --collection: is no address
            --batch b.json --collection https://calendar.example.org/x/          | --user: is missing
            --batch b.json --collection https://calendar.example.org/x/ --user me | --password-env: is missing
            """)
    void whatIsWrongIsSaidBeforeAnythingIsWritten(String words, String said) throws IOException {
        keep("b.json", USUAL, Run.NOW);
        int files = contents().size();
        Run run = calendar(Run.NOW, words.split(" +"));
        assertEquals(2, run.code(), run.out());
        assertTrue(run.err().contains(said), run.err());
        assertEquals(1, run.err().lines().count());
        assertEquals(files, contents().size());
    }

    @Test
    void aLiveFileIsNotWrittenAsAFileToImport() {
        keep("b.json", USUAL, Run.NOW);
        calendar(Run.NOW, "--batch", "b.json", "--live", "live.ics");
        Run run = calendar(LATER, "--batch", "b.json", "--file", "live.ics");
        assertEquals(2, run.code());
        assertTrue(run.err().contains("is a live calendar"), run.err());
        Run elsewhere = calendar(LATER, "--batch", "b.json", "--live", "other.ics");
        assertEquals(2, elsewhere.code());
        assertTrue(elsewhere.err().contains("is shown by"), elsewhere.err());
    }

    @Test
    void aFileOfSomebodyElseIsNotMadeLive() throws IOException {
        keep("b.json", USUAL, Run.NOW);
        Files.writeString(file("live.ics"), "my diary\n");
        Run run = calendar(Run.NOW, "--batch", "b.json", "--live", "live.ics");
        assertEquals(2, run.code());
        assertEquals("my diary\n", Files.readString(file("live.ics")));
        assertFalse(Files.exists(file("b.json.live.json")));
    }
}
