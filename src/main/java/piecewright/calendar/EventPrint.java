package piecewright.calendar;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;

/**
 * What one stored event says, made comparable: it does not change when a server writes the same event with other folds,
 * another order or newer stamps, nor when a client notes a snooze, but it does when a person edits anything.
 *
 * @param uid as stored
 * @param key which act, or "" if it is none of ours
 * @param essentials fingerprint of times, title and status
 * @param content fingerprint of everything that a person could edit
 */
public record EventPrint(String uid, String key, String essentials, String content) {
    private static final List<String> ESSENTIAL = List.of("DTSTART", "DTEND", "SUMMARY", "STATUS");
    private static final List<String> PASSED_OVER =
            List.of("DTSTAMP", "CREATED", "LAST-MODIFIED", "SEQUENCE", "ACKNOWLEDGED");

    /** The print of a stored calendar of one event; empty if it is not well formed or holds more or other things. */
    public static Optional<EventPrint> of(byte[] resource) {
        return IcsReading.calendar(resource).flatMap(calendar -> {
            List<IcsComponent> events = calendar.inside("VEVENT");
            return events.size() == 1 ? Optional.of(of(events.get(0))) : Optional.empty();
        });
    }

    private static EventPrint of(IcsComponent event) {
        List<String> essentials = new ArrayList<>();
        for (String property : ESSENTIAL) {
            event.first(property).ifPresent(line -> essentials.add(said(line)));
        }
        List<String> content = said(event);
        for (IcsComponent inside : event.inside()) {
            List<String> lines = said(inside);
            Collections.sort(lines);
            content.add(inside.name() + lines);
        }
        Collections.sort(content);
        return new EventPrint(
                event.value("UID"),
                event.value(IcsEvents.ACT_KEY),
                NamedUuid.fingerprint(String.join("\n", essentials)),
                NamedUuid.fingerprint(String.join("\n", content)));
    }

    private static List<String> said(IcsComponent component) {
        List<String> lines = new ArrayList<>();
        for (IcsLine line : component.lines()) {
            boolean extension = line.name().startsWith("X-") && !line.name().equals(IcsEvents.ACT_KEY);
            if (!extension && !PASSED_OVER.contains(line.name())) lines.add(said(line));
        }
        return lines;
    }

    private static String said(IcsLine line) {
        String name = line.name() + "=";
        if (line.name().equals("TRIGGER")) {
            return IcsTimes.accurate(line.value()).map(lead -> name + lead).orElse(name + line);
        }
        if (line.name().equals("DTSTART") || line.name().equals("DTEND")) {
            return IcsTimes.utc(line.value()).map(at -> name + at).orElse(name + line);
        }
        return name + line.text();
    }
}
