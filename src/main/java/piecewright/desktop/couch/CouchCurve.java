package piecewright.desktop.couch;

import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import piecewright.desktop.timeline.Trace;
import piecewright.replan.CouchForecast;

/**
 * A hot couch from packing to breaking: the forecast of its thermometer and what was read.
 *
 * @param forecast the middle of the heap, °C
 * @param read what the thermometer showed, °C
 * @param limitC hotter than this and the heap is spread and turned
 * @param peakBand when its peak may come, eight times in ten; known while the heap lies in its box
 */
public record CouchCurve(Trace forecast, List<Trace.Point> read, double limitC, Optional<CouchForecast.Band> peakBand) {
    /** Where colour and flavour begin to be made. Judgement: practice, a couch aims at 45 to 51 °C. */
    public static final double WARM_C = 45;

    /** Judgement: a heap this much below its peak is past it. */
    private static final double DROP_K = 1;

    public CouchCurve {
        Objects.requireNonNull(forecast);
        Objects.requireNonNull(peakBand);
        read = List.copyOf(read);
        if (forecast.points().size() < 2) throw new IllegalArgumentException("a couch has two points at least");
    }

    public Instant packed() {
        return forecast.points().get(0).at();
    }

    public Instant broken() {
        return forecast.points().get(forecast.points().size() - 1).at();
    }

    /** When the forecast first reaches a temperature; empty when it never does. */
    public Optional<Instant> reaches(double temperatureC) {
        Trace.Point before = forecast.points().get(0);
        for (Trace.Point point : forecast.points()) {
            if (point.figure() >= temperatureC) return Optional.of(crossing(before, point, temperatureC));
            before = point;
        }
        return Optional.empty();
    }

    private static Instant crossing(Trace.Point before, Trace.Point after, double temperatureC) {
        double rise = after.figure() - before.figure();
        if (rise <= 0) return after.at();
        double share = (temperatureC - before.figure()) / rise;
        long seconds = Duration.between(before.at(), after.at()).toSeconds();
        return before.at().plusSeconds(Math.round(share * seconds));
    }

    /** The hottest point of the forecast. */
    public Trace.Point peak() {
        Trace.Point hottest = forecast.points().get(0);
        for (Trace.Point point : forecast.points()) if (point.figure() > hottest.figure()) hottest = point;
        return hottest;
    }

    /** When the forecast has fallen well below its peak; empty when the couch is broken before. */
    public Optional<Instant> drops() {
        Trace.Point peak = peak();
        return forecast.points().stream()
                .filter(point -> point.at().isAfter(peak.at()) && point.figure() <= peak.figure() - DROP_K)
                .map(Trace.Point::at)
                .findFirst();
    }
}
