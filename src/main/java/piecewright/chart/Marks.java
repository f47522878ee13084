package piecewright.chart;

import piecewright.chart.Drawing.Spot;
import piecewright.chart.Drawing.Stroke;
import piecewright.chart.Measured.Kind;

/** What was measured, over the forecast: weighed a circle, read a cross, counted a triangle. */
record Marks(Followed followed) {

    void draw(Frame frame, Kind kind, ValueScale scale) {
        for (Measured one : followed.measured()) {
            if (one.kind() != kind || !frame.time().shows(one.at())) continue;
            draw(frame.pen(), kind, new Spot(frame.time().x(one.at()), scale.y(one.figure())));
        }
    }

    static void draw(Drawing pen, Kind kind, Spot middle) {
        pen.markup().open("g", "transform", "translate(" + Drawing.at(middle) + ")");
        switch (kind) {
            case WEIGHED -> pen.path("M-4.5 0A4.5 4.5 0 1 1 4.5 0A4.5 4.5 0 1 1 -4.5 0Z", open(Ink.WATER));
            case READ -> pen.path("M-4 -4L4 4M4 -4L-4 4", Stroke.of(Ink.HEAT, 2));
            case COUNTED -> pen.path("M0 -5L5 4L-5 4Z", open(Ink.LEAF));
        }
        pen.markup().close();
    }

    private static Stroke open(String colour) {
        return Stroke.of(colour, 2).filled(Ink.PAPER);
    }
}
