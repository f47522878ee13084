package piecewright.store;

import java.util.Locale;
import java.util.Optional;
import piecewright.text.QuantityParser;
import piecewright.text.UnreadableException;

/** Reads a quantity written as text under a key whose suffix says the unit that is wanted. */
enum SuffixedQuantity {
    PERCENT("Percent", 100, QuantityParser::shareFraction),
    FRACTION("Fraction", 1, QuantityParser::shareFraction),
    HOURS("Hours", 1, QuantityParser::timeHours),
    DAYS("Days", 1 / 24.0, QuantityParser::timeHours),
    EBC("Ebc", 1, QuantityParser::colourEbc),
    KG("Kg", 1, QuantityParser::massKg),
    ML("Ml", 1000, QuantityParser::volumeL),
    CM("Cm", 1, QuantityParser::lengthCm),
    M2("M2", 1, QuantityParser::areaM2),
    C("C", 1, QuantityParser::temperatureC),
    G("G", 1000, QuantityParser::massKg),
    L("L", 1, QuantityParser::volumeL);

    private static final QuantityParser PARSER = QuantityParser.needingUnits(Locale.ROOT);

    private final String suffix;
    private final double perInside;
    private final Reading reading;

    SuffixedQuantity(String suffix, double perInside, Reading reading) {
        this.suffix = suffix;
        this.perInside = perInside;
        this.reading = reading;
    }

    /** The kind a key ends in; empty where only plain numbers are taken. */
    static Optional<SuffixedQuantity> of(String key) {
        for (SuffixedQuantity each : values()) if (key.endsWith(each.suffix)) return Optional.of(each);
        return Optional.empty();
    }

    /** The figure in the suffix's unit. */
    double read(String typed) throws UnreadableException {
        return perInside * reading.read(PARSER, typed);
    }

    private interface Reading {
        double read(QuantityParser parser, String typed) throws UnreadableException;
    }
}
