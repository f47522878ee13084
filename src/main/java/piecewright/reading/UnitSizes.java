package piecewright.reading;

import java.util.Locale;
import java.util.OptionalDouble;
import piecewright.quantity.Units;

/** What the units of a line are in the units used inside. */
final class UnitSizes {
    private static final double L_PER_IMPERIAL_GALLON = 4.54609;

    private UnitSizes() {}

    static boolean mass(String unit) {
        return unit.equals("kg") || unit.equals("g") || unit.equals("lb") || unit.equals("oz");
    }

    static double kg(String unit) {
        return switch (unit) {
            case "g" -> 0.001;
            case "lb" -> Units.KG_PER_POUND;
            case "oz" -> Units.KG_PER_OUNCE;
            default -> 1;
        };
    }

    static boolean volume(String unit) {
        return switch (unit) {
            case "l", "ml", "gal", "pint", "quart", "cup", "floz" -> true;
            default -> false;
        };
    }

    /** Litres of one, imperial or of the United States; the same for both where it has one meaning. */
    static double litres(String unit, boolean imperial) {
        double gallon = imperial ? L_PER_IMPERIAL_GALLON : Units.L_PER_US_GALLON;
        return switch (unit) {
            case "ml" -> 0.001;
            case "gal" -> gallon;
            case "quart" -> gallon / 4;
            case "pint" -> gallon / 8;
            case "cup" -> Units.L_PER_US_GALLON / 16;
            case "floz" -> gallon / (imperial ? 160 : 128);
            default -> 1;
        };
    }

    /** Whether a gallon is the imperial one here; empty where both are about. */
    static java.util.Optional<Boolean> imperial(Locale locale) {
        return switch (locale.getCountry()) {
            case "US" -> java.util.Optional.of(false);
            case "CA" -> java.util.Optional.empty();
            default -> java.util.Optional.of(true);
        };
    }

    static double celsius(double figure, boolean fahrenheit) {
        return fahrenheit ? Units.celsiusOfFahrenheit(figure) : figure;
    }

    static OptionalDouble cm(double figure, String unit) {
        return switch (unit) {
            case "cm" -> OptionalDouble.of(figure);
            case "mm" -> OptionalDouble.of(figure / 10);
            case "in" -> OptionalDouble.of(figure * 2.54);
            default -> OptionalDouble.empty();
        };
    }
}
