package piecewright.text;

import java.text.MessageFormat;
import java.util.Locale;
import java.util.ResourceBundle;

/** The sentences of the bundle, filled with arguments that are written out already; for what {@link Wording} has no verb. */
public final class Phrases {
    private static final ResourceBundle BUNDLE = ResourceBundle.getBundle(
            "piecewright.text.wording",
            Locale.ROOT,
            ResourceBundle.Control.getNoFallbackControl(ResourceBundle.Control.FORMAT_PROPERTIES));

    private Phrases() {}

    public static String say(String key, String... arguments) {
        return new MessageFormat(BUNDLE.getString(key), Locale.ROOT).format(arguments);
    }

    /** Keys in the bundle are lower case with hyphens. */
    public static String key(Enum<?> constant) {
        return constant.name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
}
