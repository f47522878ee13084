package piecewright.reading;

import java.util.List;
import java.util.function.Supplier;
import piecewright.text.Phrases;

/** A way of reading a line leads to what cannot be. Never leaves the reader. */
final class NotSoException extends Exception {
    private static final long serialVersionUID = 1L;

    private final String key;
    private final transient Supplier<List<String>> arguments;

    NotSoException(String key, String... arguments) {
        this(key, () -> List.of(arguments));
    }

    /** Arguments that take long to write are written when somebody reads them. */
    NotSoException(String key, Supplier<List<String>> arguments) {
        super(key, null, false, false);
        this.key = key;
        this.arguments = arguments;
    }

    String sentence() {
        return Phrases.say(key, arguments.get().toArray(String[]::new));
    }
}
