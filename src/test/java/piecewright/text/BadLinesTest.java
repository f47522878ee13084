package piecewright.text;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.sun.management.ThreadMXBean;
import java.lang.management.ManagementFactory;
import java.time.Instant;
import java.time.ZoneId;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Random;
import org.junit.jupiter.api.Test;
import piecewright.journal.Report.Tare;
import piecewright.plan.ActKind;
import piecewright.text.LineReading.Unclear;
import piecewright.text.LineReading.Understood;

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

    @Test
    void everyWronglyTypedLineIsUnderstoodOrAskedAbout() {
        Random random = new Random(20_310_505);
        int asked = 0;
        for (int i = 0; i < CASES; i++) {
            String typed = damaged(random);
            Locale locale = random.nextBoolean() ? Locale.ENGLISH : Locale.GERMAN;
            UnitSystem system = random.nextBoolean() ? UnitSystem.METRIC : UnitSystem.US;
            DisplayUnits units = new DisplayUnits(system, ColourUnit.EBC, locale);
            if (asks(new LineReader(units, BERLIN, VESSELS), typed)) asked++;
        }
        assertTrue(asked > CASES / 4 && asked < CASES, "asked: " + asked);
    }

    private boolean asks(LineReader reader, String typed) {
        var expecting = new LineReader.Expecting(NOW, Optional.of(ActKind.DRAIN), OptionalDouble.of(5.5));
        long bytes = threads.getThreadAllocatedBytes(Thread.currentThread().getId());
        long nanos = threads.getCurrentThreadCpuTime();
        LineReading reading;
        try {
            reading = reader.read(typed, expecting);
        } catch (RuntimeException | StackOverflowError fault) {
            throw new AssertionError("line of " + typed.length() + ": " + shown(typed), fault);
        }
        long used = threads.getThreadAllocatedBytes(Thread.currentThread().getId()) - bytes;
        assertTrue(used < MOST_BYTES, () -> used + " octets for " + shown(typed));
        long took = threads.getCurrentThreadCpuTime() - nanos;
        boolean timed = CASES > USUAL_CASES;
        assertTrue(!timed || took < MOST_CPU_NANOS, () -> took + " ns for " + shown(typed));
        if (!(reading instanceof Unclear unclear)) {
            assertFalse(((Understood) reading).reports().isEmpty(), typed);
            return false;
        }
        assertEquals(1, unclear.question().lines().count(), unclear.question());
        assertTrue(unclear.question().length() < 500, unclear.question());
        return true;
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
