package piecewright.replan;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import piecewright.plan.ActKind;
import piecewright.plan.Begun;
import piecewright.plan.Continuation;
import piecewright.plan.Reading;
import piecewright.plan.Simulation.Course;
import piecewright.plan.Simulation.Read;
import piecewright.plan.Timetable.Visit;
import piecewright.plan.search.UnderWay;
import piecewright.replan.CouchForecast.Point;

/** Follows a hot couch from its last reading on, as if nobody broke it. */
final class CouchWatch {
    private static final Duration AHEAD = Duration.ofHours(96);
    private static final Duration STEP = Duration.ofMinutes(15);

    private final Continuation continuation;

    CouchWatch(Continuation continuation) {
        this.continuation = continuation;
    }

    /** What it will do; empty unless the piece lies in its couch. */
    Optional<CouchForecast> of(Batch batch, Begun begun) {
        if (begun.visits().isEmpty()) return Optional.empty();
        Visit began = UnderWay.began(begun.visits());
        if (began.kind() != ActKind.PACK) return Optional.empty();
        return continuation
                .course(batch.request(), watching(begun), begun.visits())
                .map(course -> {
                    List<Point> points = new ArrayList<>();
                    int readings = 0;
                    for (Read read : course.reads()) {
                        Reading reading = read.reading();
                        boolean since = reading.at().isAfter(began.at())
                                && reading.grainC().isPresent();
                        if (since && !reading.at().isAfter(begun.now())) readings++;
                        if (!reading.at().isBefore(begun.now())) {
                            points.add(new Point(reading.at(), read.held().grainC()));
                        }
                    }
                    return CouchForecast.of(points, CouchForecast.doubtFraction(packed(course), readings));
                });
    }

    private static double packed(Course course) {
        return course.first(ActKind.PACK).after().mass().moisture().wetBasisFraction();
    }

    private static Begun watching(Begun begun) {
        List<Reading> readings = new ArrayList<>(begun.found().readings());
        Instant until = begun.now().plus(AHEAD);
        for (Instant at = begun.now(); !at.isAfter(until); at = at.plus(STEP)) readings.add(Reading.nothing(at));
        return begun.withFound(begun.found().withReadings(readings));
    }
}
