package piecewright.calendar;

import biweekly.Biweekly;
import biweekly.ICalendar;
import biweekly.ValidationWarnings.WarningsGroup;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.time.temporal.Temporal;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import net.fortuna.ical4j.data.CalendarBuilder;
import net.fortuna.ical4j.data.ParserException;
import net.fortuna.ical4j.model.Calendar;
import net.fortuna.ical4j.model.component.VEvent;
import net.fortuna.ical4j.model.property.DtEnd;
import net.fortuna.ical4j.model.property.DtStart;

/** Reads files with libraries that are not under test: UID → "start end", and what their validators find. */
public final class ReadBack {
    private ReadBack() {}

    public static Map<String, String> planned(List<DatedEvent> events) {
        Map<String, String> times = new TreeMap<>();
        for (DatedEvent dated : events) {
            Span span = dated.event().span();
            times.put(dated.uid().toString(), span.startsAt() + " " + span.endsAt());
        }
        return times;
    }

    public static Calendar ical4j(byte[] file) {
        try {
            return new CalendarBuilder().build(new ByteArrayInputStream(file));
        } catch (IOException | ParserException unreadable) {
            throw new AssertionError(unreadable);
        }
    }

    public static Map<String, String> byIcal4j(byte[] file) {
        Map<String, String> times = new TreeMap<>();
        for (var component : ical4j(file).getComponents("VEVENT")) {
            VEvent event = (VEvent) component;
            DtStart<Temporal> start = event.getDateTimeStart();
            DtEnd<Temporal> end = event.<Temporal>getEndDate(false).orElseThrow();
            times.put(
                    event.getUid().orElseThrow().getValue(),
                    Instant.from(start.getDate()) + " " + Instant.from(end.getDate()));
        }
        return times;
    }

    public static List<String> faultsByIcal4j(byte[] file) {
        return ical4j(file).validate(true).getEntries().stream()
                .map(Object::toString)
                .toList();
    }

    public static Map<String, String> byBiweekly(byte[] file) {
        Map<String, String> times = new TreeMap<>();
        biweekly(file)
                .getEvents()
                .forEach(event -> times.put(
                        event.getUid().getValue(),
                        event.getDateStart().getValue().toInstant() + " "
                                + event.getDateEnd().getValue().toInstant()));
        return times;
    }

    /** Without code 10, which is a false alarm for a trigger counted from the start. */
    public static List<String> faultsByBiweekly(byte[] file) {
        List<String> faults = new ArrayList<>();
        List<List<biweekly.io.ParseWarning>> parsing = new ArrayList<>();
        String text = new String(file, StandardCharsets.UTF_8);
        var chain = Biweekly.parse(text).warnings(parsing);
        for (ICalendar calendar : chain.all()) {
            for (WarningsGroup group : calendar.validate(biweekly.ICalVersion.V2_0)) {
                group.getWarnings().stream()
                        .filter(warning -> !Integer.valueOf(10).equals(warning.getCode()))
                        .forEach(warning -> faults.add(warning.toString()));
            }
        }
        parsing.forEach(warnings -> warnings.forEach(warning -> faults.add(warning.toString())));
        return faults;
    }

    private static ICalendar biweekly(byte[] file) {
        return Biweekly.parse(new String(file, StandardCharsets.UTF_8)).first();
    }
}
