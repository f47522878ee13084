package piecewright.chart;

import java.util.List;
import java.util.Locale;

/** The few shapes pictures are made of, written as SVG elements; lengths in user units, y downward. */
final class Drawing {
    /** Stands in every picture of ours and tells it from others. */
    static final String OURS = "piecewright-picture";

    static final String FONT = "Lato, 'DejaVu Sans', 'Liberation Sans', Arial, sans-serif";

    private final Markup markup;

    Drawing(Markup markup) {
        this.markup = markup;
    }

    /** A point of a line. */
    record Spot(double x, double y) {}

    Markup markup() {
        return markup;
    }

    /** Begins a picture that screen readers tell by its title and description. */
    Drawing begin(double width, double height, String title, String description) {
        markup.open(
                "svg",
                "xmlns",
                "http://www.w3.org/2000/svg",
                "viewBox",
                "0 0 " + number(width) + " " + number(height),
                "width",
                number(width),
                "height",
                number(height),
                "class",
                OURS,
                "role",
                "img",
                "aria-labelledby",
                "pw-title pw-desc",
                "font-family",
                FONT,
                "font-size",
                "12");
        markup.line().leaf("title", title, "id", "pw-title").line();
        markup.leaf("desc", description, "id", "pw-desc").line();
        return box(0, 0, width, height, Ink.PAPER);
    }

    void end() {
        markup.close();
    }

    Drawing box(double x, double y, double width, double height, String... style) {
        String fill = style.length == 0 ? "none" : style[0];
        String stroke = style.length < 2 ? "none" : style[1];
        markup.single(
                "rect",
                "x",
                number(x),
                "y",
                number(y),
                "width",
                number(width),
                "height",
                number(height),
                "fill",
                fill,
                "stroke",
                stroke);
        return this;
    }

    Drawing line(Spot from, Spot until, Stroke stroke) {
        return path("M" + at(from) + "L" + at(until), stroke);
    }

    /** A line through spots; nothing when there are fewer than two. */
    Drawing through(List<Spot> spots, Stroke stroke) {
        if (spots.size() < 2) return this;
        StringBuilder path = new StringBuilder("M").append(at(spots.get(0)));
        for (Spot spot : spots.subList(1, spots.size())) path.append('L').append(at(spot));
        return path(path.toString(), stroke);
    }

    Drawing path(String path, Stroke stroke) {
        markup.single(
                "path",
                "d",
                path,
                "fill",
                stroke.fill(),
                "stroke",
                stroke.colour(),
                "stroke-width",
                number(stroke.width()),
                "stroke-dasharray",
                stroke.dashes(),
                "stroke-linejoin",
                "round");
        markup.line();
        return this;
    }

    /** Words whose baseline begins, is centred or ends at x. */
    Drawing words(double x, double y, String words, Letters letters) {
        markup.leaf(
                "text",
                words,
                "x",
                number(x),
                "y",
                number(y),
                "text-anchor",
                letters.anchor(),
                "font-size",
                number(letters.size()),
                "font-weight",
                letters.weight(),
                "fill",
                letters.colour());
        markup.line();
        return this;
    }

    static String at(Spot spot) {
        return number(spot.x()) + " " + number(spot.y());
    }

    static String number(double figure) {
        String written = String.format(Locale.ROOT, "%.1f", figure);
        return written.endsWith(".0") ? written.substring(0, written.length() - 2) : written;
    }

    /** How a line is drawn; dashes as SVG has them. */
    record Stroke(String colour, double width, String dashes, String fill) {
        static Stroke of(String colour, double width) {
            return new Stroke(colour, width, "none", "none");
        }

        Stroke dashed(String changed) {
            return new Stroke(colour, width, changed, fill);
        }

        Stroke filled(String changed) {
            return new Stroke(colour, width, dashes, changed);
        }
    }

    /** How words are set. */
    record Letters(String anchor, double size, String weight, String colour) {
        static final Letters PLAIN = new Letters("start", 12, "400", Ink.TEXT);

        Letters ending() {
            return new Letters("end", size, weight, colour);
        }

        Letters centred() {
            return new Letters("middle", size, weight, colour);
        }

        Letters bold() {
            return new Letters(anchor, size, "700", colour);
        }

        Letters in(String changed) {
            return new Letters(anchor, size, weight, changed);
        }

        Letters sized(double changed) {
            return new Letters(anchor, changed, weight, colour);
        }
    }
}
