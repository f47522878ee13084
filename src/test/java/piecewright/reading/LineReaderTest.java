package piecewright.reading;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import piecewright.journal.Entry;
import piecewright.journal.Journal;
import piecewright.journal.Report.Corrected;
import piecewright.journal.Report.Did;
import piecewright.journal.Report.Noted;
import piecewright.journal.Report.Weighed;
import piecewright.plan.ActKind;
import piecewright.reading.Outcome.Asked;
import piecewright.reading.Outcome.Kept;
import piecewright.reading.Outcome.Refused;
import piecewright.text.ColourUnit;
import piecewright.text.DisplayUnits;
import piecewright.text.UnitSystem;

/** Lines read beside a batch that was soaked, drained and weighed; what many lines mean stands in the corpus. */
class LineReaderTest {
    private static final ZoneId BERLIN = ZoneId.of("Europe/Berlin");
    /** Saturday, 20 March 2027, 14:00 in Berlin. */
    private static final Instant NOW = Instant.parse("2027-03-20T13:00:00Z");

    private static final Instant DRAINED = NOW.minus(Duration.ofHours(2));

    private static Entry entry(int number, Instant at, piecewright.journal.Report report) {
        return new Entry(number, at, at, Optional.empty(), report);
    }

    private static Scene scene(Instant now) {
        Instant soaked = now.minus(Duration.ofHours(10));
        Instant drained = now.minus(Duration.ofHours(2));
        Journal journal = new Journal(List.of(
                entry(1, soaked, Did.of(ActKind.SOAK)),
                entry(2, drained, Did.of(ActKind.DRAIN)),
                entry(3, drained, Weighed.net(5.6))));
        return new Scene(
                now,
                BERLIN,
                new DisplayUnits(UnitSystem.METRIC, ColourUnit.EBC, Locale.UK),
                journal,
                List.of(),
                Optional.of(ActKind.SOAK),
                OptionalDouble.of(5.6),
                new Scene.Limits(4.0, 4.6, OptionalDouble.of(110), OptionalDouble.of(240), 8, List.of("cellar")));
    }

    private static Outcome read(String line) {
        return LineReader.read(line, scene(NOW));
    }

    @Test
    void aCorrectionKeepsTheTimeOfTheEntryItCorrects() {
        Kept kept = assertInstanceOf(Kept.class, read("correct 3 5.5 kg"));
        assertEquals(DRAINED, kept.said().get(0).at());
        assertEquals(
                new Corrected(3, Optional.of(Weighed.net(5.5))),
                kept.said().get(0).report());
    }

    @Test
    void anEntryIsStruckByNothingButTheJournal() {
        Kept last = assertInstanceOf(
                Kept.class, LineReader.struck("undo", scene(NOW)).orElseThrow());
        assertEquals(new Corrected(3, Optional.empty()), last.said().get(0).report());
        Kept named = assertInstanceOf(
                Kept.class, LineReader.struck("strike 1", scene(NOW)).orElseThrow());
        assertEquals(new Corrected(1, Optional.empty()), named.said().get(0).report());
        assertTrue(LineReader.struck("soaked", scene(NOW)).isEmpty());
    }

    @Test
    void aLongNoteIsKeptWhole() {
        String words = "the cat slept on it ".repeat(400).strip();
        Kept kept = assertInstanceOf(Kept.class, read("note " + words));
        assertEquals(new Noted(words), kept.said().get(0).report());
        assertInstanceOf(Asked.class, read(words), "a story is offered as a note");
        assertInstanceOf(Refused.class, read("note " + "x".repeat(LineReader.LONGEST)));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "99 kg",
                "couch 300 C",
                "water 75 C",
                "1 kg",
                "soaked tomorrow",
                "should I soak it?",
                "turned 25:10"
            })
    void whatCannotBeIsRefused(String line) {
        assertInstanceOf(Refused.class, read(line));
    }

    /** Berlin, 28 March 2027: 02:00 to 03:00 never was. Source: the zone's rules, EU summer time. */
    @Test
    void anHourTheClocksSkippedIsAskedAbout() {
        Outcome outcome = LineReader.read("soaked 02:30", scene(Instant.parse("2027-03-28T03:00:00Z")));
        assertEquals(2, assertInstanceOf(Asked.class, outcome).offers().size());
    }

    /** Berlin, 31 October 2027: 02:00 to 03:00 came twice. */
    @Test
    void anHourThatCameTwiceIsAskedAboutAndCanBeSaidWithItsOffset() {
        Scene noon = scene(Instant.parse("2027-10-31T02:00:00Z"));
        assertEquals(
                2,
                assertInstanceOf(Asked.class, LineReader.read("soaked 02:30", noon))
                        .offers()
                        .size());
        Kept kept = assertInstanceOf(Kept.class, LineReader.read("soaked 2027-10-31 02:30 +01:00", noon));
        assertEquals(Instant.parse("2027-10-31T01:30:00Z"), kept.said().get(0).at());
    }

    @Test
    void nothingLeavesTheReaderThatDrivesATerminal() {
        Kept kept = assertInstanceOf(Kept.class, read("note red \u001b[31m alert"));
        assertEquals(new Noted("red [31m alert"), kept.said().get(0).report());
    }

    private static final List<String> STEPS =
            List.of("soaked", "drained", "heaped", "turned", "sprinkled", "withered", "packed", "loaded", "stirred");

    /** Whoever is asked whether a step was meant is offered that step, with the weight as typed, wherever the batch stands. */
    @Test
    void whatIsAskedAboutIsOffered() {
        Scene dry = new Scene(
                NOW,
                BERLIN,
                scene(NOW).units(),
                new Journal(List.of()),
                List.of(),
                Optional.of(ActKind.SOAK),
                OptionalDouble.of(5.6),
                scene(NOW).limits());
        int asked = 0;
        for (Scene scene : List.of(dry, scene(NOW))) {
            for (String step : STEPS) {
                for (int left = 1; left < step.length(); left++) {
                    String typed = step.substring(0, left) + step.substring(left + 1);
                    for (String line : List.of(typed, typed + " 5,65kg", "5.65 kg " + typed)) {
                        if (LineReader.read(line, scene) instanceof Asked one) asked += offers(line, one);
                    }
                }
            }
        }
        assertTrue(asked > 60, "asked: " + asked);
    }

    private static int offers(String line, Asked asked) {
        var meant = Pattern.compile("did you mean “(.+?)”").matcher(asked.question());
        if (!meant.find()) return 0;
        String first = asked.offers().get(0).line();
        assertTrue(first.contains(meant.group(1)), line + ": " + asked);
        assertTrue(!line.contains("kg") || first.contains("weight 5.65 kg"), line + ": " + asked);
        return 1;
    }
}
