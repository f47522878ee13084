package piecewright.replan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import piecewright.replan.CouchForecast.Point;

class CouchForecastTest {
    private static final Instant NOW = Instant.parse("2031-02-20T08:00:00Z");

    /** Hourly points; straight lines between them make crossings exact. */
    private static CouchForecast forecast(double doubtFraction, double... pileC) {
        List<Point> points = new ArrayList<>();
        for (double each : pileC) points.add(new Point(NOW.plus(Duration.ofHours(points.size())), each));
        return CouchForecast.of(points, doubtFraction);
    }

    /** 43 → 47 °C in the third hour: 45 after 2 h 30 min; eight in ten within 45 % of what is left. */
    @Test
    void crossingsArePlacedBetweenPointsAndBandsGrowWithTheTimeLeft() {
        CouchForecast forecast = forecast(0.45, 30, 38, 43, 47, 50, 51, 50, 48, 44);
        CouchForecast.Band caught = forecast.caught().orElseThrow();
        assertEquals(NOW.plusSeconds(9000), caught.middle());
        assertEquals(NOW.plusSeconds(Math.round(9000 * 0.55)), caught.early());
        assertEquals(NOW.plusSeconds(Math.round(9000 * 1.45)), caught.late());
        assertEquals(NOW.plus(Duration.ofHours(5)), forecast.peak().middle());
        assertEquals(51, forecast.peakC().middleC(), 1e-12);
        // 48 → 44 in the eighth hour: three quarters of it
        assertEquals(
                NOW.plusSeconds(7 * 3600 + 2700), forecast.drops().orElseThrow().middle());
        assertFalse(forecast.stalls());
    }

    @Test
    void aCouchThatIsHotAlreadyHasItsPeakAheadAndNothingToPass() {
        CouchForecast forecast = forecast(0.45, 47, 50, 51, 49, 44);
        assertEquals(Optional.empty(), forecast.caught());
        assertTrue(forecast.drops().isPresent());
    }

    @Test
    void aCouchThatCoolsOrCreepsStalls() {
        assertTrue(forecast(0.45, 24, 23, 22, 21).stalls());
        assertTrue(forecast(0.45, 24, 26, 27, 27.5).stalls());
        assertEquals(Optional.empty(), forecast(0.45, 24, 26, 27, 27.5).caught());
    }

    /** Reference, couch update: ±45 % of the time left with readings; before any, even odds at ±50 % wilted, ±30 % not. */
    @Test
    void withoutAReadingTheBandIsWiderAndWidestForWiltedMalt() {
        double read = CouchForecast.doubtFraction(0.40, 3);
        double wet = CouchForecast.doubtFraction(0.40, 0);
        double wilted = CouchForecast.doubtFraction(0.28, 0);
        assertEquals(0.45, read, 1e-12);
        assertTrue(read < wet && wet < wilted && wilted < 1, read + " " + wet + " " + wilted);
    }
}
