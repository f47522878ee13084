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

    /** Quantities that stand in the words themselves are metric: for readers who read no others. */
    public static String say(String key, String... arguments) {
        return said(FixedQuantities.metric(BUNDLE.getString(key)), arguments);
    }

    /** The same with those quantities in the units of whoever reads them. */
    static String say(QuantityFormat quantities, String key, String... arguments) {
        return said(FixedQuantities.in(quantities, BUNDLE.getString(key)), arguments);
    }

    private static String said(String words, String... arguments) {
        return new MessageFormat(words, Locale.ROOT).format(arguments);
    }

    /** Keys in the bundle are lower case with hyphens. */
    public static String key(Enum<?> constant) {
        return constant.name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
}
