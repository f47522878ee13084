package piecewright.desktop.house;

import java.util.List;
import piecewright.store.HouseText.Thing;

/**
 * One value of a thing of the house.
 *
 * @param key where it lies in its thing, such as "volumeL" or "holdsC/0"
 */
record HouseField(String key, Kind kind, Need need) {
    /** What can be typed. */
    enum Kind {
        NAME,
        PLACE,
        VOLUME,
        AREA,
        TEMPERATURE,
        FIGURE,
        COUNT,
        FLAG
    }

    /** Whether it may be left empty. */
    enum Need {
        NEEDED,
        OPTIONAL
    }

    static List<HouseField> of(Thing thing) {
        HouseField name = needed("name", Kind.NAME);
        HouseField place = needed("place", Kind.PLACE);
        return switch (thing) {
            case PERSON -> List.of(name);
            case PLACE -> List.of(name, optional("humidityPercent", Kind.FIGURE));
            case VESSEL -> List.of(name, place, needed("volumeL", Kind.VOLUME));
            case TRAYS -> List.of(name, place, needed("count", Kind.COUNT), needed("areaM2", Kind.AREA));
            case BOX -> List.of(name, place, needed("volumeL", Kind.VOLUME), optional("lossWPerK", Kind.FIGURE));
            case HEATER ->
                List.of(
                        name,
                        place,
                        needed("holdsC/0", Kind.TEMPERATURE),
                        needed("holdsC/1", Kind.TEMPERATURE),
                        needed("airFlowM3PerHour", Kind.FIGURE),
                        needed("powerW", Kind.FIGURE),
                        needed("lossWPerK", Kind.FIGURE),
                        needed("trayAreaM2", Kind.AREA),
                        needed("thermostatErrorK", Kind.FIGURE),
                        needed("holdsSetPoint", Kind.FLAG),
                        needed("rampsItself", Kind.FLAG),
                        needed("safeUnattended", Kind.FLAG));
        };
    }

    private static HouseField needed(String key, Kind kind) {
        return new HouseField(key, kind, Need.NEEDED);
    }

    private static HouseField optional(String key, Kind kind) {
        return new HouseField(key, kind, Need.OPTIONAL);
    }

    /** The key of its name in the wording. */
    String words() {
        return "house.field." + key.replace('/', '-');
    }
}
