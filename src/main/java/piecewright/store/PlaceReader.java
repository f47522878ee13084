package piecewright.store;

import java.nio.file.Path;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.NavigableMap;
import java.util.TreeMap;
import piecewright.house.AirTemperature;
import piecewright.house.Place;

/** Reads a place and how its air is known. */
final class PlaceReader {
    /** Relative humidity by kind of room where nobody measured it, percent. Judgement: defaults of the reference. */
    private static final Map<String, Double> HUMIDITY_PERCENT =
            Map.of("heated room", 50.0, "garage", 75.0, "shed", 75.0, "cellar", 80.0, "fridge", 70.0);

    private static final double COLDEST_C = -30;
    private static final double HOTTEST_C = 50;

    private PlaceReader() {}

    static Place place(JsonBlock block, ZoneId zone) throws StoreException {
        block.onlyKeys("name", "kind", "humidityPercent", "air");
        String name = block.text("name");
        double humidityPercent = humidityPercent(block);
        AirTemperature air = air(block.block("air"), zone);
        return block.make(() -> new Place(name, air, humidityPercent / 100));
    }

    private static double humidityPercent(JsonBlock block) throws StoreException {
        Double byKind = null;
        if (block.has("kind")) {
            String kind = block.text("kind");
            byKind = HUMIDITY_PERCENT.get(kind);
            if (byKind == null) {
                List<String> kinds = HUMIDITY_PERCENT.keySet().stream().sorted().toList();
                throw block.refused("kind", "is not a kind of room; " + Nearest.hint(kind, kinds));
            }
        }
        if (block.has("humidityPercent") || byKind == null) {
            if (!block.has("humidityPercent")) {
                throw block.refused(
                        "humidityPercent", "or \"kind\" is missing; add one, for instance \"kind\": \"garage\"");
            }
            return block.number("humidityPercent", 1, 99);
        }
        return byKind;
    }

    private static AirTemperature air(JsonBlock block, ZoneId zone) throws StoreException {
        block.onlyKeys("constantC", "lowC", "highC", "days", "loggerCsv");
        List<String> ways = new ArrayList<>();
        for (String way : List.of("constantC", "lowC", "days", "loggerCsv")) if (block.has(way)) ways.add(way);
        if (ways.size() != 1 || block.has("highC") && !block.has("lowC")) {
            throw block.refused(
                    "constantC",
                    "or \"lowC\" with \"highC\", \"days\" or \"loggerCsv\" must be given, one of them only");
        }
        return switch (ways.get(0)) {
            case "constantC" -> new AirTemperature.Constant(block.number("constantC", COLDEST_C, HOTTEST_C));
            case "lowC" -> daily(block);
            case "days" -> dated(block);
            default -> AirLogCsv.read(beside(block, block.text("loggerCsv")), zone);
        };
    }

    private static AirTemperature.Daily daily(JsonBlock block) throws StoreException {
        double lowC = block.number("lowC", COLDEST_C, HOTTEST_C);
        double highC = block.number("highC", COLDEST_C, HOTTEST_C);
        return block.make(() -> new AirTemperature.Daily(lowC, highC));
    }

    private static AirTemperature.Dated dated(JsonBlock block) throws StoreException {
        NavigableMap<LocalDate, AirTemperature.Daily> days = new TreeMap<>();
        for (JsonBlock day : block.blocks("days")) {
            day.onlyKeys("date", "lowC", "highC");
            LocalDate date = LocalTimes.date(day, "date");
            if (days.put(date, daily(day)) != null) throw day.refused("date", date + " stands there twice; keep one");
        }
        return block.make(() -> new AirTemperature.Dated(days));
    }

    private static Path beside(JsonBlock block, String name) throws StoreException {
        if (!name.matches("[\\p{L}\\p{N} ._-]+") || name.startsWith(".")) {
            throw block.refused(
                    "loggerCsv", "must be the plain name of a file in the same folder, like \"garage.csv\"");
        }
        return block.file().resolveSibling(name);
    }
}
