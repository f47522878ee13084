package piecewright.cli;

import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.function.DoubleFunction;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Option;
import piecewright.house.House;
import piecewright.house.Trays;
import piecewright.house.Vessel;
import piecewright.plan.Arrangement;
import piecewright.plan.Arranging.Choice;
import piecewright.text.DisplayUnits;
import piecewright.text.QuantityFormat;
import piecewright.text.QuantityParser;
import piecewright.text.Quoted;
import piecewright.text.UnreadableException;

/** How the piece is set up: told, left open, or as usual. */
final class ArrangementOptions {
    @Option(
            names = "--steep-in",
            paramLabel = "PLACE",
            description = "Steep it in the vessels of this place. Left out: where it works best.")
    private @Nullable String steepIn;

    @Option(
            names = "--grow-in",
            paramLabel = "PLACE",
            description = "Grow it on the trays of this place. Left out: where it works best.")
    private @Nullable String growIn;

    @Option(
            names = "--bed",
            paramLabel = "DEPTH",
            description = "Spread it so deep, such as \"8 cm\". Left out: 5 cm, or what the trays make of it.")
    private @Nullable String bed;

    @Option(
            names = "--water",
            paramLabel = "TEMPERATURE",
            description = "Steep in water chilled or warmed to this, such as \"13 C\". Left out: as it comes.")
    private @Nullable String water;

    @Option(
            names = "--leave-open",
            paramLabel = "CHOICE",
            split = ",",
            description = "Let the plan choose, and say why: place, bed, water, or several with commas between.")
    private List<String> open = List.of();

    /** What was told; a refusal names the option. */
    Arrangement arrangement(House house, DisplayUnits units) throws OptionException {
        QuantityFormat format = new QuantityFormat(units);
        QuantityParser parser = QuantityParser.forPerson(units);
        Arrangement told = Arrangement.usual();
        if (steepIn != null) {
            List<Vessel> vessels = house.kit().vessels();
            told = told.steepingIn(
                    place("--steep-in", vessels.stream().map(Vessel::place), "no vessels stand", steepIn));
        }
        if (growIn != null) {
            List<Trays> trays = house.kit().trays();
            told = told.growingIn(place("--grow-in", trays.stream().map(Trays::place), "no trays stand", growIn));
        }
        if (bed != null) {
            var depths = new Span(Arrangement.SHALLOWEST_CM, Arrangement.DEEPEST_CM, format::length);
            told = told.withBedCm(within("--bed", bed, parser::lengthCm, depths));
        }
        if (water != null) {
            var warmths = new Span(Arrangement.COLDEST_C, Arrangement.WARMEST_C, format::temperature);
            told = told.withFillC(within("--water", water, parser::temperatureC, warmths));
        }
        return told;
    }

    /** What is left open; a refusal names the option. */
    Set<Choice> open() throws OptionException {
        Set<Choice> choices = EnumSet.noneOf(Choice.class);
        for (String word : open) choices.add(choice(word.strip()));
        clash("--grow-in", growIn, Choice.PLACE, choices);
        clash("--bed", bed, Choice.BED, choices);
        clash("--water", water, Choice.WATER, choices);
        return choices;
    }

    private static void clash(String option, @Nullable String told, Choice choice, Set<Choice> open)
            throws OptionException {
        if (told != null && open.contains(choice)) {
            throw new OptionException(
                    option, "is told and left open at once; take \"" + choice.key() + "\" out of --leave-open");
        }
    }

    private static Choice choice(String word) throws OptionException {
        for (Choice choice : Choice.values()) if (choice.key().equalsIgnoreCase(word)) return choice;
        throw new OptionException(
                "--leave-open", "\"" + Quoted.shortly(word) + "\" cannot be left open; place, bed and water can");
    }

    private static String place(String option, Stream<String> kitPlaces, String none, String name)
            throws OptionException {
        List<String> places = kitPlaces.distinct().toList();
        for (String place : places) if (place.equalsIgnoreCase(name.strip())) return place;
        throw new OptionException(
                option, none + " in \"" + Quoted.shortly(name) + "\"; they do in " + String.join(", ", places));
    }

    /** What can be told, from low to high, and how it is said. */
    private record Span(double low, double high, DoubleFunction<String> words) {}

    /** Reads a quantity as typed. */
    private interface Reader {
        double read(String typed) throws UnreadableException;
    }

    private static double within(String option, String typed, Reader reader, Span span) throws OptionException {
        try {
            double value = reader.read(typed);
            if (value >= span.low() && value <= span.high()) return value;
        } catch (UnreadableException unreadable) {
            throw new OptionException(option, String.valueOf(unreadable.getMessage()));
        }
        throw new OptionException(
                option,
                "\"" + Quoted.shortly(typed) + "\" must be from " + span.words().apply(span.low()) + " to "
                        + span.words().apply(span.high()));
    }
}
