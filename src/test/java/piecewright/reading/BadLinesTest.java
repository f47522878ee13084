package piecewright.reading;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.sun.management.ThreadMXBean;
import java.lang.management.ManagementFactory;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Random;
import org.junit.jupiter.api.Test;
import piecewright.journal.Entry;
import piecewright.journal.Journal;
import piecewright.journal.Report.Did;
import piecewright.journal.Report.Tare;
import piecewright.journal.Report.VesselWeighed;
import piecewright.plan.ActKind;
import piecewright.text.ColourUnit;
import piecewright.text.DisplayUnits;
import piecewright.text.UnitSystem;

/**
 * Journal lines typed wrongly at random are understood or asked about, never anything else. The whole campaign:
 * {@code mvn -q test -Dtest='Bad*Test' -DbadFiles=100000}; then is time bounded too.
 */
class BadLinesTest {
    private static final int USUAL_CASES = 4_500;
    private static final int CASES = Integer.getInteger("badFiles", USUAL_CASES);
    private static final long MOST_BYTES = 64L << 20;
    private static final long MOST_CPU_NANOS = 1_000_000_000;
    private static final ZoneId BERLIN = ZoneId.of("Europe/Berlin");
    private static final Instant NOW = Instant.parse("2027-03-28T02:30:00Z");
    private static final List<Tare> VESSELS = List.of(new Tare("blue tub", 1.84), new Tare("net (old)+*", 0.06));

    private static final List<String> GOOD = List.of(
            "drained 5.56 kg 21:40 yesterday",
            "couch 49 C",
            "acrospire 3 8 12 6 1",
            "6 lb 15 oz",
            "17.20 kg in the blue tub",
            "chitted 41 of 50",
            "kiln 150 F",
            "started soaking at 18:30",
            "turned fri 18:30, bed 17 C, smells of cucumber",
            "sprinkled 150 mL 7:05 am",
            "loaded 7.1 kg 2 h ago",
            "vents half open",
            "sample 100 g to 57 g",
            "colour 3.5 EBC",
            "vessel blue tub 1.84 kg",
            "note moved it to the cellar at 5",
            "correct 7 15.36 kg");

    private static final List<String> PIECES = List.of(
            "",
            " ",
            "correct 9999999999 ",
            "correct 1 ",
            "-",
            "99:99",
            "02:30",
            "31.2.",
            "kg",
            "e308",
            "NaN",
            "½",
            "٤",
            "\u0000",
            "\u202e",
            "\ud83c",
            "\n",
            "of",
            "ago",
            "yesterday",
            "(",
            "+*",
            "\\",
            "5.56 kg",
            "C",
            "°",
            "%",
            "1e9 h ago",
            "10000000000 days ago",
            "tub",
            "note ");

    private final ThreadMXBean threads = (ThreadMXBean) ManagementFactory.getThreadMXBean();

    /** A journal to put right, and one that is empty. */
    private static Scene scene(DisplayUnits units, boolean begun) {
        Instant soaked = NOW.minus(Duration.ofHours(8));
        List<Entry> entries = List.of(
                new Entry(1, soaked, soaked, Optional.empty(), new VesselWeighed(VESSELS.get(0))),
                new Entry(2, soaked, soaked, Optional.empty(), Did.of(ActKind.SOAK)));
        return new Scene(
                NOW,
                BERLIN,
                units,
                new Journal(begun ? entries : List.of()),
                List.of(),
                Optional.of(begun ? ActKind.DRAIN : ActKind.SOAK),
                OptionalDouble.of(5.5),
                new Scene.Limits(4.0, 4.6, OptionalDouble.of(110), OptionalDouble.of(240), 8, List.of("cellar")));
    }

    @Test
    void everyWronglyTypedLineIsUnderstoodAskedAboutOrRefused() {
        Random random = new Random(20_310_505);
        int kept = 0;
        for (int i = 0; i < CASES; i++) {
            String typed = damaged(random);
            Locale locale = random.nextBoolean() ? Locale.ENGLISH : Locale.GERMAN;
            UnitSystem system = random.nextBoolean() ? UnitSystem.METRIC : UnitSystem.US;
            if (keeps(scene(new DisplayUnits(system, ColourUnit.EBC, locale), random.nextBoolean()), typed)) kept++;
        }
        assertTrue(kept > CASES / 20 && kept < 3 * CASES / 4, "kept: " + kept);
    }

    private boolean keeps(Scene scene, String typed) {
        long bytes = threads.getThreadAllocatedBytes(Thread.currentThread().getId());
        long nanos = threads.getCurrentThreadCpuTime();
        Outcome outcome;
        try {
            outcome = LineReader.read(typed, scene);
        } catch (RuntimeException | StackOverflowError fault) {
            throw new AssertionError("line of " + typed.length() + ": " + shown(typed), fault);
        }
        long used = threads.getThreadAllocatedBytes(Thread.currentThread().getId()) - bytes;
        assertTrue(used < MOST_BYTES, () -> used + " octets for " + shown(typed));
        long took = threads.getCurrentThreadCpuTime() - nanos;
        boolean timed = CASES > USUAL_CASES;
        assertTrue(!timed || took < MOST_CPU_NANOS, () -> took + " ns for " + shown(typed));
        if (outcome instanceof Outcome.Kept kept) {
            kept.said().forEach(said -> assertFalse(said.at().isAfter(NOW.plus(Duration.ofMinutes(5))), typed));
            return true;
        }
        String sentence =
                outcome instanceof Outcome.Asked asked ? asked.question() : ((Outcome.Refused) outcome).sentence();
        assertEquals(1, sentence.lines().count(), sentence);
        assertTrue(sentence.length() < 900, sentence);
        if (outcome instanceof Outcome.Asked asked) {
            assertTrue(asked.offers().size() <= 3, typed);
            for (Outcome.Offer offer : asked.offers()) {
                Outcome again = LineReader.read(offer.line(), scene);
                assertTrue(
                        again instanceof Outcome.Kept, () -> shown(typed) + " offers " + offer.line() + ": " + again);
            }
        }
        return false;
    }

    private static String shown(String typed) {
        return typed.length() > 500 ? typed.substring(0, 500) + " …" : typed;
    }

    private static String damaged(Random random) {
        String text = GOOD.get(random.nextInt(GOOD.size()));
        for (int times = random.nextInt(4); times > 0; times--) {
            int at = random.nextInt(text.length() + 1);
            int until = Math.min(text.length(), at + random.nextInt(4));
            text = text.substring(0, at) + PIECES.get(random.nextInt(PIECES.size())) + text.substring(until);
        }
        return random.nextInt(300) == 0 ? (text + " ").repeat(400) : text;
    }
}
