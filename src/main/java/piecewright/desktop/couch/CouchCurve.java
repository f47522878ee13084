package piecewright.desktop.couch;

import java.time.Instant;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;
import piecewright.desktop.timeline.Trace;

/**
 * A hot couch from packing to breaking: the forecast of its thermometer and what was read.
 *
 * @param forecast the middle of the heap, °C
 * @param read what the thermometer showed, °C
 * @param limitC hotter than this and the heap is spread and turned
 */
public record CouchCurve(Trace forecast, List<Trace.Point> read, double limitC) {
    /** Where colour and flavour begin to be made. Judgement: practice, a couch aims at 45 to 51 °C. */
    public static final double WARM_C = 45;

    /** Judgement: a heap this much below its peak is past it. */
    private static final double DROP_K = 1;

    public CouchCurve {
        Objects.requireNonNull(forecast);
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
        return forecast.points().stream()
                .filter(point -> point.figure() >= temperatureC)
                .map(Trace.Point::at)
                .findFirst();
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

    /** The last reading less the forecast at its instant, K; empty where nothing was read. */
    public OptionalDouble aheadK() {
        if (read.isEmpty()) return OptionalDouble.empty();
        Trace.Point last = read.get(read.size() - 1);
        OptionalDouble foretold = forecast.at(last.at());
        return foretold.isPresent()
                ? OptionalDouble.of(last.figure() - foretold.getAsDouble())
                : OptionalDouble.empty();
    }
}
