package piecewright.process;

import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.Map;
import java.util.NavigableMap;
import java.util.Optional;
import piecewright.house.AirTemperature;
import piecewright.house.Place;

/** The air of a place laid out over a stretch of time: the only spot where local time meets physics. */
public final class Climate {
    private static final int STEP_SECONDS = 3600 / Surroundings.STEPS_PER_HOUR;

    private Climate() {}

    /**
     * The air of a place from an instant until another.
     *
     * <p>Lows lie at 05:00 and highs at 15:00 local time, half a cosine between them; a logger's readings are joined
     * by straight lines. After the last day known that day repeats, before the first known the first.
     *
     * @param until after from
     */
    public static Surroundings of(Place place, ZoneId zone, Instant from, Instant until) {
        if (!from.isBefore(until)) throw new IllegalArgumentException("from must be before until: " + from);
        AirTemperature air = place.air();
        if (air instanceof AirTemperature.Constant constant) {
            return Surroundings.constant(from, constant.airC(), place.humidityFraction());
        }
        double[] airC = new double[points(from, until)];
        Optional<Instant> known = Optional.empty();
        if (air instanceof AirTemperature.Daily daily) {
            fill(airC, new DayCurve(day -> daily, zone, from, until), from);
        } else if (air instanceof AirTemperature.Dated dated) {
            fill(airC, new DayCurve(day -> dayOf(dated.days(), day), zone, from, until), from);
            LocalDate last = dated.days().lastKey();
            known = Optional.of(last.plusDays(1).atStartOfDay(zone).toInstant());
        } else if (air instanceof AirTemperature.Logged logged) {
            fill(airC, new LoggedCurve(logged.readings(), zone), from);
            known = Optional.of(
                    logged.readings().get(logged.readings().size() - 1).at());
        }
        return Surroundings.of(from, airC, place.humidityFraction(), known.filter(until::isAfter));
    }

    /** Temperature at rising instants, seconds of the epoch. */
    interface Curve {
        double airC(long epochSecond);
    }

    private static int points(Instant from, Instant until) {
        long steps = (Duration.between(from, until).toSeconds() + STEP_SECONDS - 1) / STEP_SECONDS;
        if (steps > 1_000_000) throw new IllegalArgumentException("until is more than nine years after from: " + until);
        return (int) steps + 1;
    }

    private static void fill(double[] airC, Curve curve, Instant from) {
        long start = from.getEpochSecond();
        for (int i = 0; i < airC.length; i++) airC[i] = curve.airC(start + (long) i * STEP_SECONDS);
    }

    private static AirTemperature.Daily dayOf(NavigableMap<LocalDate, AirTemperature.Daily> days, LocalDate day) {
        Map.Entry<LocalDate, AirTemperature.Daily> before = days.floorEntry(day);
        return before != null ? before.getValue() : days.firstEntry().getValue();
    }
}
