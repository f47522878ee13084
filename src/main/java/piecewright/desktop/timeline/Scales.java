package piecewright.desktop.timeline;

import java.util.ArrayList;
import java.util.List;
import piecewright.desktop.timeline.Lanes.Band;

/** Where figures lie in their lanes. */
final class Scales {
    private static final double MOST_MOISTURE_PERCENT = 50;
    private static final double MOST_GROWTH_RATIO = 1.1;

    private Scales() {}

    /** What a tick at the edge says: moisture in percent, heat in °C, growth as a share. */
    record Tick(TickKind kind, double figure, double y) {}

    enum TickKind {
        MOISTURE,
        HEAT,
        GROWTH
    }

    static double moistureY(Lanes lanes, double moisturePercent) {
        return lanes.moisture().y(moisturePercent / MOST_MOISTURE_PERCENT);
    }

    static double growthY(Lanes lanes, double growthRatio) {
        return lanes.growth().y(Math.min(1, growthRatio / MOST_GROWTH_RATIO));
    }

    static double foldY(PieceChart chart, Lanes lanes) {
        return lanes.heat().y(heat(chart).heightRatio(FoldedScale.FOLD_C));
    }

    static FoldedScale heat(PieceChart chart) {
        return FoldedScale.around(chart.traces().grain(), chart.traces().air());
    }

    static List<Tick> ticks(PieceChart chart, Lanes lanes) {
        List<Tick> ticks = new ArrayList<>();
        Band moisture = lanes.moisture();
        double step = moisture.height() > 110 ? 10 : 20;
        for (double figure = step; figure < MOST_MOISTURE_PERCENT; figure += step) {
            ticks.add(new Tick(TickKind.MOISTURE, figure, moistureY(lanes, figure)));
        }
        FoldedScale heat = heat(chart);
        for (double figure : new double[] {5, 10, 15, 50, 80, 110, 150, 200}) {
            if (figure < heat.lowC() + 1 || figure >= heat.highC() + 1) continue;
            double y = lanes.heat().y(heat.heightRatio(figure));
            boolean crowded = Math.abs(foldY(chart, lanes) - y) < 13
                    || ticks.stream().anyMatch(tick -> Math.abs(tick.y() - y) < 13);
            if (!crowded) ticks.add(new Tick(TickKind.HEAT, figure, y));
        }
        for (double figure : new double[] {0, 0.5, 1}) {
            ticks.add(new Tick(TickKind.GROWTH, figure, growthY(lanes, figure)));
        }
        return ticks;
    }
}
