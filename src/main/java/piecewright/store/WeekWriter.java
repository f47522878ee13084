package piecewright.store;

import java.nio.file.Path;
import java.time.DayOfWeek;
import java.time.LocalTime;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import piecewright.house.LocalHours;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.ObjectNode;

/** Writes a person's usual week into a household's file; everything else in it stays. */
public final class WeekWriter {
    private WeekWriter() {}

    public static void write(Path file, String person, Map<DayOfWeek, List<LocalHours>> week) throws StoreException {
        ObjectNode root = JsonText.parse(file, TextFile.read(file, TextFile.SMALL_BYTES));
        ObjectNode found = null;
        if (root.get("people") instanceof ArrayNode people) {
            for (JsonNode each : people) {
                boolean named =
                        each.get("name") != null && each.get("name").asString().equals(person);
                if (named && each instanceof ObjectNode node) found = node;
            }
        }
        if (found == null) throw new StoreException(file, "has nobody of that name any more; read it again");
        ObjectNode hours = found.putObject("week");
        for (DayOfWeek day : DayOfWeek.values()) {
            List<LocalHours> ofDay = week.getOrDefault(day, List.of());
            if (ofDay.isEmpty()) continue;
            ArrayNode texts = hours.putArray(day.name().toLowerCase(Locale.ROOT));
            for (LocalHours each : ofDay) texts.add(text(each));
        }
        String changed = JsonText.write(root);
        HouseFile.parse(file, changed);
        AtomicFile.write(file, changed);
    }

    private static String text(LocalHours hours) {
        String until = hours.untilExclusive().equals(LocalTime.MIDNIGHT)
                ? "24:00"
                : hours.untilExclusive().toString();
        return hours.fromInclusive() + "-" + until;
    }
}
