package piecewright.text;

import java.text.NumberFormat;
import java.util.Locale;

/** Numbers in somebody's language, with their sign or without. */
final class DecimalWords {
    private final Locale locale;

    DecimalWords(Locale locale) {
        this.locale = locale;
    }

    /** With + or −, and so many digits behind the sign of decimals. */
    String signed(double value, int digits) {
        String figure = plain(Math.abs(value), digits);
        boolean nought = Math.abs(value) < 0.5 * Math.pow(10, -digits);
        return nought ? figure : (value < 0 ? "−" : "+") + figure;
    }

    /** So many digits behind the sign of decimals. */
    String plain(double value, int digits) {
        NumberFormat format = NumberFormat.getNumberInstance(locale);
        format.setMinimumFractionDigits(digits);
        format.setMaximumFractionDigits(digits);
        return format.format(value);
    }
}
