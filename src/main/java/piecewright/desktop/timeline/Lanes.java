package piecewright.desktop.timeline;

/**
 * Where each lane lies, in pixels from the top; moisture is the tallest.
 *
 * @param marker side of the marker of an act
 */
record Lanes(
        Band days,
        Band acts,
        Band others,
        Band ribbon,
        Band moisture,
        Band heat,
        Band growth,
        Band colour,
        double marker) {
    /** Side of the marker of an act at the usual size of text, pixels. */
    private static final double USUAL_MARKER = 24;

    private static final double USUAL_LINE = 14;

    /** Height of the row of another piece, in lines of text. */
    static final double ROW = 1.5;

    /** A lane. */
    record Band(double top, double height) {
        double bottom() {
            return top + height;
        }

        /** The pixel of a share of the height, 0 at the foot; a little air is left above and below. */
        double y(double heightRatio) {
            double inset = Math.min(10, height * 0.1);
            return bottom() - inset - heightRatio * (height - 2 * inset);
        }
    }

    /**
     * @param height of all lanes together
     * @param lineHeight of one line of text
     * @param others so many pieces beside this one, a row each
     */
    static Lanes of(double height, double lineHeight, int others) {
        double days = Math.round(lineHeight * 1.6);
        double ribbon = Math.round(lineHeight * 2.3);
        double colour = Math.round(lineHeight * 1.9);
        double marker = Math.round(USUAL_MARKER * Math.max(1, lineHeight / USUAL_LINE));
        double acts = Math.round(Math.max(4.2 * marker, Math.min(4.9 * marker, height * 0.18)));
        double besides = others == 0 ? 0 : Math.round(others * lineHeight * ROW) + 6;
        double rest = Math.max(120, height - days - ribbon - colour - acts - besides);
        double heat = Math.round(rest * 0.31);
        double growth = Math.round(rest * 0.22);
        double moisture = Math.round(rest - heat - growth);
        Band first = new Band(0, days);
        Band second = after(first, acts);
        Band third = after(second, besides);
        Band fourth = after(third, ribbon);
        Band fifth = after(fourth, moisture);
        Band sixth = after(fifth, heat);
        Band seventh = after(sixth, growth);
        return new Lanes(first, second, third, fourth, fifth, sixth, seventh, after(seventh, colour), marker);
    }

    private static Band after(Band above, double height) {
        return new Band(above.bottom(), height);
    }

    double bottom() {
        return colour.bottom();
    }
}
