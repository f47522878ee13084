package piecewright.chart;

import java.time.Duration;
import java.time.Instant;
import piecewright.chart.Drawing.Letters;
import piecewright.chart.Drawing.Spot;
import piecewright.chart.Drawing.Stroke;
import piecewright.chart.Frame.Band;
import piecewright.plan.Act;
import piecewright.plan.Availability;
import piecewright.plan.Plan;
import piecewright.plan.PlanRequest;
import piecewright.text.DisplayUnits;
import piecewright.text.MomentFormat;
import piecewright.text.Phrases;
import piecewright.text.QuantityFormat;
import piecewright.text.Wording;

/**
 * A plan along its days as one SVG picture: acts, phases, moisture, heat and growth under one time axis, hours without
 * anybody shaded. Reads in black and white: every line has its word, dash or lane.
 */
public final class PlanChart {
    /** Stands in every picture of ours and tells it from others. */
    public static final String OURS = Drawing.OURS;

    private static final double WIDTH = 900;
    private static final double LEFT_X = 78;
    private static final double ACTS_TOP_Y = 52;
    private static final Duration BEFORE = Duration.ofHours(4);
    private static final Duration AFTER = Duration.ofHours(6);

    private final PlanRequest request;
    private final Marks marks;
    private final Frame frame;

    private PlanChart(PlanRequest request, Plan plan, DisplayUnits units, Drawing pen, Marks marks) {
        this.request = request;
        this.marks = marks;
        Act last = plan.acts().get(plan.acts().size() - 1);
        TimeScale time =
                new TimeScale(plan.startsAt().minus(BEFORE), last.endsAt().plus(AFTER), LEFT_X, WIDTH - 10);
        Frame.Words words = new Frame.Words(
                units.system(),
                new Wording(units, plan.subject().zone()),
                new QuantityFormat(units),
                new MomentFormat(plan.subject().zone(), units.locale()));
        this.frame = new Frame(plan, time, pen, words);
    }

    /** The picture; what became of the plan stands over the forecast. Ends with a line end. */
    public static String of(PlanRequest request, Plan plan, DisplayUnits units, Followed followed) {
        Markup markup = new Markup();
        into(markup, request, plan, units, followed);
        return markup.written() + "\n";
    }

    /** Draws the picture inside another document. */
    public static void into(Markup markup, PlanRequest request, Plan plan, DisplayUnits units, Followed followed) {
        new PlanChart(request, plan, units, new Drawing(markup), new Marks(followed)).draw();
    }

    private void draw() {
        double actsBottomY = ACTS_TOP_Y + ActLane.height(frame.plan().acts(), frame.time());
        Band acts = new Band(ACTS_TOP_Y, actsBottomY);
        Band phases = new Band(actsBottomY + 8, actsBottomY + 30);
        Band moisture = new Band(phases.bottomY() + 12, phases.bottomY() + 152);
        Band heat = new Band(moisture.bottomY() + 14, moisture.bottomY() + 164);
        Band growth = new Band(heat.bottomY() + 14, heat.bottomY() + 74);
        double bottomY = growth.bottomY() + 28;
        frame.pen().begin(WIDTH, bottomY, title(), description());
        frame.pen().words(4, 16, title(), Letters.PLAIN.sized(13).bold());
        away(new Band(acts.topY(), growth.bottomY()));
        new PhaseLane(frame, phases).draw();
        new ActLane(frame, acts).draw();
        new MoistureLane(frame, moisture, marks).draw();
        new HeatLane(frame, heat, marks, request.house()).draw();
        new GrowthLane(frame, growth, marks, request.style().growth().acrospireFraction()).draw();
        now(new Band(acts.topY(), growth.bottomY()));
        legend(bottomY - 9);
        frame.pen().end();
    }

    private String title() {
        Plan.Subject subject = frame.plan().subject();
        return Phrases.say(
                "chart.plan.title",
                Phrases.say("page.title", subject.title(), subject.lot()),
                frame.words().moments().dated(subject.readyAt()));
    }

    private String description() {
        Plan plan = frame.plan();
        double wettest = plan.course().stream()
                .mapToDouble(sample -> sample.state().mass().moisture().wetBasisFraction())
                .max()
                .orElse(0);
        return Phrases.say(
                "chart.plan.description",
                Integer.toString(plan.acts().size()),
                frame.words().moments().dated(plan.startsAt()),
                frame.words()
                        .moments()
                        .dated(plan.acts().get(plan.acts().size() - 1).endsAt()),
                frame.words().quantities().percent(wettest),
                frame.words().quantities().moisture(plan.outcome().endMoisture()));
    }

    private void away(Band whole) {
        Instant from = frame.time().from();
        Instant until = frame.time().until();
        Instant free = from;
        for (Availability.Stretch there :
                Availability.of(request.house(), from, until).stretches()) {
            if (free.isBefore(there.from())) shade(free, frame.time().clipped(there.from()), whole);
            free = free.isBefore(there.until()) ? frame.time().clipped(there.until()) : free;
        }
        if (free.isBefore(until)) shade(free, until, whole);
    }

    private void shade(Instant from, Instant until, Band whole) {
        double fromX = frame.time().x(from);
        double width = frame.time().x(until) - fromX;
        frame.pen().box(fromX, whole.topY(), width, whole.bottomY() - whole.topY(), Ink.NIGHT);
    }

    private void now(Band whole) {
        marks.followed().now().filter(frame.time()::shows).ifPresent(now -> {
            frame.upright(now, whole, Stroke.of(Ink.TEXT, 1.6));
            String words = Phrases.say("chart.now");
            double x = frame.time().x(now) + 4;
            frame.pen().words(x, whole.topY() + 10, words, Letters.PLAIN.sized(11));
        });
    }

    private void legend(double y) {
        double x = LEFT_X;
        frame.pen().box(x, y - 10, 14, 12, Ink.NIGHT, Ink.EDGE);
        x = words(x + 20, y, "chart.legend.away");
        x = line(x, y, Stroke.of(Ink.HEAT, 2.2), "chart.legend.grain");
        x = line(x, y, Stroke.of(Ink.AIR, 1.6).dashed("2 3.5"), "chart.legend.air");
        x = line(x, y, Stroke.of(Ink.LEAF, 1.4).dashed("5 3"), "chart.legend.aim");
        if (marks.followed().before().isPresent()) {
            x = line(x, y, Stroke.of(Ink.TEXT, 1.2).dashed(Frame.BEFORE_DASHES), "chart.legend.before");
        }
        for (Measured.Kind kind : Measured.Kind.values()) {
            if (marks.followed().measured().stream().noneMatch(one -> one.kind() == kind)) continue;
            Marks.draw(frame.pen(), kind, new Spot(x + 5, y - 4));
            x = words(x + 14, y, "chart.legend." + Phrases.key(kind));
        }
    }

    private double line(double x, double y, Stroke stroke, String key) {
        frame.pen().line(new Spot(x, y - 4), new Spot(x + 24, y - 4), stroke);
        return words(x + 30, y, key);
    }

    private double words(double x, double y, String key) {
        String words = Phrases.say(key);
        frame.pen().words(x, y, words, Letters.PLAIN.sized(11));
        return x + words.length() * 6 + 16;
    }
}
