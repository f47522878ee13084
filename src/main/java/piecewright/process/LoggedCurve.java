package piecewright.process;

import java.time.Instant;
import java.time.ZoneId;
import java.time.zone.ZoneRules;
import java.util.List;
import piecewright.house.AirTemperature;

/** A curve through readings: straight lines between them, the nearest day of them again beyond, by local time. */
final class LoggedCurve implements Climate.Curve {
    private static final long DAY_SECONDS = 86_400;

    private final long[] epochSeconds;
    private final double[] airC;
    private final ZoneRules rules;

    LoggedCurve(List<AirTemperature.Reading> readings, ZoneId zone) {
        this.epochSeconds = readings.stream()
                .mapToLong(reading -> reading.at().getEpochSecond())
                .toArray();
        this.airC = readings.stream().mapToDouble(AirTemperature.Reading::airC).toArray();
        this.rules = zone.getRules();
    }

    @Override
    public double airC(long epochSecond) {
        long first = epochSeconds[0];
        long last = epochSeconds[epochSeconds.length - 1];
        if (epochSecond >= first && epochSecond <= last) return between(epochSecond);
        long days = epochSecond > last
                ? (epochSecond - last + DAY_SECONDS - 1) / DAY_SECONDS
                : -((first - epochSecond + DAY_SECONDS - 1) / DAY_SECONDS);
        long same = daysEarlier(epochSecond, days);
        if (same > last) same = daysEarlier(epochSecond, days + 1);
        if (same < first) same = daysEarlier(epochSecond, days - 1);
        if (same >= first && same <= last) return between(same);
        return acrossTheGap(epochSecond);
    }

    /** The instant with the same local time, whole days earlier. */
    private long daysEarlier(long epochSecond, long days) {
        long local = epochSecond + offset(epochSecond) - days * DAY_SECONDS;
        return local - offset(local - offset(epochSecond));
    }

    private int offset(long epochSecond) {
        return rules.getOffset(Instant.ofEpochSecond(epochSecond)).getTotalSeconds();
    }

    private double between(long epochSecond) {
        int found = java.util.Arrays.binarySearch(epochSeconds, epochSecond);
        if (found >= 0) return airC[found];
        int after = -found - 1;
        double share =
                (double) (epochSecond - epochSeconds[after - 1]) / (epochSeconds[after] - epochSeconds[after - 1]);
        return airC[after - 1] + share * (airC[after] - airC[after - 1]);
    }

    /** Readings of less than a day leave a gap each day: a straight line from the last reading to the first. */
    private double acrossTheGap(long epochSecond) {
        long first = epochSeconds[0];
        long last = epochSeconds[epochSeconds.length - 1];
        long gap = DAY_SECONDS - (last - first);
        if (gap <= 0) return epochSecond > last ? airC[airC.length - 1] : airC[0];
        double share = Math.min(1, (double) Math.floorMod(epochSecond - last, DAY_SECONDS) / gap);
        return airC[airC.length - 1] + share * (airC[0] - airC[airC.length - 1]);
    }
}
