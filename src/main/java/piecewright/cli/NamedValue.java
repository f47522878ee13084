package piecewright.cli;

import java.util.Locale;
import piecewright.grain.GrainKind;
import piecewright.text.DisplayUnits;
import piecewright.text.QuantityParser;
import piecewright.text.Quoted;
import piecewright.text.UnreadableException;

/** A name and what stands behind its equals sign. */
record NamedValue(String name, String value) {
    private static final double MOST_KG = 1000;

    static NamedValue of(String option, String typed) throws OptionException {
        int at = typed.indexOf('=');
        if (at < 1) {
            throw new OptionException(
                    option, "\"" + Quoted.shortly(typed) + "\" lacks a name and \"=\"; see buy --help");
        }
        return new NamedValue(typed.substring(0, at).strip().toLowerCase(Locale.ROOT), typed.substring(at + 1));
    }

    /** The grain of that name. */
    GrainKind grain(String option) throws OptionException {
        for (GrainKind kind : GrainKind.values()) if (kind.key().equals(name)) return kind;
        throw new OptionException(option, "\"" + Quoted.shortly(name) + "\" is no grain; write one such as barley");
    }

    double massKg(String option, DisplayUnits units) throws OptionException {
        return massKg(option, value, units);
    }

    static double massKg(String option, String typed, DisplayUnits units) throws OptionException {
        try {
            double massKg = QuantityParser.forPerson(units).massKg(typed);
            if (massKg > 0 && massKg <= MOST_KG) return massKg;
            throw new OptionException(option, "must be more than nothing and at most 1000 kg");
        } catch (UnreadableException unreadable) {
            throw new OptionException(option, String.valueOf(unreadable.getMessage()));
        }
    }
}
