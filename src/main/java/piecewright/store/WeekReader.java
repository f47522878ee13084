package piecewright.store;

import java.time.DayOfWeek;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import piecewright.house.LocalHours;
import piecewright.house.Person;

/** Reads a person's hours: "monday", "monday-friday", "weekdays", "weekend" or "every day", and dated exceptions. */
final class WeekReader {
    private static final List<DayOfWeek> DAYS = List.of(DayOfWeek.values());

    private WeekReader() {}

    static Person person(JsonBlock block) throws StoreException {
        block.onlyKeys("name", "week", "exceptions");
        String name = block.text("name");
        Map<DayOfWeek, List<LocalHours>> week = week(block.block("week"));
        Map<LocalDate, List<LocalHours>> exceptions = exceptions(block);
        return block.make(() -> new Person(name, week, exceptions));
    }

    private static Map<DayOfWeek, List<LocalHours>> week(JsonBlock block) throws StoreException {
        Map<DayOfWeek, List<LocalHours>> week = new EnumMap<>(DayOfWeek.class);
        for (String key : block.keys()) {
            List<LocalHours> hours = LocalTimes.hours(block, key);
            for (DayOfWeek day : days(block, key)) {
                if (week.put(day, hours) != null) {
                    throw block.refused(key, "gives hours of " + word(day) + " a second time; name each day once");
                }
            }
        }
        return week;
    }

    private static List<DayOfWeek> days(JsonBlock block, String key) throws StoreException {
        switch (key) {
            case "every day":
                return DAYS;
            case "weekdays":
                return DAYS.subList(0, 5);
            case "weekend":
                return DAYS.subList(5, 7);
            default:
                String[] ends = key.split("-", 2);
                int from = day(block, key, ends[0]);
                int until = ends.length == 1 ? from : day(block, key, ends[1]);
                List<DayOfWeek> days = new ArrayList<>();
                for (int at = from; ; at = (at + 1) % 7) {
                    days.add(DAYS.get(at));
                    if (at == until) return days;
                }
        }
    }

    private static int day(JsonBlock block, String key, String word) throws StoreException {
        for (DayOfWeek day : DAYS) if (word(day).equals(word)) return day.ordinal();
        List<String> words = new ArrayList<>(DAYS.stream().map(WeekReader::word).toList());
        words.addAll(Arrays.asList("monday-friday", "weekdays", "weekend", "every day"));
        throw block.refused(key, "is not a day; " + Nearest.hint(word, words));
    }

    private static String word(DayOfWeek day) {
        return day.name().toLowerCase(Locale.ROOT);
    }

    private static Map<LocalDate, List<LocalHours>> exceptions(JsonBlock person) throws StoreException {
        Map<LocalDate, List<LocalHours>> exceptions = new HashMap<>();
        for (JsonBlock block : person.blocks("exceptions")) {
            block.onlyKeys("date", "hours");
            LocalDate date = LocalTimes.date(block, "date");
            if (exceptions.put(date, LocalTimes.hours(block, "hours")) != null) {
                throw block.refused("date", date + " stands there twice; keep one");
            }
        }
        return exceptions;
    }
}
