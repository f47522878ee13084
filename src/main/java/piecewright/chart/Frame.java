package piecewright.chart;

import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import java.util.function.Function;
import piecewright.chart.Drawing.Letters;
import piecewright.chart.Drawing.Spot;
import piecewright.chart.Drawing.Stroke;
import piecewright.plan.Plan;
import piecewright.text.MomentFormat;
import piecewright.text.Phrases;
import piecewright.text.QuantityFormat;
import piecewright.text.UnitSystem;
import piecewright.text.Wording;

/** What all lanes of a plan's picture share: where time lies, the pen, the words. */
record Frame(Plan plan, TimeScale time, Drawing pen, Words words) {
    static final Letters LABEL = Letters.PLAIN.sized(12).bold();
    static final String BEFORE_DASHES = "4 3";
    static final Letters TICK = Letters.PLAIN.sized(11).in(Ink.QUIET);

    /** Words in one person's units and one house's clock. */
    record Words(UnitSystem system, Wording sentences, QuantityFormat quantities, MomentFormat moments) {}

    /** A stretch of a lane from its top downward. */
    record Band(double topY, double bottomY) {}

    ZoneId zone() {
        return plan.subject().zone();
    }

    /** Lines at every midnight through a lane, and its name. */
    void lane(Band band, String key) {
        for (LocalDate day : time.days(zone())) {
            Instant midnight = day.atStartOfDay(zone()).toInstant();
            if (time.shows(midnight)) upright(midnight, band, Stroke.of(Ink.GRID, 1));
        }
        level(band.bottomY(), Stroke.of(Ink.EDGE, 1));
        pen.words(4, band.topY() + 12, Phrases.say("chart.lane." + key), LABEL);
    }

    void upright(Instant at, Band band, Stroke stroke) {
        double x = time.x(at);
        pen.line(new Spot(x, band.topY()), new Spot(x, band.bottomY()), stroke);
    }

    void level(double y, Stroke stroke) {
        pen.line(new Spot(time.leftX(), y), new Spot(time.rightX(), y), stroke);
    }

    void tick(double y, String words) {
        level(y, Stroke.of(Ink.GRID, 1));
        pen.words(time.leftX() - 6, y + 4, words, TICK.ending());
    }

    /** The forecast as far as it shows, and thin and dashed below it the forecast of before. */
    void forecast(Followed followed, Stroke stroke, Function<Plan.Sample, Double> y) {
        followed.before()
                .ifPresent(before -> pen.through(
                        spots(before, y), Stroke.of(stroke.colour(), 1.2).dashed(BEFORE_DASHES)));
        pen.through(spots(plan, y), stroke);
    }

    private List<Spot> spots(Plan shown, Function<Plan.Sample, Double> y) {
        return shown.course().stream()
                .filter(sample -> time.shows(sample.at()))
                .map(sample -> new Spot(time.x(sample.at()), y.apply(sample)))
                .toList();
    }
}
