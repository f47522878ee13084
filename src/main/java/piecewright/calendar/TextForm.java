package piecewright.calendar;

/** The form of a TEXT value (RFC 5545, 3.3.11). */
final class TextForm {
    private TextForm() {}

    /** Whether every comma, semicolon and backslash is escaped and every escape is a known one. */
    static boolean isEscaped(String value) {
        for (int at = 0; at < value.length(); at++) {
            char next = value.charAt(at);
            if (next == ',' || next == ';') return false;
            if (next == '\\') {
                at++;
                if (at == value.length() || "\\,;nN".indexOf(value.charAt(at)) < 0) return false;
            }
        }
        return true;
    }
}
