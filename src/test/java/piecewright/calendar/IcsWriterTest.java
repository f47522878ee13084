package piecewright.calendar;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.UUID;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What must hold of a written file; rules from RFC 5545 and RFC 7986. */
class IcsWriterTest {
    private static final Instant STAMP = Instant.parse("2027-03-20T08:00:00Z");
    private static final UUID UID = UUID.fromString("3f0f3f5e-0b0e-4c1a-8b63-5a7e8d3c0a02");
    private final IcsWriter writer = new IcsWriter();

    @Test
    void anActIsWrittenLineByLineLikeThis() {
        CalendarEvent drain = new CalendarEvent(
                "steep-1.drain",
                new Span(Instant.parse("2027-03-28T03:00:00Z"), Instant.parse("2027-03-28T03:30:00Z")),
                "Drain, rinse, weigh",
                "Sun 28 Mar 05:00 (UTC+2)\nWater 15 °C",
                Attention.HANDS_ON,
                new CssColour("firebrick"),
                List.of(Duration.ofMinutes(30)));
        DatedEvent dated = new DatedEvent(UID, new Stamp(0, STAMP, STAMP), EventStatus.CONFIRMED, drain);
        String expected = """
                BEGIN:VCALENDAR
                VERSION:2.0
                PRODID:-//Piecewright//Piecewright 1.0//EN
                CALSCALE:GREGORIAN
                NAME:Malt plan – lot 7
                X-WR-CALNAME:Malt plan – lot 7
                BEGIN:VEVENT
                UID:3f0f3f5e-0b0e-4c1a-8b63-5a7e8d3c0a02
                DTSTAMP:20270320T080000Z
                CREATED:20270320T080000Z
                LAST-MODIFIED:20270320T080000Z
                SEQUENCE:0
                DTSTART:20270328T030000Z
                DTEND:20270328T033000Z
                SUMMARY:Drain\\, rinse\\, weigh
                DESCRIPTION:Sun 28 Mar 05:00 (UTC+2)\\nWater 15 °C
                CATEGORIES:Malting
                COLOR:firebrick
                STATUS:CONFIRMED
                TRANSP:OPAQUE
                CLASS:PRIVATE
                X-PIECEWRIGHT-ACT:steep-1.drain
                BEGIN:VALARM
                ACTION:DISPLAY
                TRIGGER:-PT30M
                DESCRIPTION:Drain\\, rinse\\, weigh
                END:VALARM
                END:VEVENT
                END:VCALENDAR
                """;
        assertEquals(
                expected.replace("\n", "\r\n"),
                new String(writer.file("Malt plan – lot 7", List.of(dated)), StandardCharsets.UTF_8));
    }

    @Test
    void aWholePlanPassesEveryReader() {
        List<DatedEvent> events = PlanFixture.usual().dated();
        byte[] file = writer.file("Malt plan", events);
        assertEquals(List.of(), new IcsChecks().faultsOf(file));
        assertEquals(List.of(), ReadBack.faultsByIcal4j(file));
        assertEquals(List.of(), ReadBack.faultsByBiweekly(file));
        assertEquals(ReadBack.planned(events), ReadBack.byIcal4j(file));
        assertEquals(ReadBack.planned(events), ReadBack.byBiweekly(file));
    }

    @Test
    void nothingOfTheMachineLeaksIntoTheFile() {
        List<String> watched = new ArrayList<>(List.of("file:", "/home/", "/Users/", "C:\\", "@", "localhost"));
        String user = System.getProperty("user.name");
        String home = System.getProperty("user.home");
        if (user.length() > 3) watched.add(user);
        if (home.length() > 3) watched.add(home);
        byte[] file = writer.file("Malt plan", PlanFixture.usual().dated());
        assertEquals(List.of(), new IcsChecks(watched).faultsOf(file));
    }

    @Test
    void orderOfTheEventsGivenDoesNotMatter() {
        List<DatedEvent> events = PlanFixture.usual().dated();
        List<DatedEvent> reversed = new ArrayList<>(events);
        java.util.Collections.reverse(reversed);
        assertArrayEquals(writer.file("Malt plan", events), writer.file("Malt plan", reversed));
    }

    @Test
    void aCalendarWithoutEventsIsNotWritten() {
        assertThrows(IllegalArgumentException.class, () -> writer.file("Malt plan", List.of()));
    }

