package piecewright.process;

import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.function.Function;
import piecewright.house.AirTemperature;

/** A curve through the lows and highs of successive local days, half a cosine between neighbours. */
final class DayCurve implements Climate.Curve {
    private static final LocalTime LOW_AT = LocalTime.of(5, 0);
    private static final LocalTime HIGH_AT = LocalTime.of(15, 0);

    private final long[] epochSeconds;
    private final double[] airC;

    /** A low or a high. */
    private record Turn(long epochSecond, double airC) {}

    DayCurve(Function<LocalDate, AirTemperature.Daily> days, ZoneId zone, Instant from, Instant until) {
        LocalDate lastDay = until.atZone(zone).toLocalDate().plusDays(2);
        List<Turn> turns = new ArrayList<>();
        LocalDate firstDay = from.atZone(zone).toLocalDate().minusDays(2);
        for (LocalDate day = firstDay; !day.isAfter(lastDay); day = day.plusDays(1)) {
            AirTemperature.Daily figures = days.apply(day);
            add(turns, new Turn(day.atTime(LOW_AT).atZone(zone).toEpochSecond(), figures.lowC()));
            add(turns, new Turn(day.atTime(HIGH_AT).atZone(zone).toEpochSecond(), figures.highC()));
        }
        epochSeconds = turns.stream().mapToLong(Turn::epochSecond).toArray();
        airC = turns.stream().mapToDouble(Turn::airC).toArray();
    }

    @Override
    public double airC(long epochSecond) {
        int found = Arrays.binarySearch(epochSeconds, epochSecond);
        if (found >= 0) return airC[found];
        int after = -found - 1;
        double share =
                (double) (epochSecond - epochSeconds[after - 1]) / (epochSeconds[after] - epochSeconds[after - 1]);
        return airC[after - 1] + (airC[after] - airC[after - 1]) * (1 - Math.cos(Math.PI * share)) / 2;
    }

    /** Times must rise: a day that a clock change swallows whole is passed over. */
    private static void add(List<Turn> turns, Turn turn) {
        if (turns.isEmpty() || turn.epochSecond > turns.get(turns.size() - 1).epochSecond) turns.add(turn);
    }
}
