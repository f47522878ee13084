package piecewright.calendar;

import java.nio.charset.StandardCharsets;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Deque;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** Reads iCalendar octets into components: unfolds, splits, nests; forgiving about line ends, about nothing else. */
final class IcsReading {
    private static final int DEEPEST = 8;

    private IcsReading() {}

    /** The one calendar in these octets; empty if they are not well formed. */
    static Optional<IcsComponent> calendar(byte[] octets) {
        Deque<IcsComponent> open = new ArrayDeque<>();
        Optional<IcsComponent> whole = Optional.empty();
        for (String text : unfolded(octets)) {
            Optional<IcsLine> line = line(text);
            if (line.isEmpty() || whole.isPresent()) return Optional.empty();
            String name = line.get().name();
            String value = line.get().value().toUpperCase(Locale.ROOT);
            if (name.equals("BEGIN")) {
                if (open.size() >= DEEPEST || open.isEmpty() && !value.equals("VCALENDAR")) return Optional.empty();
                open.push(new IcsComponent(value, new ArrayList<>(), new ArrayList<>()));
            } else if (open.isEmpty()) {
                return Optional.empty();
            } else if (!name.equals("END")) {
                boolean late = open.size() == 1 && !open.element().inside().isEmpty();
                if (late) return Optional.empty();
                open.element().lines().add(line.get());
            } else {
                IcsComponent closed = open.pop();
                if (!closed.name().equals(value)) return Optional.empty();
                if (open.isEmpty()) whole = Optional.of(closed);
                else open.element().inside().add(closed);
            }
        }
        return whole;
    }

    /** The logical lines without their ends. */
    static List<String> unfolded(byte[] octets) {
        String text = new String(unfoldedOctets(octets), StandardCharsets.UTF_8);
        List<String> lines = new ArrayList<>();
        for (int from = 0; from < text.length(); ) {
            int end = text.indexOf('\n', from);
            lines.add(text.substring(from, end));
            from = end + 1;
        }
        return lines;
    }

    /** The logical lines, each ended by LF; unfolded as octets, so that a split UTF-8 sequence is mended. */
    static byte[] unfoldedOctets(byte[] octets) {
        byte[] logical = new byte[octets.length + 1];
        int used = 0;
        for (int at = 0; at < octets.length; at++) {
            if (octets[at] != '\n') {
                logical[used++] = octets[at];
                continue;
            }
            if (used > 0 && logical[used - 1] == '\r') used--;
            boolean goesOn = at + 1 < octets.length && (octets[at + 1] == ' ' || octets[at + 1] == '\t');
            if (goesOn) at++;
            else logical[used++] = '\n';
        }
        if (used > 0 && logical[used - 1] != '\n') logical[used++] = '\n';
        return Arrays.copyOf(logical, used);
    }

    /** A content line in its parts; empty if it is none. */
    static Optional<IcsLine> line(String text) {
        int nameEnd = tokenEnd(text, 0);
        if (nameEnd == 0) return Optional.empty();
        List<String> parameters = new ArrayList<>();
        int at = nameEnd;
        while (at < text.length() && text.charAt(at) == ';') {
            int end = parameterEnd(text, at + 1);
            int token = tokenEnd(text, at + 1);
            if (token == at + 1 || token >= end || text.charAt(token) != '=') return Optional.empty();
            parameters.add(text.substring(at + 1, end));
            at = end;
        }
        if (at >= text.length() || text.charAt(at) != ':') return Optional.empty();
        String name = text.substring(0, nameEnd).toUpperCase(Locale.ROOT);
        return Optional.of(new IcsLine(name, parameters, text.substring(at + 1)));
    }

    private static int parameterEnd(String text, int from) {
        boolean quoted = false;
        for (int at = from; at < text.length(); at++) {
            char next = text.charAt(at);
            if (next == '"') quoted = !quoted;
            else if (!quoted && (next == ';' || next == ':')) return at;
        }
        return text.length();
    }

    private static int tokenEnd(String text, int from) {
        int at = from;
        while (at < text.length() && isToken(text.charAt(at))) at++;
        return at;
    }

    private static boolean isToken(char next) {
        return next >= 'A' && next <= 'Z' || next >= 'a' && next <= 'z' || next >= '0' && next <= '9' || next == '-';
    }
}
