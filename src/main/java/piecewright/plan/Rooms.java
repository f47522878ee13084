package piecewright.plan;

import java.time.Instant;
import java.util.HashMap;
import java.util.Map;
import piecewright.house.House;
import piecewright.house.Place;
import piecewright.process.Climate;
import piecewright.process.Surroundings;

/** The air of every place of a house over one horizon. */
public final class Rooms {
    private static final int HOURS_PER_SAMPLE = 3;

    private final Map<String, Surroundings> byPlace = new HashMap<>();
    private final Instant origin;
    private final double hours;

    public Rooms(House house, Instant origin, Instant until) {
        this.origin = origin;
        this.hours = java.time.Duration.between(origin, until).toMinutes() / 60.0;
        for (Place place : house.places()) {
            byPlace.put(place.name(), Climate.of(place, house.zone(), origin, until));
        }
    }

    public Instant origin() {
        return origin;
    }

    /** The air of a place; throws IllegalArgumentException when the house has none of that name. */
    public Surroundings at(String place) {
        Surroundings air = byPlace.get(place);
        if (air == null) throw new IllegalArgumentException("no place named \"" + place + "\"");
        return air;
    }

    /** Mean air temperature of a place over the horizon, °C. */
    public double meanC(String place) {
        double sum = 0;
        int count = 0;
        for (double at = 0; at < hours; at += HOURS_PER_SAMPLE) {
            sum += at(place).airC(at);
            count++;
        }
        return sum / Math.max(1, count);
    }
}
