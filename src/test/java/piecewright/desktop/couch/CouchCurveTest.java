package piecewright.desktop.couch;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import piecewright.desktop.timeline.Trace;

/** What is read off the curve of a couch, without a toolkit. */
class CouchCurveTest {
    private static final Instant NOON = Instant.parse("2031-03-14T12:00:00Z");

    private static CouchCurve curve(double... pileC) {
        List<Trace.Point> points = new java.util.ArrayList<>();
        for (int hour = 0; hour < pileC.length; hour++) {
            points.add(new Trace.Point(NOON.plus(Duration.ofHours(hour)), pileC[hour]));
        }
        return new CouchCurve(new Trace(points), List.of(), 53, Optional.empty());
    }

    /** From 40 to 50 °C in an hour: 45 °C after half of it. */
    @Test
    void aTemperatureIsReachedBetweenThePoints() {
        CouchCurve curve = curve(20, 40, 50, 51, 49);
        assertEquals(Optional.of(NOON.plus(Duration.ofMinutes(90))), curve.reaches(45));
        assertEquals(Optional.empty(), curve.reaches(52));
        assertEquals(Optional.of(NOON), curve(46, 47).reaches(45));
    }

    @Test
    void peakAndDropAreToldAndACouchBrokenBeforeHasNoDrop() {
        CouchCurve curve = curve(20, 40, 50, 51, 49);
        assertEquals(NOON.plus(Duration.ofHours(3)), curve.peak().at());
        assertEquals(Optional.of(NOON.plus(Duration.ofHours(4))), curve.drops());
        assertEquals(Optional.empty(), curve(20, 40, 50).drops());
    }
}
