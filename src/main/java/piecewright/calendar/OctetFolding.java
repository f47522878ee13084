package piecewright.calendar;

import java.nio.charset.StandardCharsets;
import java.util.Arrays;

/**
 * Folds content lines at 75 octets (RFC 5545, 3.1), never inside a UTF-8 sequence nor between a backslash and what it
 * escapes; every line ends CRLF. Libraries count characters instead.
 */
final class OctetFolding {
    private static final int LONGEST = 75;

    private OctetFolding() {}

    /** The octets of unfolded lines that end LF or CRLF; control characters but HTAB are left out. */
    static byte[] fold(String lines) {
        return fold(lines.getBytes(StandardCharsets.UTF_8));
    }

    static byte[] fold(byte[] plain) {
        byte[] folded = new byte[2 * plain.length + 2]; // a line end grows by one octet, a fold adds three to over 70
        int used = 0;
        int inLine = 0;
        for (int at = 0; at < plain.length; ) {
            if (plain[at] == '\n') {
                folded[used++] = '\r';
                folded[used++] = '\n';
                inLine = 0;
                at++;
            } else if (isControl(plain[at])) {
                at++;
            } else {
                int length = unit(plain, at);
                if (inLine + length > LONGEST) {
                    folded[used++] = '\r';
                    folded[used++] = '\n';
                    folded[used++] = ' ';
                    inLine = 1;
                }
                for (int end = at + length; at < end; at++) folded[used++] = plain[at];
                inLine += length;
            }
        }
        return Arrays.copyOf(folded, used);
    }

    private static boolean isControl(byte octet) {
        return octet >= 0 && octet < 0x20 && octet != '\t' || octet == 0x7F;
    }

    /** Octets that must stay together from here on. */
    private static int unit(byte[] plain, int at) {
        int first = sequence(plain, at);
        boolean escape = plain[at] == '\\' && at + 1 < plain.length && plain[at + 1] >= 0x20;
        return escape ? 2 : first;
    }

    private static int sequence(byte[] plain, int at) {
        int end = at + 1;
        while (end < plain.length && (plain[end] & 0xC0) == 0x80) end++;
        return end - at;
    }
}
