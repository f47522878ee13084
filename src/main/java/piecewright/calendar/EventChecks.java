package piecewright.calendar;

import java.time.Instant;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;

/** Checks 6, 10 and 12 to 31 on one event. */
final class EventChecks {
    private static final List<String> AT_MOST_ONCE = List.of(
            "CLASS", "CREATED", "DESCRIPTION", "LAST-MODIFIED", "PRIORITY", "SEQUENCE", "STATUS", "SUMMARY", "TRANSP");
    private static final List<String> UNWANTED = List.of("GEO", "LOCATION", "URL", "ATTACH", "CONTACT", "COMMENT");
    private static final List<String> RECURRING = List.of("RRULE", "RDATE", "EXDATE", "RECURRENCE-ID");
    private static final Set<String> BARE = Set.of("UID", "STATUS", "TRANSP", "COLOR", "CATEGORIES");
    private static final Pattern UUID = Pattern.compile("[0-9a-f]{8}(-[0-9a-f]{4}){3}-[0-9a-f]{12}");
    private static final Pattern SEQUENCE = Pattern.compile("0|[1-9][0-9]{0,9}");

    private EventChecks() {}

    static boolean isLowerCaseUuid(String value) {
        return value.length() == 36 && UUID.matcher(value).matches();
    }

    static boolean isSequence(String value) {
        return SEQUENCE.matcher(value).matches() && Long.parseLong(value) <= Integer.MAX_VALUE;
    }

    static void check(IcsComponent event, List<IcsFault> faults) {
        Map<String, Integer> counts = new HashMap<>();
        for (IcsLine line : event.lines()) {
            counts.merge(line.name(), 1, Integer::sum);
            if (BARE.contains(line.name()) && !line.parameters().isEmpty()) {
                faults.add(new IcsFault(5, line.name() + " with parameters"));
            }
        }
        counts(counts, faults);
        words(event, faults);
        stamps(event, faults);
        times(event, faults);
        texts(event, faults);
    }

    private static void counts(Map<String, Integer> counts, List<IcsFault> faults) {
        for (String property : List.of("UID", "DTSTAMP", "DTSTART")) {
            if (counts.getOrDefault(property, 0) != 1) faults.add(new IcsFault(12, property + " must occur once"));
        }
        boolean durationToo = counts.containsKey("DURATION");
        if (counts.getOrDefault("DTEND", 0) != 1 || durationToo) {
            faults.add(new IcsFault(16, "need DTEND once and no DURATION"));
        }
        for (String property : AT_MOST_ONCE) {
            if (counts.getOrDefault(property, 0) > 1) faults.add(new IcsFault(29, property + " more than once"));
        }
        for (String property : UNWANTED) {
            if (counts.containsKey(property)) faults.add(new IcsFault(31, property));
        }
        for (String property : RECURRING) {
            if (counts.containsKey(property)) faults.add(new IcsFault(24, property));
        }
        if (counts.containsKey("ORGANIZER") || counts.containsKey("ATTENDEE")) {
            faults.add(new IcsFault(10, "ORGANIZER or ATTENDEE"));
        }
    }

    private static void words(IcsComponent event, List<IcsFault> faults) {
        if (!isLowerCaseUuid(event.value("UID"))) faults.add(new IcsFault(14, "UID " + event.value("UID")));
        if (!isSequence(event.value("SEQUENCE"))) {
            faults.add(new IcsFault(25, "SEQUENCE " + event.value("SEQUENCE")));
        }
        String status = event.value("STATUS");
        if (!Set.of("TENTATIVE", "CONFIRMED", "CANCELLED").contains(status)) {
            faults.add(new IcsFault(26, "STATUS " + status));
        }
        if (!Set.of("OPAQUE", "TRANSPARENT").contains(event.value("TRANSP"))) {
            faults.add(new IcsFault(27, "TRANSP " + event.value("TRANSP")));
        }
        if (status.equals("CANCELLED") && event.value("TRANSP").equals("OPAQUE")) {
            faults.add(new IcsFault(27, "cancelled but opaque"));
        }
        event.first("COLOR")
                .filter(line -> !CssColour.isName(line.value()))
                .ifPresent(line -> faults.add(new IcsFault(28, "COLOR " + line.value())));
        String first = event.value("CATEGORIES");
        if (!first.equals(IcsEvents.CATEGORY) && !first.startsWith(IcsEvents.CATEGORY + ",")) {
            faults.add(new IcsFault(30, "CATEGORIES " + first));
        }
    }

    private static void stamps(IcsComponent event, List<IcsFault> faults) {
        for (String property : List.of("DTSTAMP", "CREATED", "LAST-MODIFIED")) {
            Optional<IcsLine> line = event.first(property);
            boolean utc = line.flatMap(found -> IcsTimes.utc(found.value())).isPresent();
            if (line.isPresent() && !utc) faults.add(new IcsFault(15, property + " not in UTC"));
        }
        Optional<Instant> created = IcsTimes.utc(event.value("CREATED"));
        Optional<Instant> modified = IcsTimes.utc(event.value("LAST-MODIFIED"));
        if (created.isEmpty() || modified.isEmpty()) {
            faults.add(new IcsFault(15, "need CREATED and LAST-MODIFIED"));
        } else if (created.get().isAfter(modified.get())) {
            faults.add(new IcsFault(15, "CREATED after LAST-MODIFIED"));
        }
        if (!event.value("DTSTAMP").equals(event.value("LAST-MODIFIED"))) {
            faults.add(new IcsFault(15, "DTSTAMP differs from LAST-MODIFIED"));
        }
    }

    private static void times(IcsComponent event, List<IcsFault> faults) {
        TimeForm start = TimeForm.of(event.first("DTSTART"));
        TimeForm end = TimeForm.of(event.first("DTEND"));
        for (TimeForm form : List.of(start, end)) form.faults().forEach(faults::add);
        if (!start.kind().equals(end.kind())) faults.add(new IcsFault(17, "DTSTART and DTEND in different forms"));
        if (start.comparable().compareTo(end.comparable()) >= 0) {
            faults.add(new IcsFault(17, "DTEND must be after DTSTART"));
        }
    }

    private static void texts(IcsComponent event, List<IcsFault> faults) {
        for (IcsLine line : event.lines()) {
            boolean text = line.name().equals("SUMMARY") || line.name().equals("DESCRIPTION");
            if (text && !TextForm.isEscaped(line.value()))
                faults.add(new IcsFault(6, "bare , ; or \\ in " + line.name()));
        }
        if (event.value("SUMMARY").isBlank()) faults.add(new IcsFault(6, "no SUMMARY"));
    }
}
