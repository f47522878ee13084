package piecewright.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.stream.LongStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import piecewright.house.AirTemperature;
import piecewright.house.Heater;
import piecewright.house.House;
import piecewright.house.InsulatedBox;
import piecewright.house.Kit;
import piecewright.house.Place;
import piecewright.house.Trays;
import piecewright.house.Vessel;
import piecewright.quantity.TemperatureRange;

/**
 * Whatever kit a household has besides, good or bad, its wish costs no more than without it, but for a hundredth and a
 * minute, and is never refused for it.
 */
class MoreKitTest {
    private static final int HOUSEHOLDS = Integer.getInteger("piecewright.kits", 14);

    private static final Place FROSTY = new Place("icy barn", new AirTemperature.Daily(-2, 3), 0.9);
    private static final Place HOT = new Place("boiler room", new AirTemperature.Daily(25, 29), 0.4);

    private static double cost(PlanRequest request) {
        return new Planner(ModelParameters.defaults())
                .plan(request)
                .match(planned -> planned.plan().costMinutes(), notPossible -> Double.POSITIVE_INFINITY);
    }

    /** The household with one thing more, of each kind one that tempts and one that is of no use. */
    private static Map<String, House> more(House house) {
        String home = house.kit().vessels().get(0).place();
        Map<String, House> more = new LinkedHashMap<>();
        more.put("a large tub where it freezes", vessel(house, new Vessel("barrel", FROSTY.name(), 200)));
        more.put("a large tub at home", vessel(house, new Vessel("barrel", home, 200)));
        more.put("a bucket where it is hot", vessel(house, new Vessel("pail", HOT.name(), 30)));
        more.put("trays where it freezes", trays(house, new Trays("floor", FROSTY.name(), 1, 3)));
        more.put("trays where it is hot", trays(house, new Trays("racks", HOT.name(), 1, 3)));
        more.put("trays at home", trays(house, new Trays("more", home, 2, 0.3)));
        more.put(
                "a box where it freezes",
                box(house, new InsulatedBox("cold box", FROSTY.name(), 90, OptionalDouble.of(0.4))));
        more.put("a kiln where it freezes", heater(house, heater("barn kiln", FROSTY.name(), 90, 60, 3, true)));
        more.put("an oven", heater(house, heater("kitchen oven", HOT.name(), 230, 6, 0.35, false)));
        return more;
    }

    private static Heater heater(
            String name, String place, double hottestC, double m3PerHour, double trayM2, boolean holds) {
        return new Heater(
                name,
                place,
                new Heater.HotAir(new TemperatureRange(25, hottestC), m3PerHour, false, 2500, 5),
                trayM2,
                new Heater.HeatControl(holds, false, holds, 4));
    }

    private static House with(House house, Kit kit) {
        List<Place> places =
                Stream.concat(house.places().stream(), Stream.of(FROSTY, HOT)).toList();
        return new House(house.name(), house.zone(), places, house.steepWaterC(), house.people(), house.nights(), kit);
    }

    private static <T> List<T> and(List<T> some, T one) {
        List<T> more = new ArrayList<>(some);
        more.add(one);
        return more;
    }

    private static House vessel(House house, Vessel vessel) {
        Kit kit = house.kit();
        return with(house, new Kit(and(kit.vessels(), vessel), kit.trays(), kit.boxes(), kit.heaters(), kit.scale()));
    }

    private static House trays(House house, Trays trays) {
        Kit kit = house.kit();
        return with(house, new Kit(kit.vessels(), and(kit.trays(), trays), kit.boxes(), kit.heaters(), kit.scale()));
    }

    private static House box(House house, InsulatedBox box) {
        Kit kit = house.kit();
        return with(house, new Kit(kit.vessels(), kit.trays(), and(kit.boxes(), box), kit.heaters(), kit.scale()));
    }

    private static House heater(House house, Heater heater) {
        Kit kit = house.kit();
        return with(house, new Kit(kit.vessels(), kit.trays(), kit.boxes(), and(kit.heaters(), heater), kit.scale()));
    }

    @Test
    void moreKitNeverCostsMore() {
        List<String> dearer = new ArrayList<>();
        long planned = LongStream.range(0, HOUSEHOLDS)
                .filter(seed -> {
                    PlanRequest request = Styled.request(seed);
                    double without = cost(request);
                    more(request.house()).forEach((what, house) -> {
                        double with = cost(request.withHouse(house));
                        if (with > 1.01 * without + 1) {
                            dearer.add(seed + " " + request.style().key() + " with " + what + ": " + without + " → "
                                    + with);
                        }
                    });
                    return without < Double.POSITIVE_INFINITY;
                })
                .count();
        assertEquals(List.of(), dearer);
        assertTrue(planned > HOUSEHOLDS / 2, planned + " of " + HOUSEHOLDS);
    }
}
