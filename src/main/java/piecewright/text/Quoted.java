package piecewright.text;

/** Foreign text made fit to stand inside a one-line message: short, without line ends or control characters. */
public final class Quoted {
    private static final int LONGEST = 60;

    private Quoted() {}

    /** At most 60 characters; control, format and broken characters become "?", what is cut off becomes "…". */
    public static String shortly(String text) {
        StringBuilder line = new StringBuilder();
        int[] points = text.codePoints().limit(LONGEST + 1L).toArray();
        for (int i = 0; i < Math.min(points.length, LONGEST); i++) {
            line.appendCodePoint(unfit(points[i]) ? '?' : points[i]);
        }
        return points.length > LONGEST ? line + "…" : line.toString();
    }

    /**
     * Whether a sign has no place in one plain line: controls, line ends, marks that turn text around. The two joiners
     * are letters' own in Persian, Hindi and many other scripts (The Unicode Standard, section 23.2) and may stand.
     */
    public static boolean unfit(int point) {
        int type = Character.getType(point);
        return type == Character.CONTROL
                || type == Character.FORMAT && !joiner(point)
                || type == Character.SURROGATE
                || type == Character.LINE_SEPARATOR
                || type == Character.PARAGRAPH_SEPARATOR;
    }

    /** Zero width non-joiner and joiner. */
    public static boolean joiner(int point) {
        return point == 0x200c || point == 0x200d;
    }
}
