package piecewright.chart;

import piecewright.chart.Drawing.Stroke;
import piecewright.chart.Frame.Band;

/** The mean acrospire along the days, as a share of the corn. */
record GrowthLane(Frame frame, Band band, Marks marks, double aimFraction) {
    private static final double LONGEST_FRACTION = 1.15;

    void draw() {
        ValueScale scale = ValueScale.straight(0, LONGEST_FRACTION, band.bottomY(), band.topY());
        frame.tick(scale.y(1), "1");
        frame.tick(scale.y(0.5), "½");
        frame.lane(band, "growth");
        frame.level(scale.y(aimFraction), Stroke.of(Ink.LEAF, 1.4).dashed("5 3"));
        frame.forecast(
                marks.followed(),
                Stroke.of(Ink.LEAF, 2.2),
                sample -> scale.y(sample.state().growth().growthRatio()));
        marks.draw(frame, Measured.Kind.COUNTED, scale);
    }
}
