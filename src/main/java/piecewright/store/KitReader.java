package piecewright.store;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import piecewright.house.Heater;
import piecewright.house.InsulatedBox;
import piecewright.house.Kit;
import piecewright.house.Scale;
import piecewright.house.Trays;
import piecewright.house.Vessel;
import piecewright.process.couch.WaterTest;
import piecewright.quantity.TemperatureRange;

/** Reads the kit of a household; every item stands in a named place and has a name of its own. */
final class KitReader {
    private final List<String> places;
    private final Set<String> names = new HashSet<>();

    private KitReader(List<String> places) {
        this.places = places;
    }

    static Kit kit(JsonBlock block, List<String> places) throws StoreException {
        block.onlyKeys("vessels", "trays", "boxes", "heaters", "scale");
        KitReader reader = new KitReader(places);
        List<Vessel> vessels = new ArrayList<>();
        for (JsonBlock item : block.blocks("vessels")) vessels.add(reader.vessel(item));
        List<Trays> trays = new ArrayList<>();
        for (JsonBlock item : block.blocks("trays")) trays.add(reader.trays(item));
        List<InsulatedBox> boxes = new ArrayList<>();
        for (JsonBlock item : block.blocks("boxes")) boxes.add(reader.box(item));
        List<Heater> heaters = new ArrayList<>();
        for (JsonBlock item : block.blocks("heaters")) heaters.add(reader.heater(item));
        Scale scale = scale(block.block("scale"));
        return new Kit(vessels, trays, boxes, heaters, scale);
    }

    private Vessel vessel(JsonBlock block) throws StoreException {
        block.onlyKeys("name", "place", "volumeL");
        String name = name(block);
        String place = place(block);
        double volumeL = block.number("volumeL", 0.5, 1000);
        return block.make(() -> new Vessel(name, place, volumeL));
    }

    private Trays trays(JsonBlock block) throws StoreException {
        block.onlyKeys("name", "place", "count", "areaM2");
        String name = name(block);
        String place = place(block);
        int count = block.whole("count", 1, 100);
        double areaM2 = block.number("areaM2", 0.01, 100);
        return block.make(() -> new Trays(name, place, count, areaM2));
    }

    private InsulatedBox box(JsonBlock block) throws StoreException {
        block.onlyKeys("name", "place", "volumeL", "lossWPerK", "waterTest");
        String name = name(block);
        String place = place(block);
        double volumeL = block.number("volumeL", 1, 1000);
        OptionalDouble known = block.optionalNumber("lossWPerK", 0.01, 20);
        Optional<JsonBlock> test = block.optionalBlock("waterTest");
        OptionalDouble lossWPerK = known.isPresent() || test.isEmpty() ? known : OptionalDouble.of(tested(test.get()));
        return block.make(() -> new InsulatedBox(name, place, volumeL, lossWPerK));
    }

    private static double tested(JsonBlock block) throws StoreException {
        block.onlyKeys("waterL", "startC", "endC", "roomC", "hours");
        double waterL = block.number("waterL", 1, 100);
        double startC = block.number("startC", 25, 90);
        double endC = block.number("endC", 0, 90);
        double roomC = block.number("roomC", -20, 40);
        double hours = block.number("hours", 1, 48);
        WaterTest test = block.make(() -> new WaterTest(waterL, startC, endC, roomC, hours));
        return test.lossWPerK();
    }

    private Heater heater(JsonBlock block) throws StoreException {
        block.onlyKeys(
                "name",
                "place",
                "holdsC",
                "airFlowM3PerHour",
                "flowMeasured",
                "powerW",
                "lossWPerK",
                "openFlame",
                "trayAreaM2",
                "holdsSetPoint",
                "rampsItself",
                "safeUnattended",
                "thermostatErrorK",
                "dialOffsetK");
        String name = name(block);
        String place = place(block);
        Heater.HotAir air = air(block);
        double trayAreaM2 = block.number("trayAreaM2", 0.01, 100);
        Heater.HeatControl control = control(block);
        return block.make(() -> new Heater(name, place, air, trayAreaM2, control));
    }

    private static Heater.HotAir air(JsonBlock block) throws StoreException {
        double[] holdsC = block.pair("holdsC", 0, 250);
        double airFlowM3PerHour = block.number("airFlowM3PerHour", 0.1, 10_000);
        boolean flowMeasured = block.has("flowMeasured") && block.trueOrFalse("flowMeasured");
        double powerW = block.number("powerW", 10, 50_000);
        double lossWPerK = block.number("lossWPerK", 0, 200);
        boolean openFlame = block.has("openFlame") && block.trueOrFalse("openFlame");
        return block.make(() -> new Heater.HotAir(
                new TemperatureRange(holdsC[0], holdsC[1]),
                airFlowM3PerHour,
                flowMeasured,
                powerW,
                lossWPerK,
                openFlame));
    }

    private static Heater.HeatControl control(JsonBlock block) throws StoreException {
        boolean holds = block.trueOrFalse("holdsSetPoint");
        boolean ramps = block.trueOrFalse("rampsItself");
        boolean safe = block.trueOrFalse("safeUnattended");
        double thermostatErrorK = block.number("thermostatErrorK", 0, 50);
        double dialOffsetK = block.optionalNumber("dialOffsetK", -60, 60).orElse(0);
        return block.make(() -> new Heater.HeatControl(holds, ramps, safe, thermostatErrorK, dialOffsetK));
    }

    private static Scale scale(JsonBlock block) throws StoreException {
        block.onlyKeys("stepG", "capacityKg");
        double stepG = block.number("stepG", 0.001, 1000);
        double capacityKg = block.number("capacityKg", 0.1, 1000);
        return block.make(() -> new Scale(stepG, capacityKg));
    }

    private String name(JsonBlock block) throws StoreException {
        String name = block.text("name");
        if (!names.add(name)) throw block.refused("name", "is taken by another item of the kit; choose another name");
        return name;
    }

    private String place(JsonBlock block) throws StoreException {
        String place = block.text("place");
        if (!places.contains(place)) {
            throw block.refused("place", "is not one of the house's places; " + Nearest.hint(place, places));
        }
        return place;
    }
}
