package piecewright.campaign;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import tools.jackson.databind.ObjectMapper;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.ObjectNode;

/** A made-up household: where, who, when, with what; as files a person could have written. */
final class Homestead {
    private static final ObjectMapper JSON = new ObjectMapper();

    private final Dice dice;
    private final ObjectNode house = JSON.createObjectNode();
    private final boolean us;
    private final String zone;

    Homestead(Dice dice) {
        this.dice = dice;
        this.us = dice.once(0.35);
        this.zone = us
                ? dice.one("America/Chicago", "America/Denver", "America/St_Johns")
                : dice.one("Europe/Berlin", "Europe/London", "Europe/Oslo", "Australia/Adelaide", "Asia/Kolkata");
        house.put("format", 1).put("name", "a made-up house").put("timeZone", zone);
        places();
        house.put("steepWaterC", dice.from(5, 17));
        new Residents(dice).live(house);
        kit();
    }

    /** Units and language of those who live there. */
    List<String> manners() {
        if (us) return List.of("--units", "us", "--locale", "en-US");
        if (zone.equals("Europe/Berlin")) return List.of("--units", "metric", "--locale", "de-DE");
        return List.of("--units", "metric", "--locale", "en-GB");
    }

    boolean us() {
        return us;
    }

    char decimalSign() {
        return zone.equals("Europe/Berlin") ? ',' : '.';
    }

    void write(Path file) {
        try {
            Files.createDirectories(file.getParent());
            Files.writeString(file, JSON.writeValueAsString(house));
        } catch (IOException failed) {
            throw new UncheckedIOException(failed);
        }
    }

    private void places() {
        ArrayNode places = house.putArray("places");
        int lowC = dice.one(-6, 0, 3, 7, 9, 11, 12);
        place(places, "garage", dice.one("garage", "shed", "cellar"), lowC, lowC + dice.from(1, 6));
        int roomC = dice.one(16, 17, 19, 23, 27);
        place(places, "room", "heated room", roomC, roomC + dice.from(1, 4));
        if (dice.once(0.3)) {
            ObjectNode fridge = places.addObject().put("name", "fridge").put("kind", "fridge");
            fridge.putObject("air").put("constantC", us ? "55 F" : "13 C");
        }
    }

    private static void place(ArrayNode places, String name, String kind, int lowC, int highC) {
        ObjectNode place = places.addObject().put("name", name).put("kind", kind);
        place.putObject("air").put("lowC", lowC).put("highC", highC);
    }

    private String where() {
        return dice.of(List.of("garage", "garage", "room"));
    }

    private void kit() {
        ObjectNode kit = house.putObject("kit");
        ArrayNode vessels = kit.putArray("vessels");
        for (int i = dice.from(1, 3); i > 0; i--) {
            vessels.addObject().put("name", "tub " + i).put("place", where()).put("volumeL", dice.from(18, 60));
        }
        ArrayNode trays = kit.putArray("trays");
        for (int i = dice.from(1, 2); i > 0; i--) {
            ObjectNode one = trays.addObject().put("name", "trays " + i).put("place", where());
            one.put("count", dice.from(1, 4)).put("areaM2", dice.from(2, 6) / 10.0);
        }
        ArrayNode boxes = kit.putArray("boxes");
        if (dice.once(0.6)) {
            boxes.addObject().put("name", "cooler").put("place", "room").put("volumeL", dice.from(30, 80));
        }
        heaters(kit.putArray("heaters"));
        kit.putObject("scale").put("stepG", dice.one(1, 5, 10, 20, 100)).put("capacityKg", dice.one(10, 20, 30));
    }

    private void heaters(ArrayNode heaters) {
        boolean safe = dice.once(0.5);
        ObjectNode kiln = heater(heaters, "box kiln", 25, dice.one(85, 95, 110), safe);
        kiln.put("airFlowM3PerHour", dice.from(12, 45)).put("powerW", dice.from(8, 24) * 100);
        kiln.put("lossWPerK", dice.from(10, 40) / 10.0).put("rampsItself", safe && dice.once(0.4));
        if (dice.once(0.6)) {
            ObjectNode oven = heater(heaters, "oven", 50, dice.one(120, 240, 250), dice.once(0.2));
            oven.put("airFlowM3PerHour", dice.from(4, 14)).put("powerW", 2300).put("lossWPerK", 6);
            oven.put("rampsItself", false);
        }
    }

    private ObjectNode heater(ArrayNode heaters, String name, int fromC, int untilC, boolean safe) {
        ObjectNode heater = heaters.addObject().put("name", name).put("place", where());
        heater.putArray("holdsC").add(fromC).add(untilC);
        heater.put("trayAreaM2", dice.from(4, 11) / 10.0).put("holdsSetPoint", true);
        return heater.put("safeUnattended", safe).put("thermostatErrorK", dice.from(1, 6));
    }
}
