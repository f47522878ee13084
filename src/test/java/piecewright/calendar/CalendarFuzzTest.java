package piecewright.calendar;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Duration;
import java.time.Instant;
import java.time.LocalTime;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.UUID;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import piecewright.plan.Act;
import piecewright.plan.Agenda;
import piecewright.plan.Check;
import piecewright.plan.Phase;
import piecewright.plan.Plan;

/** 1,000 random plans in random zones with random strings, each exported, re-planned and exported again. */
class CalendarFuzzTest {
    private static final List<String> ZONES = ZoneId.getAvailableZoneIds().stream()
            .filter(id -> id.contains("/"))
            .sorted()
            .toList();
    private static final int[] POINTS = {
        '\\', ';', ',', ':', '"', '\n', '\r', '\t', 0, 7, 0x7F, 0x85, 'ü', '—', '°', 0x1F37A, 0x1F33E, 0x2028, 0xFEFF,
        0xD800, 0xDC00, 0x0661, 0x202E, 0x0301, ' ', 'n', 'N', '=', '^', '\'', '<', '&', '%', 0xFFFF, 0x10FFFF
    };

    @Test
    void noPlanNorStringNorZoneMakesABadFile() {
        for (long seed = 0; seed < 1000; seed++) {
            Random random = new Random(seed);
            UUID batch = new UUID(random.nextLong(), random.nextLong());
            PlanFixture fixture = fixture(random);
            PlanEvents mapping = new PlanEvents(new RandomTexts(random.nextLong()), options(random));
            BatchEvents events = mapping.of(batch, Agenda.of(fixture.plan()));
            Revision first = Ledger.startedFor(batch).next(events, fixture.start());
            byte[] file = mustBeGood(seed, random, first.forImportFile());
            assertEquals(ReadBack.planned(first.confirmed()), ReadBack.byIcal4j(file), "seed " + seed);
            assertEquals(ReadBack.planned(first.confirmed()), ReadBack.byBiweekly(file), "seed " + seed);
            PlanFixture changed = fixture.withSoak(Duration.ofMinutes(30 + random.nextInt(1200)))
                    .withTurns(random.nextInt(9));
            Instant later = fixture.start().plusSeconds(random.nextInt(100_000) - 50_000);
            Revision second = first.ledger().next(mapping.of(batch, Agenda.of(changed.plan())), later);
            mustBeGood(seed, random, second.forImportFile());
            mustMoveForward(seed, first, second);
            Revision again = second.ledger().next(mapping.of(batch, Agenda.of(changed.plan())), later.plusSeconds(5));
            assertEquals(second.confirmed(), again.confirmed(), "seed " + seed);
            Ledger recovered =
                    Ledger.startedFor(batch).caughtUpWith(WrittenEvents.in(file).orElseThrow());
            assertEquals(first.ledger().entries().keySet(), recovered.entries().keySet(), "seed " + seed);
        }
    }

    private static byte[] mustBeGood(long seed, Random random, List<DatedEvent> events) {
        IcsWriter writer = new IcsWriter();
        byte[] file = writer.file(text(random), events);
        assertEquals(List.of(), new IcsChecks().faultsOf(file), "seed " + seed);
        assertArrayEquals(file, OctetFolding.fold(String.join("\n", IcsReading.unfolded(file)) + "\n"));
        assertEquals(texts(events), textsRead(file), "seed " + seed);
        if (seed % 5 == 0) {
            assertEquals(List.of(), ReadBack.faultsByIcal4j(file), "seed " + seed);
            assertEquals(List.of(), ReadBack.faultsByBiweekly(file), "seed " + seed);
        }
        return file;
    }

    private static void mustMoveForward(long seed, Revision first, Revision second) {
        second.ledger().entries().forEach((key, after) -> {
            LedgerEntry before = first.ledger().entries().get(key);
            if (before == null || before.equals(after)) return;
            assertTrue(after.stamp().sequence() >= before.stamp().sequence(), "seed " + seed);
            assertTrue(after.stamp().lastModified().isAfter(before.stamp().lastModified()), "seed " + seed);
            assertEquals(before.uid(), after.uid(), "seed " + seed);
        });
    }

    private static List<String> texts(List<DatedEvent> events) {
        return events.stream()
                .map(dated -> dated.event().summary() + "|" + dated.event().description())
                .sorted()
                .toList();
    }

    private static List<String> textsRead(byte[] file) {
        return IcsReading.calendar(file).orElseThrow().inside("VEVENT").stream()
                .map(event -> event.first("SUMMARY").orElseThrow().text() + "|"
                        + event.first("DESCRIPTION").map(IcsLine::text).orElse(""))
                .sorted()
                .toList();
    }

    private static PlanFixture fixture(Random random) {
        Instant start =
                Instant.ofEpochSecond(1_900_000_000L + random.nextInt(1_000_000_000), random.nextInt(1_000_000));
        ZoneId zone = ZoneId.of(ZONES.get(random.nextInt(ZONES.size())));
        return new PlanFixture(start, zone, Duration.ofMinutes(1 + random.nextInt(2000)), random.nextInt(9));
    }

    private static ExportOptions options(Random random) {
        List<Duration> alarms = Stream.generate(() -> Duration.ofMinutes(random.nextInt(1440)))
                .limit(random.nextInt(3))
                .distinct()
                .toList();
        Optional<QuietHours> quiet = random.nextBoolean()
                ? Optional.empty()
                : Optional.of(new QuietHours(
                        LocalTime.of(random.nextInt(12), random.nextInt(60)),
                        LocalTime.of(12 + random.nextInt(12), 0)));
        ExportOptions.PassivePhases phases = ExportOptions.PassivePhases.values()[random.nextInt(2)];
        return new ExportOptions(phases, alarms, quiet);
    }

    private static String text(Random random) {
        return random.ints(random.nextInt(300), 0, POINTS.length + 20)
                .mapToObj(pick -> pick < POINTS.length
                        ? new String(Character.toChars(POINTS[pick]))
                        : String.valueOf((char) ('a' + pick - POINTS.length)))
                .collect(Collectors.joining());
    }

    /** The same words for the same act, whatever they are. */
    private record RandomTexts(long seed) implements EventTexts {
        @Override
        public String actTitle(Plan.Subject subject, Act act) {
            return "A" + text(new Random(seed ^ act.id().hashCode()));
        }

        @Override
        public List<String> actLines(Plan.Subject subject, Act act, Optional<Instant> staysUntil) {
            Random random = new Random(seed + act.id().hashCode());
            List<String> lines = new ArrayList<>();
            for (int line = random.nextInt(10); line > 0; line--) lines.add(text(random));
            return lines;
        }

        @Override
        public String doneTitle(Plan.Subject subject, Act act, Done done) {
            return "✓ " + actTitle(subject, act);
        }

        @Override
        public List<String> doneLines(Plan.Subject subject, Act act, Done done) {
            return List.of("Done");
        }

        @Override
        public String checkTitle(Plan.Subject subject, Check check) {
            return "Check: " + check.id();
        }

        @Override
        public List<String> checkLines(Plan.Subject subject, Check check) {
            return List.of("Of " + check.about());
        }

        @Override
        public String phaseTitle(Plan.Subject subject, Phase phase) {
            return "P" + text(new Random(seed ^ phase.id().hashCode()));
        }

        @Override
        public List<String> phaseLines(Plan.Subject subject, Phase phase) {
            return List.of(text(new Random(seed + phase.id().hashCode())));
        }
    }
}
