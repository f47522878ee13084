package piecewright.chart;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import piecewright.chart.Drawing.Letters;
import piecewright.chart.Drawing.Spot;
import piecewright.chart.Drawing.Stroke;
import piecewright.chart.Frame.Band;
import piecewright.house.House;
import piecewright.plan.Phase;
import piecewright.process.Climate;
import piecewright.process.Surroundings;
import piecewright.quantity.Units;
import piecewright.text.Phrases;
import piecewright.text.UnitSystem;

/** Grain and air along the days; folded above floor heat, so that the kiln does not flatten the floor. */
record HeatLane(Frame frame, Band band, Marks marks, House house) {
    private static final double FOLD_C = 25;
    private static final double HOTTEST_C = 110;
    private static final double FOLD_SHARE = 0.66;
    private static final List<Double> TICKS_C = List.of(5.0, 10.0, 15.0, 20.0, 50.0, 80.0);
    private static final List<Double> TICKS_F = List.of(40.0, 50.0, 60.0, 70.0, 120.0, 180.0);
    private static final Duration AIR_STEP = Duration.ofMinutes(30);

    void draw() {
        double height = band.bottomY() - band.topY();
        double hottestC = Math.max(HOTTEST_C, hottestForecastC());
        ValueScale scale =
                new ValueScale(0, FOLD_C, hottestC, band.bottomY(), band.bottomY() - FOLD_SHARE * height, band.topY());
        for (double tickC : ticksC())
            frame.tick(scale.y(tickC), frame.words().quantities().temperature(tickC));
        frame.lane(band, "heat");
        fold(scale.foldY());
        for (Phase phase : frame.plan().phases()) air(phase, scale);
        frame.forecast(
                marks.followed(),
                Stroke.of(Ink.HEAT, 2.2),
                sample -> scale.y(sample.state().grainC()));
        marks.draw(frame, Measured.Kind.READ, scale);
    }

    private List<Double> ticksC() {
        return frame.words().system() == UnitSystem.METRIC
                ? TICKS_C
                : TICKS_F.stream().map(Units::celsiusOfFahrenheit).toList();
    }

    private double hottestForecastC() {
        return frame.plan().course().stream()
                .mapToDouble(sample -> sample.state().grainC())
                .max()
                .orElse(0);
    }

    private void fold(double y) {
        StringBuilder zigzag =
                new StringBuilder("M" + Drawing.at(new Spot(frame.time().leftX(), y)));
        boolean up = true;
        for (double x = frame.time().leftX() + 6; x <= frame.time().rightX(); x += 6) {
            zigzag.append('L').append(Drawing.at(new Spot(x, y + (up ? -2 : 2))));
            up = !up;
        }
        frame.pen().path(zigzag.toString(), Stroke.of(Ink.AIR, 0.8));
        Letters small = Letters.PLAIN.sized(10).in(Ink.QUIET);
        frame.pen().words(frame.time().leftX() + 4, y - 5, Phrases.say("chart.fold"), small);
    }

    /** The air of the room, as far as the piece lies in a room and not in a kiln. */
    private void air(Phase phase, ValueScale scale) {
        Instant until = frame.time().clipped(phase.until());
        if (!phase.from().isBefore(until)) return;
        house.places().stream()
                .filter(place -> place.name().equals(phase.place()))
                .findFirst()
                .map(place -> Climate.of(place, house.zone(), phase.from(), until))
                .ifPresent(air -> frame.pen()
                        .through(
                                spots(air, until, scale),
                                Stroke.of(Ink.AIR, 1.6).dashed("2 3.5")));
    }

    private List<Spot> spots(Surroundings air, Instant until, ValueScale scale) {
        List<Spot> spots = new ArrayList<>();
        for (Instant at = air.origin(); !at.isAfter(until); at = at.plus(AIR_STEP)) {
            double hours = Duration.between(air.origin(), at).toMinutes() / 60.0;
            spots.add(new Spot(frame.time().x(at), scale.y(air.airC(hours))));
        }
        return spots;
    }
}
