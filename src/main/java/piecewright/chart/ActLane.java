package piecewright.chart;

import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import piecewright.chart.Drawing.Letters;
import piecewright.chart.Drawing.Spot;
import piecewright.chart.Drawing.Stroke;
import piecewright.chart.Frame.Band;
import piecewright.plan.Act;

/** Days along the top and a marker for every act, stacked upward where they stand close. */
final class ActLane {
    private static final double MARK_WIDTH = 25;
    private static final double LEVEL_HEIGHT = 27;

    private final Frame frame;
    private final Band band;

    ActLane(Frame frame, Band band) {
        this.frame = frame;
        this.band = band;
    }

    void draw() {
        days();
        frame.lane(band, "acts");
        List<Act> acts = frame.plan().acts();
        List<Integer> levels = levels(acts, frame.time());
        List<Spot> middles = new ArrayList<>();
        for (int i = 0; i < acts.size(); i++) {
            double x = frame.time().x(acts.get(i).startsAt());
            Spot middle = new Spot(x, band.bottomY() - 18 - levels.get(i) * LEVEL_HEIGHT);
            frame.pen().line(new Spot(x, band.bottomY()), middle, Stroke.of(Ink.EDGE, 1));
            middles.add(middle);
        }
        for (int i = 0; i < acts.size(); i++) mark(acts.get(i), middles.get(i));
    }

    private void days() {
        for (LocalDate day : frame.time().days(frame.zone())) {
            Instant begins = day.atStartOfDay(frame.zone()).toInstant();
            Instant ends = day.plusDays(1).atStartOfDay(frame.zone()).toInstant();
            double fromX = frame.time().x(frame.time().clipped(begins));
            double untilX = frame.time().x(frame.time().clipped(ends));
            if (untilX - fromX < 40) continue;
            String name = frame.words().moments().day(day);
            frame.pen()
                    .words(
                            (fromX + untilX) / 2,
                            band.topY() - 8,
                            name,
                            Letters.PLAIN.sized(11).centred());
        }
    }

    private void mark(Act act, Spot middle) {
        Markup markup = frame.pen().markup();
        markup.open("g", "transform", "translate(" + Drawing.at(middle) + ")");
        String title = frame.words().sentences().actTitle(act);
        markup.leaf("title", title + ", " + frame.words().moments().moment(act.startsAt()));
        frame.pen()
                .path(
                        ActShape.of(act.kind()).outline(),
                        Stroke.of(Ink.TEXT, 1.5).filled(Ink.PAPER));
        frame.pen()
                .words(
                        0,
                        5,
                        ActShape.letters(act.kind()),
                        Letters.PLAIN.sized(10).bold().centred());
        markup.close().line();
    }

    /** How high the markers of these acts stand. */
    static double height(List<Act> acts, TimeScale time) {
        int highest =
                levels(acts, time).stream().mapToInt(Integer::intValue).max().orElse(0);
        return 12 + LEVEL_HEIGHT * (highest + 1);
    }

    private static List<Integer> levels(List<Act> acts, TimeScale time) {
        List<Integer> levels = new ArrayList<>();
        List<Double> reach = new ArrayList<>();
        for (Act act : acts) {
            double x = time.x(act.startsAt());
            int level = 0;
            while (level < reach.size() && reach.get(level) > x - MARK_WIDTH) level++;
            if (level == reach.size()) reach.add(x);
            else reach.set(level, x);
            levels.add(level);
        }
        return levels;
    }
}
