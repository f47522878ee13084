package piecewright.chart;

import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import piecewright.chart.Drawing.Letters;
import piecewright.chart.Drawing.Spot;
import piecewright.chart.Drawing.Stroke;
import piecewright.plan.Act;
import piecewright.plan.ActKind;
import piecewright.plan.HeapCurve;
import piecewright.plan.Plan;
import piecewright.process.couch.CouchProbe;
import piecewright.process.couch.Ignition;
import piecewright.replan.CouchForecast;
import piecewright.text.DisplayUnits;
import piecewright.text.MomentFormat;
import piecewright.text.Phrases;
import piecewright.text.QuantityFormat;

/**
 * The hot couch of a plan as one SVG picture: what a thermometer in the middle of the heap should read hour by hour,
 * where it passes 45 °C, its peak, the limit and the drop, the looks and the breaking; readings stand over it.
 */
public final class CouchChart {
    /** Stands in every picture of ours and tells it from others. */
    public static final String OURS = Drawing.OURS;

    private static final double WIDTH = 900;
    private static final double HEIGHT = 420;
    private static final double LEFT_X = 60;
    private static final double TOP_Y = 62;
    private static final double BOTTOM_Y = 356;
    private static final double LOWEST_C = 5;
    private static final double HIGHEST_C = 60;
    private static final int TICK_HOURS = 6;
    private static final double LETTER_WIDTH = 6;

    private final Plan plan;
    private final Heaps heaps;
    private final List<Measured> readings;
    private final QuantityFormat quantities;
    private final MomentFormat moments;
    private final TimeScale time;
    private final ValueScale heat;
    private final Drawing pen = new Drawing(new Markup());

    /**
     * The heap as it is forecast.
     *
     * @param now by all that is known
     * @param before before any reading; empty where that is the same
     * @param readings what a thermometer in its middle showed, in time order
     */
    public record Heaps(HeapCurve now, Optional<HeapCurve> before, List<Measured> readings) {
        public Heaps {
            Objects.requireNonNull(now);
            Objects.requireNonNull(before);
            readings = List.copyOf(readings);
        }
    }

    private CouchChart(Plan plan, Heaps heaps, DisplayUnits units) {
        this.plan = plan;
        this.heaps = heaps;
        this.quantities = new QuantityFormat(units);
        this.moments = new MomentFormat(plan.subject().zone(), units.locale());
        HeapCurve heap = heaps.now();
        Instant until = heap.packedAt()
                .plus(Duration.ofMinutes(Math.round(60 * heap.schedule().longestHours())));
        this.time = new TimeScale(heap.packedAt().minus(Duration.ofHours(2)), until, LEFT_X, WIDTH - 12);
        this.heat = ValueScale.straight(LOWEST_C, HIGHEST_C, BOTTOM_Y, TOP_Y);
        this.readings = heaps.readings().stream()
                .filter(one -> one.kind() == Measured.Kind.READ && time.shows(one.at()))
                .toList();
    }

    /** The picture of a couched plan; ends with a line end. */
    public static String of(Plan plan, Heaps heaps, DisplayUnits units) {
        CouchChart chart = new CouchChart(plan, heaps, units);
        chart.draw();
        return chart.pen.markup().written() + "\n";
    }

    private void draw() {
        String title = Phrases.say(
                "chart.couch.title",
                Phrases.say("page.title", plan.subject().title(), plan.subject().lot()));
        pen.begin(WIDTH, HEIGHT, title, description());
        pen.words(4, 18, title, Letters.PLAIN.sized(14).bold());
        hours();
        levels();
        heaps.before()
                .ifPresent(before -> curve(before, Stroke.of(Ink.HEAT, 1.2).dashed(Frame.BEFORE_DASHES)));
        curve(heaps.now(), Stroke.of(Ink.HEAT, 2.4));
        acts();
        events();
        for (Measured one : readings) Marks.draw(pen, Measured.Kind.READ, spot(one.at(), one.figure()));
        legend();
        pen.end();
    }

