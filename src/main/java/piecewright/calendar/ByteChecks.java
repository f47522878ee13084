package piecewright.calendar;

import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.CodingErrorAction;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.List;

/** Checks 1 to 5: what can be said of the octets before they are understood. */
final class ByteChecks {
    private static final byte[] BEGIN = "BEGIN:VCALENDAR\r\n".getBytes(StandardCharsets.US_ASCII);
    private static final byte[] END = "\r\nEND:VCALENDAR\r\n".getBytes(StandardCharsets.US_ASCII);

    private ByteChecks() {}

    static void check(byte[] octets, List<IcsFault> faults) {
        if (!isUtf8(octets, 0, octets.length)) faults.add(new IcsFault(1, "not UTF-8"));
        if (!startsWith(octets, BEGIN)) faults.add(new IcsFault(1, "does not begin with BEGIN:VCALENDAR"));
        if (!endsWith(octets, END)) faults.add(new IcsFault(2, "does not end with END:VCALENDAR and CRLF"));
        int lineStart = 0;
        for (int at = 0; at < octets.length; at++) {
            boolean crlf = octets[at] == '\r' && at + 1 < octets.length && octets[at + 1] == '\n';
            if (crlf) {
                line(octets, lineStart, at, faults);
                lineStart = at + 2;
                at++;
            } else if (octets[at] == '\r' || octets[at] == '\n') {
                faults.add(new IcsFault(2, "bare CR or LF at octet " + at));
            } else if (octets[at] >= 0 && octets[at] < 0x20 && octets[at] != '\t' || octets[at] == 0x7F) {
                faults.add(new IcsFault(4, "control character at octet " + at));
            }
        }
        if (!Arrays.equals(OctetFolding.fold(IcsReading.unfoldedOctets(octets)), octets)) {
            faults.add(new IcsFault(3, "unfolding and folding again gives other octets"));
        }
    }

    private static void line(byte[] octets, int from, int until, List<IcsFault> faults) {
        if (until == from) faults.add(new IcsFault(5, "blank line at octet " + from));
        if (until - from > 75) faults.add(new IcsFault(3, "line of " + (until - from) + " octets at octet " + from));
        if (!isUtf8(octets, from, until)) faults.add(new IcsFault(3, "fold inside a character at octet " + from));
    }

    private static boolean isUtf8(byte[] octets, int from, int until) {
        int at = from;
        while (at < until && octets[at] >= 0) at++;
        if (at == until) return true;
        try {
            StandardCharsets.UTF_8
                    .newDecoder()
                    .onMalformedInput(CodingErrorAction.REPORT)
                    .decode(ByteBuffer.wrap(octets, at, until - at));
            return true;
        } catch (CharacterCodingException notUtf8) {
            return false;
        }
    }

    private static boolean startsWith(byte[] octets, byte[] start) {
        return octets.length >= start.length && Arrays.equals(octets, 0, start.length, start, 0, start.length);
    }

    private static boolean endsWith(byte[] octets, byte[] end) {
        int from = octets.length - end.length;
        return from >= 0 && Arrays.equals(octets, from, octets.length, end, 0, end.length);
    }
}
