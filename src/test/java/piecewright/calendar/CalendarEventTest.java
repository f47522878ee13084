package piecewright.calendar;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Duration;
import java.time.Instant;
import java.time.LocalTime;
import java.util.List;
import java.util.UUID;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class CalendarEventTest {
    private static final Instant START = Instant.parse("2031-03-28T03:00:00Z");
    private static final Duration HALF_HOUR = Duration.ofMinutes(30);

    @Test
    void longTextIsCutBeforeASurrogatePairNotInsideIt() {
        CalendarEvent event = event("x".repeat(118) + "🍺🍺", "y".repeat(3000), List.of());
        assertEquals("x".repeat(118) + "…", event.summary());
        assertEquals(2000, event.description().length());
    }

    @Test
    void controlCharactersGoAndLineEndsBecomeOne() {
        CalendarEvent event = event("a\nb\u0000c", "a\r\nb\rc\u2028d\u0007\tx\uD800y\uFEFF", List.of());
        assertEquals("a bc", event.summary());
        assertEquals("a\nb\nc\nd x\uFFFDy", event.description());
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "has space", "a/b", "a;b", "ü"})
    void keysThatNoCalendarCouldCarryAreRefused(String key) {
        Span span = new Span(START, START.plusSeconds(1800));
        assertThrows(
                IllegalArgumentException.class,
                () -> new CalendarEvent(key, span, "A", "", Attention.HANDS_ON, new CssColour("gray"), List.of()));
    }

    @Test
    void threeAlarmsEqualAlarmsPassiveAlarmsAndSecondsAreRefused() {
        for (List<Duration> alarms : List.of(
                List.of(HALF_HOUR, Duration.ZERO, Duration.ofHours(1)),
                List.of(HALF_HOUR, HALF_HOUR),
                List.of(Duration.ofSeconds(90)),
                List.of(HALF_HOUR.negated()),
                List.of(Duration.ofDays(1)))) {
            assertThrows(IllegalArgumentException.class, () -> event("A", "", alarms));
        }
        Span span = new Span(START, START.plusSeconds(1800));
        assertThrows(
                IllegalArgumentException.class,
                () -> new CalendarEvent(
                        "a", span, "A", "", Attention.PASSIVE, new CssColour("gray"), List.of(HALF_HOUR)));
    }

    @Test
    void shortOrBackwardOrFractionalSpansAreRefused() {
        assertThrows(IllegalArgumentException.class, () -> new Span(START, START));
        assertThrows(IllegalArgumentException.class, () -> new Span(START, START.plusMillis(1500)));
        assertThrows(IllegalArgumentException.class, () -> new Span(START, Instant.parse("9999-06-01T00:00:00Z")));
        Span minute = new Span(START, START.plusSeconds(60));
        assertThrows(
                IllegalArgumentException.class,
                () -> new CalendarEvent("a", minute, "A", "", Attention.PASSIVE, new CssColour("gray"), List.of()));
    }

    /** RFC 7986, 5.9: names of CSS3; there are 147. */
    @Test
    void coloursAreNamesNotHex() {
        assertTrue(CssColour.isName("lightgoldenrodyellow"));
        assertThrows(IllegalArgumentException.class, () -> new CssColour("#b22222"));
        assertThrows(IllegalArgumentException.class, () -> new CssColour("FireBrick"));
    }

    @Test
    void aKeyCannotOccurTwiceInABatch() {
        CalendarEvent event = event("A", "", List.of());
        assertThrows(
                IllegalArgumentException.class,
                () -> new BatchEvents(
                        UUID.fromString("0f0f3f5e-0b0e-4c1a-8b63-5a7e8d3c0a02"), START, List.of(event, event)));
    }

    /** Source: the documentation of Python's uuid module gives this for uuid5(NAMESPACE_DNS, "python.org"). */
    @Test
    void uuidsFollowVersionFive() {
        UUID dns = UUID.fromString("6ba7b810-9dad-11d1-80b4-00c04fd430c8");
        assertEquals(UUID.fromString("886313e1-3b8a-5372-9b90-0c9aee199e5d"), NamedUuid.of(dns, "python.org"));
    }

    @Test
    void quietHoursMayOrMayNotSpanMidnight() {
        QuietHours night = new QuietHours(LocalTime.of(22, 0), LocalTime.of(6, 0));
        assertTrue(night.covers(LocalTime.of(22, 0)));
        assertTrue(night.covers(LocalTime.MIDNIGHT));
        assertFalse(night.covers(LocalTime.of(6, 0)));
        QuietHours siesta = new QuietHours(LocalTime.of(13, 0), LocalTime.of(15, 0));
        assertTrue(siesta.covers(LocalTime.of(14, 59)));
        assertFalse(siesta.covers(LocalTime.of(15, 0)));
        assertFalse(siesta.covers(LocalTime.of(12, 59)));
        assertThrows(IllegalArgumentException.class, () -> new QuietHours(LocalTime.NOON, LocalTime.NOON));
    }

    private static CalendarEvent event(String summary, String description, List<Duration> alarms) {
        Span span = new Span(START, START.plusSeconds(1800));
        return new CalendarEvent("a", span, summary, description, Attention.HANDS_ON, new CssColour("gray"), alarms);
    }
}
