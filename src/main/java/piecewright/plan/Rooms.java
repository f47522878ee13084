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

    /** The mean air of a place over the coldest day of the horizon, from whichever hour on, °C. */
    double coldestDayC(String place) {
        int perDay = 24 / HOURS_PER_SAMPLE;
        int samples = Math.max(perDay, (int) (hours / HOURS_PER_SAMPLE));
        double coldestC = Double.POSITIVE_INFINITY;
        double sum = 0;
        for (int i = 0; i < samples; i++) {
            sum += at(place).airC(i * HOURS_PER_SAMPLE);
            if (i >= perDay) sum -= at(place).airC((i - perDay) * HOURS_PER_SAMPLE);
            if (i >= perDay - 1) coldestC = Math.min(coldestC, sum / perDay);
        }
        return coldestC;
    }

    /** The warmest air of a place over the horizon, °C. */
    double warmestC(String place) {
        double warmestC = Double.NEGATIVE_INFINITY;
        for (double at = 0; at < hours; at += HOURS_PER_SAMPLE)
            warmestC = Math.max(warmestC, at(place).airC(at));
        return warmestC;
    }
}