    private String description() {
        HeapCurve heap = heaps.now();
        return Phrases.say(
                "chart.couch.description",
                moments.dated(heap.packedAt()),
                caughtAt().map(moments::dated).orElse("–"),
                quantities.temperature(
                        Math.rint(CouchProbe.MIDDLE.readingC(heap.curve().peak().pileC()))),
                moments.dated(heap.instant(heap.curve().peak().atHours())),
                Integer.toString(readings.size()),
                quantities.temperature(Ignition.CAUGHT_C));
    }

    private Spot spot(Instant at, double readC) {
        return new Spot(time.x(at), heat.y(readC));
    }

    private void hours() {
        for (LocalDate day : time.days(moments.zone())) {
            for (int hour = 0; hour < 24; hour += TICK_HOURS) {
                Instant at =
                        day.atTime(LocalTime.of(hour, 0)).atZone(moments.zone()).toInstant();
                if (!time.shows(at)) continue;
                pen.line(spot(at, LOWEST_C), spot(at, HIGHEST_C), Stroke.of(hour == 0 ? Ink.EDGE : Ink.GRID, 1));
                String words = hour == 0 ? moments.day(day) : moments.clock(at);
                pen.words(time.x(at), BOTTOM_Y + 15, words, Frame.TICK.centred());
            }
        }
    }

    private void levels() {
        for (double tickC = 10; tickC < HIGHEST_C; tickC += 10) {
            level(tickC, Stroke.of(Ink.GRID, 1));
            pen.words(LEFT_X - 6, heat.y(tickC) + 4, quantities.temperature(tickC), Frame.TICK.ending());
        }
        level(LOWEST_C, Stroke.of(Ink.EDGE, 1));
        named(Ignition.CAUGHT_C, Stroke.of(Ink.LEAF, 1.4).dashed("5 3"), "chart.couch.caught");
        double limitC = heaps.now().schedule().spreadAboveC();
        named(limitC, Stroke.of(Ink.GATE, 1.8).dashed("8 3"), "chart.couch.limit");
    }

    private void level(double readC, Stroke stroke) {
        pen.line(new Spot(LEFT_X, heat.y(readC)), new Spot(time.rightX(), heat.y(readC)), stroke);
    }

    private void named(double readC, Stroke stroke, String key) {
        level(readC, stroke);
        String words = Phrases.say(key, quantities.temperature(readC));
        double x = time.x(heaps.now().packedAt()) + 6;
        pen.words(x, heat.y(readC) - 4, words, Letters.PLAIN.sized(11));
    }

    private void curve(HeapCurve heap, Stroke stroke) {
        pen.through(
                heap.curve().points().stream()
                        .filter(point -> time.shows(heap.instant(point.atHours())))
                        .map(point -> spot(heap.instant(point.atHours()), CouchProbe.MIDDLE.readingC(point.pileC())))
                        .toList(),
                stroke);
    }

    /** Packing, looks and breaking as marks on the time axis; what lies after the breaking is only what would be. */
    private void acts() {
        for (Act act : plan.acts()) {
            boolean couch = act.kind() == ActKind.PACK || act.kind() == ActKind.CHECK || act.kind() == ActKind.BREAK;
            if (!couch || !time.shows(act.startsAt())) continue;
            double x = time.x(act.startsAt());
            double topY = act.kind() == ActKind.CHECK ? BOTTOM_Y - 12 : TOP_Y;
            pen.line(new Spot(x, topY), new Spot(x, BOTTOM_Y), Stroke.of(Ink.TEXT, 1.4));
            String name = Phrases.say("chart.couch." + act.kind().key());
            double y = act.kind() == ActKind.CHECK ? BOTTOM_Y - 16 : TOP_Y - 6;
            pen.words(x, y, name, Letters.PLAIN.sized(11).centred());
        }
    }

