package piecewright.text;

import java.util.regex.MatchResult;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Quantities that stand in the words themselves, written in the bundle as "{@code <220 °C>}" and told in a person's units.
 * Temperatures are °C, steps of temperature K, lengths cm or m, weights g or kg, volumes mL or L.
 */
final class FixedQuantities {
    private static final Pattern FIXED = Pattern.compile("<([0-9]+(?:\\.[0-9]+)?) (°C|K|cm|m|kg|g|L|mL)>");

    private FixedQuantities() {}

    /** As they are written; a step of one K is one of 1 °C. */
    static String metric(String words) {
        if (words.indexOf('<') < 0) return words;
        return FIXED.matcher(words)
                .replaceAll(found -> found.group(1) + " " + (found.group(2).equals("K") ? "°C" : found.group(2)));
    }

    static String in(QuantityFormat quantities, String words) {
        if (words.indexOf('<') < 0) return words;
        if (quantities.isMetric()) return metric(words);
        return FIXED.matcher(words).replaceAll(found -> Matcher.quoteReplacement(told(quantities, found)));
    }

    private static String told(QuantityFormat quantities, MatchResult found) {
        double value = Double.parseDouble(found.group(1));
        return switch (found.group(2)) {
            case "°C" -> quantities.temperature(value);
            case "K" -> quantities.temperatureStep(value);
            case "cm" -> quantities.length(value);
            case "m" -> quantities.length(value * 100);
            case "kg" -> quantities.roughMass(value);
            case "g" -> quantities.mass(value / 1000);
            case "L" -> quantities.volume(value);
            default -> quantities.volume(value / 1000);
        };
    }
}
