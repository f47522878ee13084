package piecewright.truth;

import java.time.Instant;
import java.time.ZonedDateTime;
import java.util.HashMap;
import java.util.Map;
import java.util.SplittableRandom;
import piecewright.house.AirTemperature;
import piecewright.house.Heater;
import piecewright.house.House;
import piecewright.house.InsulatedBox;
import piecewright.house.Place;
import piecewright.house.Trays;
import piecewright.house.Vessel;

/** The air of a house: each day as told, warmest at three, and off by a walk of 0.7 K a day (1 K on the first). */
final class Air {
    private static final double FIRST_DAY_K = 0.8;
    private static final double DAY_K = 0.7;

    private final House house;
    private final Map<Long, Double> offK = new HashMap<>();
    private final Instant from;
    private final SplittableRandom random;
    private double walk;

    Air(House house, Instant from, double firstSds, SplittableRandom random) {
        this.house = house;
        this.from = from;
        this.random = random;
        this.walk = FIRST_DAY_K * firstSds;
    }

    /** The place itself, or the place of the vessel, trays, box or heater of that name. */
    Place place(String name) {
        for (Place place : house.places()) if (place.name().equals(name)) return place;
        for (Vessel one : house.kit().vessels()) if (one.name().equals(name)) return house.place(one.place());
        for (Trays one : house.kit().trays()) if (one.name().equals(name)) return house.place(one.place());
        for (InsulatedBox one : house.kit().boxes()) if (one.name().equals(name)) return house.place(one.place());
        for (Heater one : house.kit().heaters()) if (one.name().equals(name)) return house.place(one.place());
        throw new AssertionError("no such place: " + name);
    }

    double at(String name, Instant instant) {
        Place place = place(name);
        return told(place.air(), instant) + off(instant);
    }

    private double told(AirTemperature air, Instant instant) {
        ZonedDateTime local = instant.atZone(house.zone());
        double hour = local.getHour() + local.getMinute() / 60.0;
        if (air instanceof AirTemperature.Constant constant) return constant.airC();
        if (air instanceof AirTemperature.Daily daily) return swung(daily, hour);
        if (air instanceof AirTemperature.Dated dated) {
            var day = dated.days().floorEntry(local.toLocalDate());
            return swung((day == null ? dated.days().firstEntry() : day).getValue(), hour);
        }
        return logged((AirTemperature.Logged) air, instant);
    }

    private static double swung(AirTemperature.Daily day, double hour) {
        double middle = (day.lowC() + day.highC()) / 2;
        return middle + (day.highC() - day.lowC()) / 2 * Math.cos(2 * Math.PI * (hour - 15) / 24);
    }

    private static double logged(AirTemperature.Logged logged, Instant instant) {
        double read = logged.readings().get(0).airC();
        for (AirTemperature.Reading one : logged.readings()) {
            if (one.at().isAfter(instant)) break;
            read = one.airC();
        }
        return read;
    }

    private double off(Instant instant) {
        long day = Math.floorDiv(instant.getEpochSecond() - from.getEpochSecond(), 24 * 3600);
        for (long passed = offK.size(); passed <= day; passed++) {
            walk += DAY_K * Hidden.normal(random);
            offK.put(passed, walk);
        }
        return offK.getOrDefault(Math.max(0, day), walk);
    }
}
