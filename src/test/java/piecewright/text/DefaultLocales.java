package piecewright.text;

import java.util.List;
import java.util.Locale;
import java.util.function.Supplier;

/** Runs a piece of code under default locales that have tripped programs before: dotless i, other digits, comma. */
public final class DefaultLocales {
    public static final List<String> TRIPPING = List.of("tr-TR", "ar-EG", "th-TH-u-ca-buddhist-nu-thai", "de-DE");

    private DefaultLocales() {}

    public static <T> T under(String tag, Supplier<T> code) {
        Locale before = Locale.getDefault();
        Locale.setDefault(Locale.forLanguageTag(tag));
        try {
            return code.get();
        } finally {
            Locale.setDefault(before);
        }
    }
}
