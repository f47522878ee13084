package piecewright.chart;

import piecewright.chart.Drawing.Letters;
import piecewright.chart.Drawing.Spot;
import piecewright.chart.Drawing.Stroke;
import piecewright.chart.Frame.Band;
import piecewright.plan.Act;
import piecewright.quantity.Moisture;
import piecewright.text.Phrases;

/** Moisture along the days, and the gates above which heat must not go up. */
record MoistureLane(Frame frame, Band band, Marks marks) {
    void draw() {
        ValueScale scale = ValueScale.straight(0, 50, band.bottomY(), band.topY());
        for (int percent = 10; percent <= 40; percent += 10) {
            frame.tick(scale.y(percent), Integer.toString(percent));
        }
        frame.lane(band, "moisture");
        frame.pen().words(4, band.topY() + 26, "%", Frame.TICK);
        frame.forecast(
                marks.followed(),
                Stroke.of(Ink.WATER, 2.2),
                sample -> scale.y(sample.state().mass().moisture().wetBasisPercent()));
        for (Act act : frame.plan().acts()) {
            act.setting().gateFraction().ifPresent(gateFraction -> gate(act, scale, gateFraction));
        }
        ValueScale shares = ValueScale.straight(0, 0.5, band.bottomY(), band.topY());
        marks.draw(frame, Measured.Kind.WEIGHED, shares);
    }

    private void gate(Act act, ValueScale scale, double gateFraction) {
        double x = frame.time().x(act.startsAt());
        double y = scale.y(gateFraction * 100);
        frame.pen()
                .line(
                        new Spot(x - 40, y),
                        new Spot(x + 8, y),
                        Stroke.of(Ink.GATE, 1.6).dashed("5 3"));
        String words = Phrases.say(
                "chart.gate",
                act.setting().setC().isPresent()
                        ? frame.words()
                                .quantities()
                                .temperature(act.setting().setC().getAsDouble())
                        : frame.words().sentences().actTitle(act),
                frame.words().quantities().moisture(new Moisture(gateFraction)));
        frame.pen()
                .words(
                        x - 44,
                        y + 4,
                        words,
                        Letters.PLAIN.sized(11).in(Ink.GATE).ending());
    }
}
