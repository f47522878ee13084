package piecewright.calendar;

import java.io.ByteArrayOutputStream;
import java.nio.charset.StandardCharsets;

/**
 * Folds content lines at 75 octets (RFC 5545, 3.1), never inside a UTF-8 sequence nor between a backslash and what it
 * escapes; every line ends CRLF. Libraries count characters instead.
 */
final class OctetFolding {
    private static final int LONGEST = 75;

    private OctetFolding() {}

    /** The octets of unfolded lines that end LF or CRLF; control characters but HTAB are left out. */
    static byte[] fold(String lines) {
        byte[] plain = lines.getBytes(StandardCharsets.UTF_8);
        ByteArrayOutputStream folded = new ByteArrayOutputStream(plain.length + plain.length / 32 + 16);
        int used = 0;
        for (int at = 0; at < plain.length; ) {
            if (plain[at] == '\n') {
                folded.write('\r');
                folded.write('\n');
                used = 0;
                at++;
            } else if (isControl(plain[at])) {
                at++;
            } else {
                int length = unit(plain, at);
                if (used + length > LONGEST) {
                    folded.write('\r');
                    folded.write('\n');
                    folded.write(' ');
                    used = 1;
                }
                folded.write(plain, at, length);
                used += length;
                at += length;
            }
        }
        return folded.toByteArray();
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
