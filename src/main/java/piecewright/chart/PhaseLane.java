package piecewright.chart;

import java.time.Instant;
import piecewright.chart.Drawing.Letters;
import piecewright.chart.Drawing.Stroke;
import piecewright.chart.Frame.Band;
import piecewright.plan.Phase;
import piecewright.text.Phrases;

/** What the grain does by itself: a ribbon whose pattern tells water, growth, withering and kiln apart. */
final class PhaseLane {
    private static final double LETTER_WIDTH = 5.5;

    private final Frame frame;
    private final Band band;

    PhaseLane(Frame frame, Band band) {
        this.frame = frame;
        this.band = band;
    }

    void draw() {
        patterns();
        frame.pen().words(4, band.topY() + 16, Phrases.say("chart.lane.phases"), Frame.LABEL);
        for (Phase phase : frame.plan().phases()) {
            if (phase.from().isBefore(frame.time().until())) draw(phase);
        }
    }

    private void draw(Phase phase) {
        Instant until = frame.time().clipped(phase.until());
        double fromX = frame.time().x(phase.from());
        double width = frame.time().x(until) - fromX;
        Markup markup = frame.pen().markup();
        String name = frame.words().sentences().phaseTitle(phase.kind());
        markup.open("g").leaf("title", name + ": " + frame.words().sentences().phase(phase));
        frame.pen().box(fromX, band.topY(), width, band.bottomY() - band.topY(), fill(phase), Ink.EDGE);
        double nameWidth = name.length() * LETTER_WIDTH + 6;
        if (width > nameWidth) {
            double middleX = fromX + width / 2;
            frame.pen().box(middleX - nameWidth / 2, band.topY() + 3, nameWidth, 17, Ink.PAPER);
            frame.pen()
                    .words(
                            middleX,
                            band.topY() + 16,
                            name,
                            Letters.PLAIN.sized(10).centred());
        }
        markup.close().line();
    }

    private static String fill(Phase phase) {
        return switch (phase.kind()) {
            case IMMERSION -> "url(#pw-waves)";
            case GROWTH -> "url(#pw-dots)";
            case WITHERING -> "url(#pw-levels)";
            case DRYING, CURING -> "url(#pw-uprights)";
            default -> Ink.PAPER;
        };
    }

    private void patterns() {
        Markup markup = frame.pen().markup().open("defs").line();
        pattern("pw-waves", 12, 6, "M0 3Q3 0 6 3T12 3", Stroke.of(Ink.WATER, 1));
        pattern("pw-dots", 8, 8, "M3 4L5 4", Stroke.of(Ink.LEAF, 1.6));
        pattern("pw-levels", 8, 5, "M0 2.5L8 2.5", Stroke.of(Ink.LEAF, 1));
        pattern("pw-uprights", 6, 8, "M3 0L3 8", Stroke.of(Ink.HEAT, 1));
        markup.close().line();
    }

    private void pattern(String id, double width, double height, String path, Stroke stroke) {
        Markup markup = frame.pen().markup();
        markup.open(
                "pattern",
                "id",
                id,
                "patternUnits",
                "userSpaceOnUse",
                "width",
                Drawing.number(width),
                "height",
                Drawing.number(height));
        frame.pen().path(path, stroke);
        markup.close().line();
    }
}
