package piecewright.calendar;

import java.time.DateTimeException;
import java.time.LocalDateTime;
import java.time.ZoneId;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;

/** Checks 20 and 21: local times, should a file have any. Files of ours have none. */
final class ZoneChecks {
    private static final Pattern OFFSET = Pattern.compile("[+-][0-9]{4}([0-9]{2})?");
    private static final Pattern LOCAL_UNTIL = Pattern.compile("UNTIL=[0-9]{8}T[0-9]{6}(?!Z)");

    private ZoneChecks() {}

    static void check(IcsComponent calendar, List<IcsFault> faults) {
        Set<String> defined = new HashSet<>();
        for (IcsComponent zone : calendar.inside("VTIMEZONE")) {
            defined.add(zone.value("TZID"));
            if (zone.inside().isEmpty()) faults.add(new IcsFault(20, "VTIMEZONE without observance"));
            zone.inside().forEach(observance -> observance(observance, faults));
        }
        Set<String> used = new HashSet<>();
        for (IcsComponent event : calendar.inside("VEVENT")) {
            for (IcsLine line : event.lines()) {
                line.parameter("TZID").ifPresent(id -> {
                    used.add(id);
                    if (!defined.contains(id)) faults.add(new IcsFault(20, "TZID without VTIMEZONE: " + id));
                    unambiguous(id, line, faults);
                });
            }
        }
        for (String id : defined) {
            if (!used.contains(id)) faults.add(new IcsFault(20, "VTIMEZONE that nothing uses: " + id));
        }
    }

    private static void observance(IcsComponent observance, List<IcsFault> faults) {
        if (IcsTimes.local(observance.value("DTSTART")).isEmpty()) {
            faults.add(new IcsFault(20, "observance must start at a local time"));
        }
        for (String property : List.of("TZOFFSETFROM", "TZOFFSETTO")) {
            if (!OFFSET.matcher(observance.value(property)).matches()) {
                faults.add(new IcsFault(20, property + " " + observance.value(property)));
            }
        }
        if (LOCAL_UNTIL.matcher(observance.value("RRULE")).find()) {
            faults.add(new IcsFault(20, "UNTIL of an observance must be UTC"));
        }
    }

    private static void unambiguous(String id, IcsLine line, List<IcsFault> faults) {
        Optional<LocalDateTime> local = IcsTimes.local(line.value());
        if (local.isEmpty()) return;
        try {
            int offsets = ZoneId.of(id).getRules().getValidOffsets(local.get()).size();
            if (offsets != 1) faults.add(new IcsFault(21, line.value() + " occurs " + offsets + " times in " + id));
        } catch (DateTimeException unknown) {
            faults.add(new IcsFault(20, "unknown zone " + id));
        }
    }
}
