package piecewright.text;

import java.util.Locale;

/** The unit meant when a person types a number alone. */
final class BareUnits {
    private BareUnits() {}

    static String spelling(Measure measure, DisplayUnits units) {
        boolean metric = units.system() == UnitSystem.METRIC;
        return switch (measure) {
            case MASS -> metric ? "kg" : "lb";
            case TEMPERATURE -> metric ? "c" : "f";
            case COLOUR -> units.colour().symbol().toLowerCase(Locale.ROOT);
            case SHARE -> "%";
            case VOLUME -> metric ? "l" : "gal";
            case AREA -> metric ? "m2" : "sq ft";
            case LENGTH -> metric ? "cm" : "in";
            case TIME -> "h";
        };
    }
}