    private void events() {
        HeapCurve heap = heaps.now();
        caughtAt().ifPresent(this::caught);
        double peakC = CouchProbe.MIDDLE.readingC(heap.curve().peak().pileC());
        Instant peakAt = heap.instant(heap.curve().peak().atHours());
        if (caughtAt().isPresent()) event(peakAt, peakC, "chart.couch.peak", -14);
        heap.falls(CouchProbe.MIDDLE.meanC(Ignition.CAUGHT_C))
                .ifPresent(at -> event(at, Ignition.CAUGHT_C, "chart.couch.drops", -8));
    }

    private Optional<Instant> caughtAt() {
        return heaps.now().rises(CouchProbe.MIDDLE.meanC(Ignition.CAUGHT_C));
    }

    /** Where it passes 45 °C, with the stretch in which it will four times in five. */
    private void caught(Instant at) {
        HeapCurve heap = heaps.now();
        Optional<Measured> last =
                readings.isEmpty() ? Optional.empty() : Optional.of(readings.get(readings.size() - 1));
        Instant since = last.map(Measured::at).orElse(heap.packedAt());
        double ratio = CouchForecast.doubtFraction(heap.packedFraction(), readings.size());
        if (at.isAfter(since)) {
            Duration reach = Duration.ofMinutes(
                    Math.round(ratio * Duration.between(since, at).toMinutes()));
            double y = heat.y(Ignition.CAUGHT_C);
            whisker(time.x(time.clipped(at.minus(reach))), time.x(time.clipped(at.plus(reach))), y);
        }
        event(at, Ignition.CAUGHT_C, "chart.couch.rises", 24);
    }

    private void whisker(double fromX, double untilX, double y) {
        Stroke stroke = Stroke.of(Ink.HEAT, 2);
        pen.line(new Spot(fromX, y), new Spot(untilX, y), stroke);
        for (double x : List.of(fromX, untilX)) pen.line(new Spot(x, y - 5), new Spot(x, y + 5), stroke);
    }

    private void event(Instant at, double readC, String key, double belowY) {
        if (!time.shows(at)) return;
        Spot spot = spot(at, readC);
        pen.path(
                "M" + Drawing.at(new Spot(spot.x() - 4, spot.y())) + "l4 -4l4 4l-4 4Z",
                Stroke.of(Ink.TEXT, 1.4).filled(Ink.PAPER));
        String words = Phrases.say(key, moments.moment(at), quantities.temperature(Math.rint(readC)));
        boolean right = spot.x() + LETTER_WIDTH * words.length() > WIDTH;
        Letters letters = Letters.PLAIN.sized(11);
        pen.words(spot.x() + (right ? -8 : 8), spot.y() + belowY, words, right ? letters.ending() : letters);
    }

    private void legend() {
        double y = HEIGHT - 12;
        double x = line(LEFT_X, y, Stroke.of(Ink.HEAT, 2.4), "chart.couch.middle");
        if (heaps.before().isPresent()) {
            x = line(x, y, Stroke.of(Ink.HEAT, 1.2).dashed(Frame.BEFORE_DASHES), "chart.legend.before");
        }
        whisker(x, x + 24, y - 4);
        x = words(x + 30, y, "chart.couch.reach");
        if (readings.isEmpty()) return;
        Marks.draw(pen, Measured.Kind.READ, new Spot(x + 5, y - 4));
        pen.words(x + 14, y, Phrases.say("chart.legend.read"), Letters.PLAIN.sized(11));
    }

    private double line(double x, double y, Stroke stroke, String key) {
        pen.line(new Spot(x, y - 4), new Spot(x + 24, y - 4), stroke);
        return words(x + 30, y, key);
    }

    private double words(double x, double y, String key) {
        String words = Phrases.say(key);
        pen.words(x, y, words, Letters.PLAIN.sized(11));
        return x + words.length() * 6 + 16;
    }
}
