package piecewright.desktop.timeline;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;
import piecewright.belief.Interval;
import piecewright.desktop.timeline.PieceChart.Bands;
import piecewright.desktop.timeline.PieceChart.Edges;
import piecewright.ensemble.ActBands;
import piecewright.ensemble.Band;
import piecewright.ensemble.Sureness;
import piecewright.plan.Act;
import piecewright.plan.Plan;

/**
 * Turns what may be found at each act into bands along time: between acts the distance of each edge from the forecast
 * runs straight. An act that may itself come earlier or later keeps its planned place. Pure.
 */
public final class BandWriter {
    /** Acts seldom needed tell of few of the ways things may go. */
    private static final double LEAST_HAPPENS_FRACTION = 0.5;

    /** From the middle to the ninetieth percentile, standard deviations. */
    private static final double TENTH_SD = Interval.TENTH_SD;

    private final List<Anchor> anchors = new ArrayList<>();

    /** What the plan expects at one act, and what may be found there. */
    private record Anchor(Act act, ActBands bands) {}

    private BandWriter(Plan plan, Sureness sure) {
        for (Act act : plan.acts()) {
            sure.act(act.id())
                    .filter(bands -> bands.happensFraction() >= LEAST_HAPPENS_FRACTION)
                    .ifPresent(bands -> anchors.add(new Anchor(act, bands)));
        }
    }

    /** The bands of the piece; none where the acts told nothing. */
    public static Bands bands(PieceChart chart, Plan plan, Sureness sure) {
        BandWriter writer = new BandWriter(plan, sure);
        if (writer.anchors.size() < 2) return Bands.none();
        PieceChart.Traces traces = chart.traces();
        return new Bands(
                writer.edges(
                        traces.moisture(),
                        act -> act.expect().moisture().wetBasisPercent(),
                        bands -> percent(bands.moistureFraction())),
                writer.edges(traces.grain(), act -> act.expect().grainC(), ActBands::grainC),
                writer.edges(
                        traces.growth(),
                        act -> act.expect().acrospireFraction().orElse(0),
                        bands -> bands.acrospireFraction().orElse(new Band(0, 0, 0))));
    }

    /**
     * The bands of a piece under way: until now what had been foretold, from now on narrower by what the last weight
     * told. How the moisture's doubt grows from now on is taken to be as uncertain as it was before.
     *
     * @param sdFraction how well the moisture is known now
     */
    public static Bands bands(PieceChart chart, Plan plan, Sureness sure, Instant now, double sdFraction) {
        Bands foretold = bands(chart, plan, sure);
        Edges moisture = narrowed(chart.traces().moisture(), foretold.moisture(), now, 100 * TENTH_SD * sdFraction);
        return new Bands(moisture, foretold.grain(), foretold.growth());
    }

    private static Edges narrowed(Trace trace, Edges edges, Instant now, double halfWidth) {
        if (edges.low().at(now).isEmpty() || trace.at(now).isEmpty()) return edges;
        double spreadNow =
                (edges.high().at(now).getAsDouble() - edges.low().at(now).getAsDouble()) / 2;
        List<Trace.Point> low = new ArrayList<>();
        List<Trace.Point> high = new ArrayList<>();
        for (int i = 0; i < edges.low().points().size(); i++) {
            Trace.Point below = edges.low().points().get(i);
            Trace.Point above = edges.high().points().get(i);
            if (!below.at().isAfter(now)) {
                low.add(below);
                high.add(above);
                continue;
            }
            double spread = (above.figure() - below.figure()) / 2;
            double grown = Math.max(0, spread * spread - spreadNow * spreadNow);
            double half = Math.min(spread, Math.sqrt(grown + halfWidth * halfWidth));
            double middle = trace.at(below.at()).orElse((above.figure() + below.figure()) / 2);
            low.add(new Trace.Point(below.at(), Math.max(0, middle - half)));
            high.add(new Trace.Point(above.at(), middle + half));
        }
        return new Edges(new Trace(low), new Trace(high));
    }

    private static Band percent(Band band) {
        return new Band(100 * band.p10(), 100 * band.p50(), 100 * band.p90());
    }

    private Edges edges(Trace trace, ToDoubleFunction<Act> expected, Function<ActBands, Band> found) {
        double[] below = new double[anchors.size()];
        double[] above = new double[anchors.size()];
        for (int i = 0; i < anchors.size(); i++) {
            Anchor anchor = anchors.get(i);
            double middle = expected.applyAsDouble(anchor.act());
            below[i] = found.apply(anchor.bands()).p10() - middle;
            above[i] = found.apply(anchor.bands()).p90() - middle;
        }
        Instant last = anchors.get(anchors.size() - 1).act().startsAt();
        List<Trace.Point> low = new ArrayList<>();
        List<Trace.Point> high = new ArrayList<>();
        for (Trace.Point point : trace.points()) {
            if (point.at().isAfter(last)) break;
            low.add(new Trace.Point(point.at(), Math.max(0, point.figure() + between(point.at(), below))));
            high.add(new Trace.Point(point.at(), Math.max(0, point.figure() + between(point.at(), above))));
        }
        return new Edges(new Trace(low), new Trace(high));
    }

    /** A figure of the acts, straight between them, and that of the first and last beyond. */
    private double between(Instant at, double[] figures) {
        int after = 0;
        while (after < anchors.size() && !anchors.get(after).act().startsAt().isAfter(at)) after++;
        if (after == 0) return figures[0];
        if (after == anchors.size()) return figures[after - 1];
        Instant before = anchors.get(after - 1).act().startsAt();
        double whole =
                Duration.between(before, anchors.get(after).act().startsAt()).toSeconds();
        double share = Duration.between(before, at).toSeconds() / Math.max(1, whole);
        return figures[after - 1] + share * (figures[after] - figures[after - 1]);
    }
}
