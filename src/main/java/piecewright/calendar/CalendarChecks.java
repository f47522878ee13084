package piecewright.calendar;

import java.util.HashSet;
import java.util.List;
import java.util.Set;

/** Checks 7 to 11 and 13: the calendar object as a whole. */
final class CalendarChecks {
    private CalendarChecks() {}

    static void check(IcsComponent calendar, List<IcsFault> faults) {
        if (calendar.count("VERSION") != 1 || !calendar.value("VERSION").equals("2.0")) {
            faults.add(new IcsFault(7, "VERSION must be 2.0, once"));
        }
        if (calendar.count("PRODID") != 1 || calendar.value("PRODID").isBlank()) {
            faults.add(new IcsFault(7, "PRODID must occur once"));
        }
        int scales = calendar.count("CALSCALE");
        if (scales > 1 || scales == 1 && !calendar.value("CALSCALE").equals("GREGORIAN")) {
            faults.add(new IcsFault(7, "CALSCALE must be GREGORIAN or absent"));
        }
        if (calendar.inside("VEVENT").isEmpty()) faults.add(new IcsFault(8, "no event"));
        for (IcsComponent inside : calendar.inside()) {
            if (!inside.name().equals("VEVENT") && !inside.name().equals("VTIMEZONE")) {
                faults.add(new IcsFault(8, "unexpected component " + inside.name()));
            }
        }
        if (calendar.count("METHOD") > 0) faults.add(new IcsFault(9, "METHOD"));
        name(calendar, faults);
        refresh(calendar, faults);
        uids(calendar, faults);
    }

    private static void name(IcsComponent calendar, List<IcsFault> faults) {
        boolean once = calendar.count("NAME") <= 1 && calendar.count("X-WR-CALNAME") <= 1;
        if (!once || !calendar.value("NAME").equals(calendar.value("X-WR-CALNAME"))) {
            faults.add(new IcsFault(11, "NAME and X-WR-CALNAME must be equal"));
        }
    }

    private static void refresh(IcsComponent calendar, List<IcsFault> faults) {
        calendar.first("REFRESH-INTERVAL").ifPresent(line -> {
            boolean typed = line.parameter("VALUE").filter("DURATION"::equals).isPresent();
            boolean positive = line.value().matches("P(?=.*[1-9])[0-9TWDHMS]+");
            if (!typed || !positive) faults.add(new IcsFault(11, "REFRESH-INTERVAL " + line.value()));
        });
    }

    private static void uids(IcsComponent calendar, List<IcsFault> faults) {
        Set<String> seen = new HashSet<>();
        for (IcsComponent event : calendar.inside("VEVENT")) {
            String uid = event.value("UID");
            if (!seen.add(uid)) faults.add(new IcsFault(13, "UID used twice: " + uid));
        }
    }
}
