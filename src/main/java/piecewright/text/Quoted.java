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
            int type = Character.getType(points[i]);
            boolean unfit = type == Character.CONTROL
                    || type == Character.FORMAT
                    || type == Character.SURROGATE
                    || type == Character.LINE_SEPARATOR
                    || type == Character.PARAGRAPH_SEPARATOR;
            line.appendCodePoint(unfit ? '?' : points[i]);
        }
        return points.length > LONGEST ? line + "…" : line.toString();
    }
}
