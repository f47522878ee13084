package piecewright.text;

import java.util.List;

/** A line cannot be understood without asking. Never leaves the reader of lines. */
final class UnclearException extends Exception {
    private static final long serialVersionUID = 1L;

    private final transient List<String> choices;

    UnclearException(String question, List<String> choices) {
        super(question);
        this.choices = List.copyOf(choices);
    }

    UnclearException(String question) {
        this(question, List.of());
    }

    LineReading.Unclear reading() {
        return new LineReading.Unclear(String.valueOf(getMessage()), choices);
    }
}
