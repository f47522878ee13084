package piecewright.cli;

import java.util.Arrays;
import java.util.IllformedLocaleException;
import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Option;
import piecewright.text.ColourUnit;
import piecewright.text.DisplayUnits;
import piecewright.text.Quoted;
import piecewright.text.UnitSystem;

/** How figures are read and written. */
final class UnitOptions {
    @Option(
            names = "--units",
            paramLabel = "metric|us",
            description = "kg, °C and litres, or lb, °F and gallons. Left out: metric.")
    private @Nullable String units;

    @Option(
            names = "--colour-unit",
            paramLabel = "EBC|SRM|Lovibond",
            description = "The scale of colours. Left out: EBC with metric units, SRM with us.")
    private @Nullable String colourUnit;

    @Option(
            names = "--locale",
            paramLabel = "TAG",
            description = "Decimal sign and names of days, such as en-GB or de-DE. Left out: your system's.")
    private @Nullable String locale;

    DisplayUnits displayUnits(Locale system) throws OptionException {
        Locale chosen = locale == null ? system : locale(locale);
        UnitSystem unitSystem = units == null ? UnitSystem.METRIC : unitSystem(units);
        ColourUnit colour = colourUnit == null
                ? unitSystem == UnitSystem.US ? ColourUnit.SRM : ColourUnit.EBC
                : colourUnit(colourUnit);
        return new DisplayUnits(unitSystem, colour, chosen);
    }

    private static Locale locale(String tag) throws OptionException {
        try {
            Locale chosen = new Locale.Builder().setLanguageTag(tag).build();
            if (List.of(Locale.getISOLanguages()).contains(chosen.getLanguage())) return chosen;
        } catch (IllformedLocaleException notATag) {
            throw new OptionException("--locale", "\"" + Quoted.shortly(tag) + "\" is no tag; write it like en-GB");
        }
        throw new OptionException("--locale", "\"" + Quoted.shortly(tag) + "\" names no language; write it like en-GB");
    }

    private static UnitSystem unitSystem(String word) throws OptionException {
        return Arrays.stream(UnitSystem.values())
                .filter(system -> system.name().equalsIgnoreCase(word))
                .findFirst()
                .orElseThrow(() ->
                        new OptionException("--units", "must be metric or us, not \"" + Quoted.shortly(word) + "\""));
    }

    private static ColourUnit colourUnit(String word) throws OptionException {
        return Arrays.stream(ColourUnit.values())
                .filter(unit -> unit.name().equalsIgnoreCase(word))
                .findFirst()
                .orElseThrow(() -> new OptionException(
                        "--colour-unit", "must be EBC, SRM or Lovibond, not \"" + Quoted.shortly(word) + "\""));
    }
}
