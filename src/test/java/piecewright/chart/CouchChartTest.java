package piecewright.chart;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Duration;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import piecewright.plan.ActKind;
import piecewright.plan.CouchedDemo;
import piecewright.plan.HeapCurve;
import piecewright.plan.ModelParameters;
import piecewright.text.DisplayUnits;

class CouchChartTest {
    private final HeapCurve heap = HeapCurve.of(ModelParameters.defaults(), CouchedDemo.request(), CouchedDemo.plan())
            .orElseThrow();

    private String drawn(DisplayUnits units, List<Measured> readings) {
        return CouchChart.of(CouchedDemo.plan(), new CouchChart.Heaps(heap, Optional.empty(), readings), units);
    }

    private static long texts(Parsed parsed, String beginning) {
        return parsed.all("text").stream()
                .filter(text -> text.getTextContent().startsWith(beginning))
                .count();
    }

    @Test
    void itNamesCatchingPeakDropLimitAndEveryLook() {
        Parsed parsed = Parsed.of(drawn(DisplayUnits.metric(), List.of()));
        assertEquals(1, texts(parsed, "45 °C: it has caught"));
        assertEquals(1, texts(parsed, "53 °C: spread and turn above"));
        assertEquals(1, texts(parsed, "peak 5"));
        assertEquals(heap.falls(44).isPresent() ? 1 : 0, texts(parsed, "would drop below 45 °C"));
        assertEquals(
                CouchedDemo.plan().acts().stream()
                        .filter(act -> act.kind() == ActKind.CHECK)
                        .count(),
                texts(parsed, "look"));
        assertEquals(1, texts(Parsed.of(drawn(DisplayUnits.us(), List.of())), "113 °F: it has caught"));
    }

    /** 40 °C stands at 356 − 35/55 · 294 = 168.9, by the scale from 5 to 60 °C. */
    @Test
    void aReadingStandsAtItsTemperature() {
        Measured read = new Measured(heap.packedAt().plus(Duration.ofHours(20)), Measured.Kind.READ, 40);
        String with = drawn(DisplayUnits.metric(), List.of(read));
        Matcher cross = Pattern.compile("translate\\([-0-9.]+ ([-0-9.]+)\\)\"><path d=\"M-4 -4L4 4")
                .matcher(with);
        assertTrue(cross.find());
        assertEquals(168.9, Double.parseDouble(cross.group(1)), 0.1);
        assertTrue(with.contains(">read<"));
        assertFalse(drawn(DisplayUnits.metric(), List.of()).contains(">read<"));
    }

    @Test
    void aReadingNarrowsTheStretchInWhichItMayCatch() {
        double before = reach(drawn(DisplayUnits.metric(), List.of()));
        Measured late = new Measured(heap.rises(40).orElseThrow(), Measured.Kind.READ, 41);
        double after = reach(drawn(DisplayUnits.metric(), List.of(late)));
        assertTrue(after < before / 3, before + " → " + after);
    }

    /** Length of the whisker on the level of 45 °C. */
    private static double reach(String drawn) {
        Matcher line = Pattern.compile("d=\"M([0-9.]+) 142.2L([0-9.]+) 142.2\"[^>]* stroke-width=\"2\"")
                .matcher(drawn);
        assertTrue(line.find(), "a whisker must be drawn");
        return Double.parseDouble(line.group(2)) - Double.parseDouble(line.group(1));
    }
}
