package piecewright.calendar;

import java.util.List;
import java.util.Optional;

/**
 * One unfolded content line.
 *
 * @param name in upper case
 * @param parameters as written, such as "VALUE=DATE-TIME"
 * @param value as written, still escaped
 */
record IcsLine(String name, List<String> parameters, String value) {
    IcsLine {
        parameters = List.copyOf(parameters);
    }

    /** The value of a parameter without its quotes. */
    Optional<String> parameter(String wanted) {
        for (String parameter : parameters) {
            int equals = parameter.indexOf('=');
            if (equals > 0 && parameter.substring(0, equals).equalsIgnoreCase(wanted)) {
                return Optional.of(parameter.substring(equals + 1).replace("\"", ""));
            }
        }
        return Optional.empty();
    }

    /** The value as text, escapes undone. */
    String text() {
        if (value.indexOf('\\') < 0) return value;
        StringBuilder text = new StringBuilder(value.length());
        for (int at = 0; at < value.length(); at++) {
            char next = value.charAt(at);
            if (next != '\\' || at + 1 == value.length()) {
                text.append(next);
            } else {
                char escaped = value.charAt(++at);
                text.append(escaped == 'n' || escaped == 'N' ? '\n' : escaped);
            }
        }
        return text.toString();
    }
}
