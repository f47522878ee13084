package piecewright.reading;

import java.text.DecimalFormatSymbols;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;

/** What digits and words for numbers may say. */
final class Numerals {
    private static final int MOST_DIGITS = 12;
    private static final List<String> SMALL = List.of(
            "zero",
            "one",
            "two",
            "three",
            "four",
            "five",
            "six",
            "seven",
            "eight",
            "nine",
            "ten",
            "eleven",
            "twelve",
            "thirteen",
            "fourteen",
            "fifteen",
            "sixteen",
            "seventeen",
            "eighteen",
            "nineteen");
    private static final Map<String, Integer> TENS = Map.of(
            "twenty", 20, "thirty", 30, "forty", 40, "fifty", 50, "sixty", 60, "seventy", 70, "eighty", 80, "ninety",
            90);
    private static final Map<String, Double> PARTS = Map.of("½", 0.5, "¼", 0.25, "¾", 0.75, "⅓", 1 / 3.0, "⅔", 2 / 3.0);

    private final char decimalSign;

    Numerals(Locale locale) {
        char sign = DecimalFormatSymbols.getInstance(locale).getDecimalSeparator();
        this.decimalSign = sign == '٫' ? ',' : sign;
    }

    /** A number in words and the token after it. */
    record Spelled(double value, int until) {}

    /** What the digits may say, the likelier first; nothing for a clock or too many digits. */
    List<Double> values(String digits) {
        if (PARTS.containsKey(digits)) return List.of(PARTS.get(digits));
        if (digits.indexOf(':') >= 0 || digits.length() > MOST_DIGITS) return List.of();
        String plain = digits.replace("'", "");
        int commas = count(plain, ',');
        int points = count(plain, '.');
        if (commas + points == 0) return List.of(Double.parseDouble(plain));
        if (commas > 0 && points > 0) return both(plain);
        char sign = commas > 0 ? ',' : '.';
        if (commas + points > 1) return grouped(plain, sign) ? List.of(joined(plain, sign)) : List.of();
        double decimal = Double.parseDouble(plain.replace(sign, '.'));
        if (!grouped(plain, sign)) return List.of(decimal);
        return sign == decimalSign ? List.of(decimal, joined(plain, sign)) : List.of(joined(plain, sign), decimal);
    }

    private static List<Double> both(String plain) {
        int last = Math.max(plain.lastIndexOf(','), plain.lastIndexOf('.'));
        char grouping = plain.charAt(last) == ',' ? '.' : ',';
        String whole = plain.substring(0, last);
        if (!grouped(whole, grouping)) return List.of();
        return List.of(
                Double.parseDouble(whole.replace(String.valueOf(grouping), "") + "." + plain.substring(last + 1)));
    }

    private static double joined(String plain, char sign) {
        return Double.parseDouble(plain.replace(String.valueOf(sign), ""));
    }

    private static boolean grouped(String plain, char sign) {
        String mark = sign == '.' ? "\\." : ",";
        return plain.matches("[1-9][0-9]{0,2}(" + mark + "[0-9]{3})+");
    }

    private static int count(String text, char sign) {
        return (int) text.chars().filter(each -> each == sign).count();
    }

    /** "seven", "twenty five", "seven point seven". */
    Optional<Spelled> spelled(List<Token> tokens, int from) {
        OptionalInt whole = small(tokens, from);
        if (whole.isEmpty()) return Optional.empty();
        int at = from + 1;
        int value = whole.getAsInt();
        if (value >= 20 && value % 10 == 0) {
            int next = at < tokens.size() && tokens.get(at).is("-") ? at + 1 : at;
            OptionalInt more = small(tokens, next);
            if (more.isPresent() && more.getAsInt() > 0 && more.getAsInt() < 10) {
                value += more.getAsInt();
                at = next + 1;
            }
        }
        if (at + 1 >= tokens.size() || !tokens.get(at).is("point")) return Optional.of(new Spelled(value, at));
        List<Integer> decimals = new ArrayList<>();
        int next = at + 1;
        for (OptionalInt digit = small(tokens, next); digit.isPresent(); digit = small(tokens, next)) {
            decimals.add(digit.getAsInt());
            next++;
        }
        if (decimals.isEmpty()) return Optional.of(new Spelled(value, at));
        StringBuilder text = new StringBuilder(value + ".");
        decimals.forEach(text::append);
        return Optional.of(new Spelled(Double.parseDouble(text.toString()), next));
    }

    private static OptionalInt small(List<Token> tokens, int at) {
        if (at >= tokens.size()) return OptionalInt.empty();
        String word = tokens.get(at).text();
        int index = SMALL.indexOf(word);
        if (index >= 0) return OptionalInt.of(index);
        return TENS.containsKey(word) ? OptionalInt.of(TENS.get(word)) : OptionalInt.empty();
    }
}
