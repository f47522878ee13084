package piecewright.text;

import java.text.DecimalFormatSymbols;
import java.util.Locale;

/** Reads one number with "," or "." decimals; where the sign could also group thousands it refuses to guess. */
public final class DecimalReader {
    private static final int MOST_DIGITS = 15;

    private final char decimalSign;

    DecimalReader(Locale locale) {
        char sign = DecimalFormatSymbols.getInstance(locale).getDecimalSeparator();
        this.decimalSign = sign == '٫' ? ',' : sign;
    }

    /** Any script's digits and decimal signs as ASCII; direction marks dropped, hard spaces softened. */
    public static String plain(String typed) {
        StringBuilder plain = new StringBuilder(typed.length());
        typed.codePoints().forEach(point -> {
            if (Character.isDigit(point)) plain.append((char) ('0' + Character.digit(point, 10)));
            else if (point == '٫') plain.append(',');
            else if (point == '٬') plain.append('\'');
            else if (point == '\u2212') plain.append('-');
            else if (point == '\u200e' || point == '\u200f' || point == '\u061c') return;
            else if (Character.isSpaceChar(point) || Character.isWhitespace(point)) plain.append(' ');
            else plain.appendCodePoint(point);
        });
        return plain.toString().strip();
    }

    /** The number written as digits with "," and "."; the message of the exception is a clause. */
    double read(String digits) throws UnreadableException {
        if (digits.chars().filter(Character::isDigit).count() > MOST_DIGITS) {
            throw new UnreadableException("the number has too many digits");
        }
        int lastComma = digits.lastIndexOf(',');
        int lastPoint = digits.lastIndexOf('.');
        if (lastComma < 0 && lastPoint < 0) return Double.parseDouble(digits);
        if (lastComma >= 0 && lastPoint >= 0) return readBoth(digits, Math.max(lastComma, lastPoint));
        char sign = lastComma >= 0 ? ',' : '.';
        return digits.indexOf(sign) == digits.lastIndexOf(sign) ? readOne(digits, sign) : readGroups(digits, sign);
    }

    private double readOne(String digits, char sign) throws UnreadableException {
        int at = digits.indexOf(sign);
        String whole = digits.substring(0, at);
        String part = digits.substring(at + 1);
        if (whole.isEmpty() || part.isEmpty()) {
            throw new UnreadableException("there must be a digit before and after the \"" + sign + "\"");
        }
        boolean couldGroup = part.length() == 3 && whole.length() <= 3 && !whole.startsWith("0");
        if (sign != decimalSign && couldGroup) {
            throw new UnreadableException("\"" + digits + "\" could mean " + whole + part + " or " + whole + decimalSign
                    + part + ": write " + whole + part + " or " + whole + decimalSign + part + "0");
        }
        return Double.parseDouble(whole + "." + part);
    }

    private static double readBoth(String digits, int decimalAt) throws UnreadableException {
        char grouping = digits.charAt(decimalAt) == ',' ? '.' : ',';
        String whole = digits.substring(0, decimalAt);
        String part = digits.substring(decimalAt + 1);
        if (part.isEmpty() || !part.chars().allMatch(Character::isDigit)) throw twoSigns(digits);
        return Double.parseDouble(ungrouped(whole, grouping, digits) + "." + part);
    }

    private static double readGroups(String digits, char sign) throws UnreadableException {
        return Double.parseDouble(ungrouped(digits, sign, digits));
    }

    private static String ungrouped(String whole, char grouping, String digits) throws UnreadableException {
        String sign = grouping == '.' ? "\\." : ",";
        if (!whole.matches("[1-9][0-9]{0,2}(" + sign + "[0-9]{3})+")) throw twoSigns(digits);
        return whole.replace(String.valueOf(grouping), "");
    }

    private static UnreadableException twoSigns(String digits) {
        return new UnreadableException("\"" + digits + "\" has more than one decimal sign");
    }
}
