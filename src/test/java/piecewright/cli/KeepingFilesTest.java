package piecewright.cli;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.Writer;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.Function;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import piecewright.calendar.ReadBack;
import piecewright.plan.PlanRequest;
import piecewright.plan.PlanResult;
import piecewright.store.BatchFile;
import piecewright.store.StoreException;
import piecewright.text.PlanSamples;

/** What happens to files: with a made-up plan, so that nothing has to be searched. */
class KeepingFilesTest {
    private static final Function<PlanRequest, PlanResult> SAMPLE =
            request -> new PlanResult.Planned(PlanSamples.plan());

    @TempDir
    private Path folder;

    private static Run run(Function<PlanRequest, PlanResult> planner, Instant now, String... more) {
        List<String> arguments = new ArrayList<>(
                Run.plan("pale", "two-row-barley", "cool-garage", "--malt", "4 kg", "--ready-by", "2027-05-01"));
        arguments.addAll(List.of(more));
        return Run.of(planner, now, arguments);
    }

    private static Run run(String... more) {
        return run(SAMPLE, Run.NOW, more);
    }

    private String file(String name) {
        return folder.resolve(name).toString();
    }

    private List<String> names() throws IOException {
        try (Stream<Path> files = Files.list(folder)) {
            return files.map(file -> file.getFileName().toString())
                    .filter(name -> !name.startsWith(".")) // copies and the lock
                    .sorted()
                    .toList();
        }
    }

    @Test
    void theLedgerLiesBesideTheCalendarOrBesideTheBatch() throws IOException {
        run("--calendar", file("a.ics"));
        assertEquals(List.of("a.ics", "a.ics.ledger.json"), names());
        Files.delete(folder.resolve("a.ics"));
        Files.delete(folder.resolve("a.ics.ledger.json"));
        run("--calendar", file("a.ics"), "--into", file("b.json"));
        assertEquals(List.of("a.ics", "b.json", "b.json.calendar.json", "b.json.ledger.json"), names());
    }

    @Test
    void aBatchKeptLaterTakesOverTheIdentityOfItsCalendar() throws IOException {
        run("--calendar", file("a.ics"));
        var before = ReadBack.byIcal4j(Files.readAllBytes(folder.resolve("a.ics")));
        Run later = run("--calendar", file("a.ics"), "--into", file("b.json"));
        assertEquals(0, later.code(), later.err());
        assertEquals(before, ReadBack.byIcal4j(Files.readAllBytes(folder.resolve("a.ics"))));
    }

    @Test
    void aBatchKeepsItsIdentityAndItsWish() throws StoreException {
        run("--into", file("b.json"));
        var first = BatchFile.read(folder.resolve("b.json"));
        run("--into", file("b.json"));
        assertEquals(first, BatchFile.read(folder.resolve("b.json")));
        assertEquals("4.0", first.request().wish().get("finishedMaltKg"));
        assertEquals("2027-05-01", first.request().wish().get("readyBy"));
        assertEquals("pale", first.request().styleKey());
    }

    @Test
    void anotherLotIsNotKeptOverABatch() throws IOException {
        run("--into", file("b.json"));
        byte[] before = Files.readAllBytes(folder.resolve("b.json"));
        List<String> other = Run.plan(
                "pale",
                "water-sensitive-barley",
                "cool-garage",
                "--malt",
                "4 kg",
                "--ready-by",
                "2027-05-01",
                "--into",
                file("b.json"));
        Run refused = Run.of(Run.NEVER::apply, Run.NOW, other);
        assertEquals(2, refused.code());
        assertEquals(
                "piecewright: " + file("b.json")
                        + ": holds a batch of another style or lot; name another file for this one\n",
                refused.err());
        assertArrayEquals(before, Files.readAllBytes(folder.resolve("b.json")));
    }

    @Test
    void withoutItsLedgerACalendarIsNotWrittenAnewUnderOtherNames() throws IOException {
        run("--calendar", file("a.ics"));
        Files.delete(folder.resolve("a.ics.ledger.json"));
        byte[] before = Files.readAllBytes(folder.resolve("a.ics"));
        List<String> arguments = new ArrayList<>(
                Run.plan("pale", "two-row-barley", "cool-garage", "--malt", "4 kg", "--ready-by", "2027-05-01"));
        arguments.addAll(List.of("--calendar", file("a.ics")));
        var otherId = java.util.UUID.fromString("11111111-2222-4333-8444-555555555555");
        var err = new java.io.StringWriter();
        int code = Piecewright.run(
                new Surroundings(
                        new Surroundings.Streams(new PrintWriter(Writer.nullWriter()), new PrintWriter(err)),
                        Clock.fixed(Run.NOW, ZoneOffset.UTC),
                        Locale.ENGLISH,
                        () -> otherId,
                        Run.NEVER::apply,
                        Secrets.none(),
                        Run.GOING_ON,
                        Run.NO_WORKSPACE),
                arguments.toArray(String[]::new));
        assertEquals(2, code);
        assertTrue(err.toString().contains("a.ics.ledger.json is lost"), err.toString());
        assertArrayEquals(before, Files.readAllBytes(folder.resolve("a.ics")));
    }

