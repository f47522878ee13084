package piecewright.store;

import java.time.DateTimeException;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import piecewright.house.LocalHours;
import piecewright.text.Quoted;

/** Dates, clock times, stretches of hours and time zones of files. */
final class LocalTimes {
    private static final Pattern HOURS = Pattern.compile("([0-2][0-9]:[0-5][0-9]) ?[-–] ?([0-2][0-9]:[0-5][0-9])");

    private LocalTimes() {}

    static LocalDate date(JsonBlock block, String key) throws StoreException {
        String text = block.text(key);
        try {
            LocalDate date = LocalDate.parse(text);
            if (date.getYear() >= 1990 && date.getYear() <= 2200) return date;
        } catch (DateTimeException notADate) {
            // told below, with the years that are possible
        }
        throw block.refused(
                key, "\"" + Quoted.shortly(text) + "\" is not a day from 1990 to 2200; write it like 2031-03-19");
    }

    static LocalTime time(JsonBlock block, String key) throws StoreException {
        String text = block.text(key);
        try {
            if (text.matches("[0-9]{2}:[0-9]{2}")) return LocalTime.parse(text);
        } catch (DateTimeException notATime) {
            // told below
        }
        throw block.refused(key, "\"" + Quoted.shortly(text) + "\" is not a time; write it like 22:00");
    }

    static Instant instant(JsonBlock block, String key) throws StoreException {
        String text = block.text(key);
        try {
            return Instant.parse(text);
        } catch (DateTimeException notAnInstant) {
            throw block.refused(
                    key, "\"" + Quoted.shortly(text) + "\" is not an instant such as 2031-03-29T19:00:00Z; correct it");
        }
    }

    static ZoneId zone(JsonBlock block, String key) throws StoreException {
        String text = block.text(key);
        Set<String> zones = ZoneId.getAvailableZoneIds().stream()
                .filter(id -> id.contains("/") && !id.startsWith("Etc/") && !id.startsWith("SystemV/"))
                .collect(Collectors.toCollection(TreeSet::new));
        if (zones.contains(text) || text.equals("UTC")) return ZoneId.of(text);
        throw block.refused(
                key,
                "\"" + Quoted.shortly(text) + "\" is not a time zone; "
                        + Nearest.to(text, zones)
                                .map(near -> "did you mean \"" + near + "\"?")
                                .orElse("write it like \"Europe/Oslo\""));
    }

    /** Stretches of one day such as "06:00-07:00", in order and apart; "24:00" or "00:00" ends the day. */
    static List<LocalHours> hours(JsonBlock block, String key) throws StoreException {
        List<LocalHours> hours = new ArrayList<>();
        for (String text : block.texts(key)) hours.add(stretch(block, key, text));
        hours.sort(Comparator.comparing(LocalHours::fromInclusive));
        for (int i = 1; i < hours.size(); i++) {
            LocalTime ends = hours.get(i - 1).untilExclusive();
            if (ends.equals(LocalTime.MIDNIGHT) || ends.isAfter(hours.get(i).fromInclusive())) {
                throw block.refused(key, "has hours that overlap; join or part them");
            }
        }
        return List.copyOf(hours);
    }

    private static LocalHours stretch(JsonBlock block, String key, String text) throws StoreException {
        String shown = "\"" + Quoted.shortly(text) + "\" ";
        Matcher matcher = HOURS.matcher(text);
        if (!matcher.matches())
            throw block.refused(key, shown + "is not a stretch of hours; write it like 17:45-22:30");
        try {
            LocalTime from = LocalTime.parse(matcher.group(1));
            LocalTime until = matcher.group(2).equals("24:00") ? LocalTime.MIDNIGHT : LocalTime.parse(matcher.group(2));
            return new LocalHours(from, until);
        } catch (DateTimeException notATime) {
            throw block.refused(key, shown + "is not a stretch of hours; hours go from 00:00 to 24:00");
        } catch (IllegalArgumentException backwards) {
            throw block.refused(key, shown + "ends before it starts; write hours past midnight as two stretches");
        }
    }
}
