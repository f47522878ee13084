package piecewright.house;

import java.time.ZoneId;
import java.util.List;
import java.util.Objects;

/**
 * A household: its clock, places, people and kit.
 *
 * @param steepWaterC temperature of the water as it runs into the vessel, °C, [0, 40]
 */
public record House(
        String name,
        ZoneId zone,
        List<Place> places,
        double steepWaterC,
        List<Person> people,
        NightActs nights,
        Kit kit) {
    public House {
        Objects.requireNonNull(name);
        Objects.requireNonNull(zone);
        places = List.copyOf(places);
        people = List.copyOf(people);
        Objects.requireNonNull(nights);
        Objects.requireNonNull(kit);
        if (!(steepWaterC >= 0 && steepWaterC <= 40)) {
            throw new IllegalArgumentException("steepWaterC must be in [0, 40]: " + steepWaterC);
        }
    }

    /** The same house with other kit. */
    public House withKit(Kit changed) {
        return new House(name, zone, places, steepWaterC, people, nights, changed);
    }

    /** The same house with other water. */
    public House withSteepWaterC(double changedC) {
        return new House(name, zone, places, changedC, people, nights, kit);
    }

    /** The same house with other people in it. */
    public House withPeople(List<Person> changed) {
        return new House(name, zone, places, steepWaterC, changed, nights, kit);
    }

    /** The same house with other nights. */
    public House withNights(NightActs changed) {
        return new House(name, zone, places, steepWaterC, people, changed, kit);
    }

    /** The place of that name; throws IllegalArgumentException when the house has none such. */
    public Place place(String placeName) {
        return places.stream()
                .filter(place -> place.name().equals(placeName))
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException("no place named \"" + placeName + "\""));
    }
}
