package piecewright.text;

import java.time.Instant;
import java.time.ZoneId;
import java.util.Locale;
import java.util.Optional;

/** What is said about calendars: what changed from when to when, and how to use the file or the collection. */
public final class CalendarPhrases {
    private static final String CANCELLED = "calendar.cancelled";

    private final MomentFormat moments;

    public CalendarPhrases(ZoneId zone, Locale locale) {
        this.moments = new MomentFormat(zone, locale);
    }

    /** The title of an act that was dropped. */
    public static String cancelled(String title) {
        return Phrases.say(CANCELLED, title);
    }

    /** The act's own title, if this is the title of a dropped one. */
    public static Optional<String> ofCancelled(String said) {
        String mark = Phrases.say(CANCELLED, "");
        return said.startsWith(mark) ? Optional.of(said.substring(mark.length())) : Optional.empty();
    }

    /** A sentence without moments, by its key behind "calendar.". */
    public static String say(String key, String... arguments) {
        return Phrases.say("calendar." + key, arguments);
    }

    /** The text behind a label, broken into lines. */
    public static String paragraph(String label, String text) {
        return Paragraph.of(label, text);
    }

    public String moved(String title, Instant from, Instant to) {
        return Phrases.say("calendar.moved", title, moments.moment(from), moments.moment(to));
    }

    /** The act starts as before but ends at another time. */
    public String lasting(String title, Instant start, Instant from, Instant to) {
        return Phrases.say("calendar.lasting", title, moments.moment(start), moments.moment(from), moments.moment(to));
    }

    public String dropped(String title, Instant at) {
        return Phrases.say("calendar.dropped", title, moments.moment(at));
    }

    public String added(String title, Instant at) {
        return Phrases.say("calendar.new", title, moments.moment(at));
    }

    /** A moment as the house's clock shows it. */
    public String moment(Instant at) {
        return moments.moment(at);
    }
}
