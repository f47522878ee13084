package piecewright.calendar;

import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** Checks 32 to 36 on the alarms of one event. */
final class AlarmChecks {
    private AlarmChecks() {}

    static void check(IcsComponent event, List<IcsFault> faults) {
        for (IcsComponent inside : event.inside()) {
            if (!inside.name().equals("VALARM")) faults.add(new IcsFault(32, inside.name() + " inside an event"));
            if (!inside.inside().isEmpty()) faults.add(new IcsFault(32, "component inside an alarm"));
        }
        List<IcsComponent> alarms = event.inside("VALARM");
        Set<String> triggers = new HashSet<>();
        for (IcsComponent alarm : alarms) {
            alarm(event, alarm, faults);
            if (!triggers.add(alarm.value("TRIGGER"))) faults.add(new IcsFault(35, "two equal alarms"));
        }
        if (alarms.size() > 2) faults.add(new IcsFault(35, alarms.size() + " alarms"));
        boolean silent = event.value("STATUS").equals("CANCELLED")
                || event.value("TRANSP").equals("TRANSPARENT");
        if (silent && !alarms.isEmpty()) faults.add(new IcsFault(35, "alarm on a cancelled or passive event"));
    }

    private static void alarm(IcsComponent event, IcsComponent alarm, List<IcsFault> faults) {
        for (String property : List.of("ACTION", "TRIGGER", "DESCRIPTION")) {
            if (alarm.count(property) != 1) faults.add(new IcsFault(32, property + " must occur once in an alarm"));
        }
        if (!alarm.value("ACTION").equals("DISPLAY")) faults.add(new IcsFault(32, "ACTION " + alarm.value("ACTION")));
        if (!TextForm.isEscaped(alarm.value("DESCRIPTION"))) {
            faults.add(new IcsFault(6, "bare , ; or \\ in an alarm"));
        }
        alarm.first("TRIGGER").ifPresent(trigger -> trigger(event, trigger, faults));
        if (alarm.count("REPEAT") != alarm.count("DURATION") || alarm.count("REPEAT") > 1) {
            faults.add(new IcsFault(34, "REPEAT and DURATION only together"));
        }
        for (String property : List.of("UID", "ACKNOWLEDGED")) {
            if (alarm.count(property) > 1) faults.add(new IcsFault(36, property + " more than once in an alarm"));
        }
    }

    private static void trigger(IcsComponent event, IcsLine trigger, List<IcsFault> faults) {
        Optional<String> type = trigger.parameter("VALUE");
        if (type.filter("DATE-TIME"::equals).isPresent()) {
            if (IcsTimes.utc(trigger.value()).isEmpty()) faults.add(new IcsFault(33, "TRIGGER " + trigger.value()));
            return;
        }
        if (IcsTimes.accurate(trigger.value()).isEmpty()
                || type.filter(word -> !word.equals("DURATION")).isPresent()) {
            faults.add(new IcsFault(33, "TRIGGER " + trigger.value()));
        }
        boolean fromEnd = trigger.parameter("RELATED").filter("END"::equals).isPresent();
        if (fromEnd && event.count("DTEND") == 0) faults.add(new IcsFault(33, "TRIGGER from an end that is not there"));
    }
}