    @Test
    void aFileOfSomebodyElseIsLeftAlone() throws IOException {
        for (String text : List.of("my diary\n", "BEGIN:VCALENDAR\r\nPRODID:x\r\nEND:VCALENDAR\r\n", "")) {
            Files.writeString(folder.resolve("a.ics"), text);
            Run refused = run(Run.NEVER::apply, Run.NOW, "--calendar", file("a.ics"));
            assertEquals(2, refused.code());
            assertEquals(
                    "piecewright: " + file("a.ics")
                            + ": is there already and is no calendar of ours; name another file\n",
                    refused.err());
            assertEquals(text, Files.readString(folder.resolve("a.ics")));
            Run batch = run(Run.NEVER::apply, Run.NOW, "--into", file("a.ics"));
            assertEquals(2, batch.code());
            assertTrue(batch.err().startsWith("piecewright: " + file("a.ics") + ": "), batch.err());
            assertEquals(text, Files.readString(folder.resolve("a.ics")));
        }
    }

    @Test
    void aMissingFolderIsToldBeforeAnythingIsPlanned() throws IOException {
        for (String option : List.of("--calendar", "--into")) {
            Run refused = run(Run.NEVER::apply, Run.NOW, option, file("no/such/file"));
            assertEquals(3, refused.code());
            assertEquals(
                    "piecewright: " + file("no/such/file") + ": its folder does not exist; make the folder first\n",
                    refused.err());
            assertEquals(
                    3, run(Run.NEVER::apply, Run.NOW, option, folder.toString()).code());
        }
        assertEquals(List.of(), names());
    }

    @Test
    void aFolderThatGoesAwayMeanwhileIsToldToo() throws IOException {
        Path inner = Files.createDirectory(folder.resolve("inner"));
        Function<PlanRequest, PlanResult> slow = request -> {
            assertTrue(!Files.exists(inner) || inner.toFile().delete());
            return SAMPLE.apply(request);
        };
        Run run = run(slow, Run.NOW, "--calendar", inner.resolve("a.ics").toString());
        assertEquals(3, run.code());
        assertEquals("", run.out(), "no plan is shown as if all had gone well");
        assertEquals(1, run.err().lines().count());
    }

    @Test
    void anOutputThatCannotBeWrittenIsTold() {
        Writer full = new Writer() {
            @Override
            public void write(char[] text, int from, int length) throws IOException {
                throw new IOException("No space left on device");
            }

            @Override
            public void flush() {}

            @Override
            public void close() {}
        };
        var err = new java.io.StringWriter();
        Surroundings surroundings = new Surroundings(
                new Surroundings.Streams(new PrintWriter(full), new PrintWriter(err)),
                Clock.fixed(Run.NOW, ZoneOffset.UTC),
                Locale.ENGLISH,
                () -> Run.BATCH,
                Run.NEVER::apply,
                Secrets.none(),
                Run.GOING_ON,
                Run.NO_WORKSPACE);
        assertEquals(3, Piecewright.run(surroundings, "styles"));
        assertEquals(
                "piecewright: standard output: cannot be written; check the disk or program it is led to\n",
                err.toString());
    }

    @Test
    void changedWordsMoveOnlyTheStamps() throws IOException {
        run("--calendar", file("a.ics"));
        String before = Files.readString(folder.resolve("a.ics"));
        Run us = run(
                SAMPLE,
                Run.NOW.plus(Duration.ofHours(1)),
                "--calendar",
                file("a.ics"),
                "--units",
                "us",
                "--locale",
                "en");
        assertTrue(us.out().contains(": 0 moved, 0 dropped, 0 new, 3 in other words, 2 unchanged."), us.out());
        String after = Files.readString(folder.resolve("a.ics"));
        assertNotEquals(before, after);
        assertEquals(
                before.lines().filter(line -> line.startsWith("UID")).toList(),
                after.lines().filter(line -> line.startsWith("UID")).toList());
        assertTrue(after.contains("DTSTAMP:20270215T110000Z"));
    }

    @Test
    void unitsAndLocaleArePeoplesOwn() {
        String us = run("--units", "us").out();
        assertTrue(us.contains("13 lb 13.2 oz") && us.contains("°F") && us.contains("SRM"), us);
        String german = run("--locale", "de-DE", "--colour-unit", "lovibond").out();
        assertTrue(german.contains("5,100 kg") && german.contains("°L") && german.contains("Freitag"), german);
        assertTrue(run("--locale", "en-US").out().contains("6270 g"), "no locale changes units unasked");
    }

    @Test
    void aFaultOfTheProgramIsOwnedInOneLine() {
        Run run = run(
                request -> {
                    throw new IllegalStateException("two\nlines");
                },
                Run.NOW);
        assertEquals(70, run.code());
        assertEquals(
                "piecewright: this is a fault of the program, not yours; please report it: "
                        + "java.lang.IllegalStateException: two lines\n",
                run.err());
    }
}
