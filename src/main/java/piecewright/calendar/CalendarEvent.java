package piecewright.calendar;

import java.time.Duration;
import java.util.HashSet;
import java.util.List;
import java.util.Objects;
import java.util.regex.Pattern;
import piecewright.text.CalendarPhrases;

/**
 * One entry of a calendar before it has a UID or stamps; not tied to any file format.
 *
 * @param key logical and lasting, such as "steep-1.drain" or "phase.growth"; 1 to 120 of A-Z a-z 0-9 . _ -
 * @param span at least 15 minutes
 * @param summary 1 to 120 UTF-16 units on one line
 * @param description up to 2,000 UTF-16 units, lines parted by LF
 * @param alarms how long before the start each alarm rings: whole minutes, 0 up to 24 hours (exclusive), at most two, all different;
 *     none on a passive event
 */
public record CalendarEvent(
        String key,
        Span span,
        String summary,
        String description,
        Attention attention,
        CssColour colour,
        List<Duration> alarms) {
    /** No event is shorter: some calendars hide or refuse what they take for an instant. */
    public static final Duration SHORTEST = Duration.ofMinutes(15);

    static final int LONGEST_SUMMARY = 120;
    static final int LONGEST_DESCRIPTION = 2000;
    private static final Pattern KEY = Pattern.compile("[A-Za-z0-9._-]{1,120}");

    public CalendarEvent {
        if (!isKey(key)) throw new IllegalArgumentException("key must be 1 to 120 of A-Za-z0-9._-: " + key);
        if (span.length().compareTo(SHORTEST) < 0) {
            throw new IllegalArgumentException("span must be 15 minutes or more: " + span);
        }
        summary = CleanText.line(summary, LONGEST_SUMMARY);
        if (summary.isEmpty()) throw new IllegalArgumentException("summary must not be empty: " + key);
        description = CleanText.block(description, LONGEST_DESCRIPTION);
        Objects.requireNonNull(attention);
        Objects.requireNonNull(colour);
        alarms = List.copyOf(alarms);
        if (attention == Attention.PASSIVE && !alarms.isEmpty()) {
            throw new IllegalArgumentException("a passive event has no alarm: " + key);
        }
        mustBeAlarms(alarms);
    }

    static boolean isKey(String word) {
        return KEY.matcher(word).matches();
    }

    /** A day or more would be written as a nominal day, which lasts 23 or 25 hours when the clocks change. */
    static void mustBeAlarms(List<Duration> alarms) {
        if (alarms.size() > 2 || new HashSet<>(alarms).size() < alarms.size()) {
            throw new IllegalArgumentException("need at most two alarms, all different: " + alarms);
        }
        for (Duration alarm : alarms) {
            if (alarm.isNegative() || alarm.toDays() >= 1 || alarm.toSecondsPart() != 0 || alarm.toNanosPart() != 0) {
                throw new IllegalArgumentException("alarm must be whole minutes in [0, 24 hours): " + alarm);
            }
        }
    }

    /** What a one-off file says of an act that was dropped: the old place, marked cancelled, free time, no alarm. */
    static CalendarEvent cancelled(String key, Span lastSpan, String lastSummary) {
        return new CalendarEvent(
                key,
                lastSpan,
                CalendarPhrases.cancelled(lastSummary),
                "",
                Attention.PASSIVE,
                new CssColour("gray"),
                List.of());
    }
}
