package piecewright.calendar;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * In which form a DTSTART or DTEND is written, and what is wrong with it: checks 17 to 19 and 23.
 *
 * @param kind UTC, DATE, FLOATING, BROKEN, or TZID with its zone
 * @param comparable text that sorts as the times do, within one kind
 */
record TimeForm(String kind, String comparable, List<IcsFault> faults) {
    static TimeForm of(Optional<IcsLine> found) {
        if (found.isEmpty()) return new TimeForm("BROKEN", "", List.of());
        IcsLine line = found.get();
        String value = line.value();
        List<IcsFault> faults = new ArrayList<>();
        Optional<String> zone = line.parameter("TZID");
        String kind = kind(value, zone);
        if (value.endsWith("Z") && zone.isPresent()) faults.add(new IcsFault(18, line.name() + " in UTC with TZID"));
        if (kind.equals("FLOATING")) faults.add(new IcsFault(19, line.name() + " floats"));
        if (kind.equals("BROKEN") || kind.equals("DATE")) {
            faults.add(new IcsFault(23, line.name() + " is no date-time: " + value));
        }
        return new TimeForm(kind, value, List.copyOf(faults));
    }

    private static String kind(String value, Optional<String> zone) {
        if (IcsTimes.utc(value).isPresent()) return "UTC";
        if (IcsTimes.local(value).isPresent())
            return zone.map(id -> "TZID " + id).orElse("FLOATING");
        return value.matches("[0-9]{8}") ? "DATE" : "BROKEN";
    }
}
