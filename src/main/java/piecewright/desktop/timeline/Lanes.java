package piecewright.desktop.timeline;

/** Where each lane lies, in pixels from the top; moisture is the tallest. */
record Lanes(Band days, Band acts, Band ribbon, Band moisture, Band heat, Band growth, Band colour) {
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
     */
    static Lanes of(double height, double lineHeight) {
        double days = Math.round(lineHeight * 1.6);
        double ribbon = Math.round(lineHeight * 2.3);
        double colour = Math.round(lineHeight * 1.9);
        double acts = Math.round(Math.max(100, Math.min(118, height * 0.18)));
        double rest = Math.max(120, height - days - ribbon - colour - acts);
        double heat = Math.round(rest * 0.31);
        double growth = Math.round(rest * 0.22);
        double moisture = Math.round(rest - heat - growth);
        Band first = new Band(0, days);
        Band second = after(first, acts);
        Band third = after(second, ribbon);
        Band fourth = after(third, moisture);
        Band fifth = after(fourth, heat);
        Band sixth = after(fifth, growth);
        return new Lanes(first, second, third, fourth, fifth, sixth, after(sixth, colour));
    }

    private static Band after(Band above, double height) {
        return new Band(above.bottom(), height);
    }

    double bottom() {
        return colour.bottom();
    }
}
