package piecewright.cli;

import java.nio.file.Path;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.format.DateTimeParseException;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Option;
import piecewright.app.MakePlan;
import piecewright.app.PlanWish;
import piecewright.plan.Arranging.Choice;
import piecewright.plan.PlanRequest.Amount;
import piecewright.plan.PlanRequest.When;
import piecewright.store.StoreException;
import piecewright.store.StyleLibrary;
import piecewright.style.MaltStyle;
import piecewright.text.DisplayUnits;
import piecewright.text.QuantityFormat;
import piecewright.text.QuantityParser;
import piecewright.text.Quoted;
import piecewright.text.UnreadableException;

/** What is wished: style, lot, house, how much, by or from when. */
final class WishOptions {
    private static final double MOST_KG = 1000;
    private static final int FIRST_YEAR = 2000;
    private static final int LAST_YEAR = 2199;

    @Option(
            names = "--style",
            paramLabel = "KEY",
            description = "The style to make, such as pale; \"piecewright styles\" lists them.")
    private @Nullable String style;

    @Option(names = "--lot", paramLabel = "FILE", description = "The lot of grain, a JSON file.")
    private @Nullable Path lot;

    @Option(
            names = "--house",
            paramLabel = "FILE",
            description = "The household: places, hours of people, kit; a JSON file.")
    private @Nullable Path house;

    @Option(names = "--malt", paramLabel = "WEIGHT", description = "Finished malt wanted, such as \"4 kg\", or")
    private @Nullable String malt;

    @Option(names = "--grain", paramLabel = "WEIGHT", description = "raw grain to use, such as \"10 lb\".")
    private @Nullable String grain;

    @Option(
            names = "--ready-by",
            paramLabel = "DATE",
            description = "Rested and ready to mill when this day begins, such as 2027-05-01, or")
    private @Nullable String readyBy;

    @Option(names = "--start", paramLabel = "DATE", description = "first steep on this day.")
    private @Nullable String start;

    @Option(names = "--today", paramLabel = "DATE", description = "No step before this day. Left out: the day it is.")
    private @Nullable String today;

    @Option(
            names = "--colour",
            paramLabel = "COLOUR",
            description =
                    "The malt's colour, such as \"4 EBC\": the cure is chosen for it. Left out: the style's middle.")
    private @Nullable String colour;

    @Option(
            names = "--skip-checks",
            description = "No tests of lot and kit before the first step, though nobody made them yet.")
    private boolean skipChecks;

    MakePlan.Extras extras(DisplayUnits units, Set<Choice> open, LocalDateTime now) throws OptionException {
        OptionalDouble colourEbc =
                colour == null ? OptionalDouble.empty() : OptionalDouble.of(MaltColour.ebc("--colour", colour, units));
        if (skipChecks) return new MakePlan.Extras(colourEbc, open, Optional.empty());
        LocalDateTime from = today == null ? now : earliest(now.toLocalDate()).atStartOfDay();
        return new MakePlan.Extras(colourEbc, open, Optional.of(from));
    }

    private LocalDate earliest(LocalDate now) throws OptionException {
        return today == null ? now : date("--today", today);
    }

    PlanWish wish(StyleLibrary library, DisplayUnits units, LocalDate now) throws OptionException {
        MaltStyle chosen = style(library, given("--style", style, "a style such as pale"));
        Path lotFile = given("--lot", lot, "the file of a lot of grain");
        Path houseFile = given("--house", house, "the file of a household");
        return new PlanWish(chosen, lotFile, houseFile, amount(units), when(now));
    }

    private static <T> T given(String option, @Nullable T value, String what) throws OptionException {
        if (value == null) throw new OptionException(option, "is missing; give " + what);
        return value;
    }

    private static MaltStyle style(StyleLibrary library, String key) throws OptionException {
        try {
            return library.style(key.toLowerCase(Locale.ROOT));
        } catch (StoreException unknown) {
            throw new OptionException("--style", String.valueOf(unknown.getMessage()));
        }
    }

    private Amount amount(DisplayUnits units) throws OptionException {
        if (malt != null && grain != null) {
            throw new OptionException("--grain", "stands beside --malt; give one of the two");
        }
        if (malt != null) return new Amount.FinishedMalt(massKg("--malt", malt, units));
        if (grain != null) return new Amount.RawGrain(massKg("--grain", grain, units));
        throw new OptionException("--malt", "is missing; give a weight such as \"4 kg\", or --grain");
    }

    private static double massKg(String option, String typed, DisplayUnits units) throws OptionException {
        try {
            double massKg = QuantityParser.forPerson(units).massKg(typed);
            if (massKg > 0 && massKg <= MOST_KG) return massKg;
            throw new OptionException(
                    option,
                    "\"" + Quoted.shortly(typed) + "\" must be more than nothing and at most "
                            + new QuantityFormat(units).roughMass(MOST_KG));
        } catch (UnreadableException unreadable) {
            throw new OptionException(option, String.valueOf(unreadable.getMessage()));
        }
    }

    private When when(LocalDate now) throws OptionException {
        LocalDate earliest = earliest(now);
        if (readyBy != null && start != null) {
            throw new OptionException("--start", "stands beside --ready-by; give one of the two");
        }
        if (readyBy != null) return new When.ReadyBy(notBefore(earliest, "--ready-by", readyBy), earliest);
        if (start != null) return new When.StartOn(notBefore(earliest, "--start", start));
        throw new OptionException("--ready-by", "is missing; give a day such as 2027-05-01, or --start");
    }

    private static LocalDate notBefore(LocalDate earliest, String option, String typed) throws OptionException {
        LocalDate day = date(option, typed);
        if (day.isBefore(earliest)) {
            throw new OptionException(
                    option, day + " lies before today, " + earliest + "; give a later day, or say --today");
        }
        return day;
    }

    static LocalDate date(String option, String typed) throws OptionException {
        try {
            LocalDate day = LocalDate.parse(typed.strip());
            if (day.getYear() >= FIRST_YEAR && day.getYear() <= LAST_YEAR) return day;
        } catch (DateTimeParseException notADay) {
            throw new OptionException(
                    option, "\"" + Quoted.shortly(typed) + "\" is not a day; write it like 2027-05-01");
        }
        throw new OptionException(option, typed + " is too far away; the years are " + FIRST_YEAR + " to " + LAST_YEAR);
    }
}