    @Test
    void aResourceHoldsOneEventAndNoName() {
        DatedEvent event = PlanFixture.usual().dated().get(0);
        IcsComponent calendar = IcsReading.calendar(writer.resource(event)).orElseThrow();
        assertEquals(1, calendar.inside("VEVENT").size());
        assertEquals(0, calendar.count("NAME"));
    }

    @Test
    void severalBatchesShareOneFile() {
        UUID other = UUID.fromString("11111111-2222-4333-8444-555555555555");
        List<DatedEvent> both = new ArrayList<>(PlanFixture.usual().dated());
        both.addAll(Ledger.startedFor(other)
                .next(PlanFixture.usual().events(other), PlanFixture.NOW)
                .confirmed());
        assertEquals(both.size(), ReadBack.byIcal4j(writer.file("Malt", both)).size());
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "back\\slash \\n is not a line end",
                "a;b,c:d\"e'f",
                "one\ntwo\r\nthree\rfour",
                "ends with a backslash\\",
                "\\;\\,\\\\",
                "tab\tand °C – ½ 🍺🌾 ü"
            })
    void textComesBackAsItWentIn(String text) {
        DatedEvent event = withDescription(text);
        byte[] file = writer.file("Malt", List.of(event));
        String clean = text.replace("\r\n", "\n").replace('\r', '\n').replace('\t', ' ');
        assertEquals(
                clean,
                IcsReading.calendar(file)
                        .orElseThrow()
                        .inside("VEVENT")
                        .get(0)
                        .first("DESCRIPTION")
                        .orElseThrow()
                        .text());
        assertEquals(
                clean,
                ReadBack.ical4j(file)
                        .getComponents("VEVENT")
                        .get(0)
                        .getProperty("DESCRIPTION")
                        .orElseThrow()
                        .getValue());
        assertEquals(
                clean,
                biweekly.Biweekly.parse(new String(file, StandardCharsets.UTF_8))
                        .first()
                        .getEvents()
                        .get(0)
                        .getDescription()
                        .getValue());
    }

    @Test
    void foldsByOctetsWhereverACharacterStraddlesTheEdge() {
        for (String sign : List.of("ü", "—", "°", "🍺", "\\", ",")) {
            for (int before = 40; before < 90; before++) {
                byte[] file = writer.file("Malt", List.of(withDescription("x".repeat(before) + sign + "y".repeat(90))));
                assertEquals(List.of(), new IcsChecks().faultsOf(file));
                assertEquals(
                        "x".repeat(before) + sign + "y".repeat(90),
                        biweekly.Biweekly.parse(new String(file, StandardCharsets.UTF_8))
                                .first()
                                .getEvents()
                                .get(0)
                                .getDescription()
                                .getValue());
            }
        }
    }

    @Test
    void aFoldNeverPartsABackslashFromWhatItEscapes() {
        for (int before = 50; before < 75; before++) {
            byte[] file = writer.file("Malt", List.of(withDescription("x".repeat(before) + ",,,")));
            for (String line : new String(file, StandardCharsets.UTF_8).split("\r\n")) {
                assertEquals("", line.replaceAll("^.*[^\\\\]|\\\\\\\\", ""), line);
            }
        }
    }

    @Test
    void aLineOfExactly75OctetsIsNotFolded() {
        String description = "d".repeat(75 - "DESCRIPTION:".length());
        String file = new String(writer.file("Malt", List.of(withDescription(description))), StandardCharsets.UTF_8);
        assertTrue(file.contains("\r\nDESCRIPTION:" + description + "\r\nCATEGORIES"));
        String longer =
                new String(writer.file("Malt", List.of(withDescription(description + "d"))), StandardCharsets.UTF_8);
        assertTrue(longer.contains("\r\nDESCRIPTION:" + description + "\r\n d\r\nCATEGORIES"));
    }

    private static DatedEvent withDescription(String text) {
        Span span = new Span(Instant.parse("2031-03-28T03:00:00Z"), Instant.parse("2031-03-28T03:30:00Z"));
        CalendarEvent event = new CalendarEvent(
                "floor", span, "Floor", text, Attention.HANDS_ON, new CssColour("seagreen"), List.of());
        return new DatedEvent(UID, new Stamp(0, STAMP, STAMP), EventStatus.CONFIRMED, event);
    }
}
