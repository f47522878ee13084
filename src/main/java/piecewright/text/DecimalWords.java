package piecewright.text;

import java.text.NumberFormat;
import java.util.Locale;

/** Numbers that say their sign, in somebody's language. */
final class DecimalWords {
    private final Locale locale;

    DecimalWords(Locale locale) {
        this.locale = locale;
    }

    /** With + or −, and so many digits behind the sign of decimals. */
    String signed(double value, int digits) {
        NumberFormat format = NumberFormat.getNumberInstance(locale);
        format.setMinimumFractionDigits(digits);
        format.setMaximumFractionDigits(digits);
        String figure = format.format(Math.abs(value));
        boolean nought = Math.abs(value) < 0.5 * Math.pow(10, -digits);
        return nought ? figure : (value < 0 ? "−" : "+") + figure;
    }
}
