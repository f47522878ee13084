package piecewright.calendar;

/** Text made fit for a calendar: no control characters, LF line ends, bounded length, no blanks around it. */
final class CleanText {
    private CleanText() {}

    /** One line of at most so many UTF-16 units; a cut shows as "…". */
    static String line(String raw, int longest) {
        return cut(clean(raw).replace('\n', ' ').strip(), longest);
    }

    /** Several lines parted by LF, together at most so many UTF-16 units. */
    static String block(String raw, int longest) {
        return cut(clean(raw).strip(), longest);
    }

    private static String cut(String text, int longest) {
        if (text.length() <= longest) return text;
        int end = longest - 1;
        if (Character.isHighSurrogate(text.charAt(end - 1))) end--;
        return text.substring(0, end).stripTrailing() + "…";
    }

    private static String clean(String raw) {
        StringBuilder clean = new StringBuilder(raw.length());
        String lines = raw.replace("\r\n", "\n");
        for (int at = 0; at < lines.length(); ) {
            int point = lines.codePointAt(at);
            at += Character.charCount(point);
            append(clean, point);
        }
        return clean.toString();
    }

    private static void append(StringBuilder clean, int point) {
        if (point == '\n' || point == '\r' || point == 0x85 || point == 0x2028 || point == 0x2029) {
            clean.append('\n'); // some readers end a line at any of these
        } else if (point == '\t') {
            clean.append(' ');
        } else if (point >= Character.MIN_SURROGATE && point <= Character.MAX_SURROGATE) {
            clean.append('\uFFFD');
        } else if (!Character.isISOControl(point) && point != 0xFEFF && (point & 0xFFFE) != 0xFFFE) {
            clean.appendCodePoint(point);
        }
    }
}
