package piecewright.oracle;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.ObjectMapper;

/** Reads a house file by itself, as its format is written down, and nothing else of the program. */
public final class HouseText {
    private static final int MINUTES_OF_A_DAY = 1440;

    private HouseText() {}

    static JsonNode json(Path file) {
        try {
            return new ObjectMapper().readTree(Files.readString(file));
        } catch (IOException failed) {
            throw new UncheckedIOException(failed);
        }
    }

    public static Home home(Path file) {
        return home(json(file));
    }

    static Home home(JsonNode house) {
        List<Home.Somebody> people = new ArrayList<>();
        house.path("people").forEach(person -> people.add(somebody(person)));
        Map<String, Home.Stove> stoves = new HashMap<>();
        house.at("/kit/heaters")
                .forEach(heater -> stoves.put(
                        heater.get("name").stringValue(),
                        new Home.Stove(
                                heater.path("safeUnattended").booleanValue(false),
                                heater.path("holdsSetPoint").booleanValue(false))));
        JsonNode night = house.path("nightActs");
        Home.Nights nights = night.isObject()
                ? new Home.Nights(
                        night.get("most").intValue(),
                        minute(night.get("from").stringValue()),
                        minute(night.get("until").stringValue()))
                : new Home.Nights(0, 0, 0);
        return new Home(ZoneId.of(house.get("timeZone").stringValue()), people, nights, stoves);
    }

    private static Home.Somebody somebody(JsonNode person) {
        Map<DayOfWeek, List<Home.Span>> week = new EnumMap<>(DayOfWeek.class);
        for (Map.Entry<String, JsonNode> hours : person.get("week").properties()) {
            days(hours.getKey()).forEach(day -> week.put(day, spans(hours.getValue())));
        }
        Map<LocalDate, List<Home.Span>> dated = new HashMap<>();
        person.path("exceptions")
                .forEach(day -> dated.put(LocalDate.parse(day.get("date").stringValue()), spans(day.get("hours"))));
        return new Home.Somebody(person.get("name").stringValue(), week, dated);
    }

    private static List<DayOfWeek> days(String key) {
        List<DayOfWeek> all = List.of(DayOfWeek.values());
        if (key.equals("every day")) return all;
        if (key.equals("weekdays")) return all.subList(0, 5);
        if (key.equals("weekend")) return all.subList(5, 7);
        String[] ends = key.split("-");
        List<DayOfWeek> days = new ArrayList<>();
        DayOfWeek last = day(ends[ends.length - 1]);
        for (DayOfWeek day = day(ends[0]); ; day = day.plus(1)) {
            days.add(day);
            if (day == last) return days;
        }
    }

    private static DayOfWeek day(String word) {
        return DayOfWeek.valueOf(word.toUpperCase(Locale.ROOT));
    }

    private static List<Home.Span> spans(JsonNode hours) {
        List<Home.Span> spans = new ArrayList<>();
        for (JsonNode one : hours) {
            String[] ends = one.stringValue().split(" ?[-–] ?");
            int until = minute(ends[1]);
            spans.add(new Home.Span(minute(ends[0]), until == 0 ? MINUTES_OF_A_DAY : until));
        }
        return spans;
    }

    private static int minute(String clock) {
        return Integer.parseInt(clock.substring(0, 2)) * 60 + Integer.parseInt(clock.substring(3, 5));
    }

    /** What a style's file asks of the grain. */
    public static Norms norms(String style) {
        JsonNode file = json(Path.of("schedules", style + ".json"));
        return new Norms(
                file.at("/growth/warmestGrainC").doubleValue(),
                file.at("/growth/acceptableAcrospireFraction/0").doubleValue(),
                file.at("/steep/acceptableMoistureWetBasisFraction/0").doubleValue());
    }
}
