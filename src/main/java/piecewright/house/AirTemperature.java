package piecewright.house;

import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.NavigableMap;
import java.util.TreeMap;

/** How the air temperature of a place is known. */
public sealed interface AirTemperature {

    /** A fridge or a heated room: the same all day. */
    record Constant(double airC) implements AirTemperature {}

    /** The same low and high every day, °C, low at most high. */
    record Daily(double lowC, double highC) implements AirTemperature {
        public Daily {
            if (!(lowC <= highC))
                throw new IllegalArgumentException("lowC must be at most highC: " + lowC + ", " + highC);
        }
    }

    /** Low and high of dated days, at least one; days before and after repeat the nearest. */
    record Dated(NavigableMap<LocalDate, Daily> days) implements AirTemperature {
        public Dated {
            if (days.isEmpty()) throw new IllegalArgumentException("days must not be empty");
            days = java.util.Collections.unmodifiableNavigableMap(new TreeMap<>(days));
        }
    }

    /** Readings of a logger or a forecast, strictly rising in time, at least one. */
    record Logged(List<Reading> readings) implements AirTemperature {
        public Logged {
            readings = List.copyOf(readings);
            if (readings.isEmpty()) throw new IllegalArgumentException("readings must not be empty");
            for (int i = 1; i < readings.size(); i++) {
                if (!readings.get(i).at().isAfter(readings.get(i - 1).at())) {
                    throw new IllegalArgumentException(
                            "readings must rise in time: " + readings.get(i).at());
                }
            }
        }
    }

    /** One reading, °C. */
    record Reading(Instant at, double airC) {}
}
