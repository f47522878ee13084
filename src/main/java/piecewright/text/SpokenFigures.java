package piecewright.text;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import piecewright.journal.AcrospireCount;
import piecewright.journal.Report;
import piecewright.journal.Report.AcrospiresCounted;
import piecewright.journal.Report.ChittedCounted;
import piecewright.journal.Report.ColourMeasured;
import piecewright.journal.Report.HeatSet;
import piecewright.journal.Report.SampleDried;
import piecewright.journal.Report.Tare;
import piecewright.journal.Report.TemperatureRead;
import piecewright.journal.Report.VentsSet;
import piecewright.journal.Report.VesselWeighed;
import piecewright.journal.Report.Weighed;
import piecewright.journal.Spot;
import piecewright.quantity.Moisture;

/** The figures in a line: weights, temperatures, counts, moisture, colour, vents. Takes them out of the line. */
final class SpokenFigures {
    static final Pattern CHIT = Pattern.compile("(?<!\\p{L})chit");

    private static final String FIGURE = "(?<![\\d.,])\\d[\\d.,']*(?<![.,'])";
    private static final String MASS_UNIT = "(?:kgs?|kilos?|kilograms?|g|grams?|lbs?|pounds?|oz|ounces?)(?!\\p{L})";
    private static final String SMALL_UNIT = "(?:g|grams?|oz|ounces?)(?!\\p{L})";
    private static final String DEGREES =
            "(?:°\\s*)?(?:deg(?:rees?)?\\s*)?(?:celsius|fahrenheit|[cf])(?![\\p{L}\\d])|°";
    private static final Pattern MASS =
            Pattern.compile(FIGURE + "\\s*" + MASS_UNIT + "(?:\\s*" + FIGURE + "\\s*" + SMALL_UNIT + ")?");
    private static final Pattern EMPTY_VESSEL = Pattern.compile(
            "^\\s*(?:vessel|tare|empty)(?: of| the)?\\s+(\\p{L}[\\p{L} -]{0,40}?)(?: weighs| is)?(?: empty)?:?\\s+("
                    + MASS.pattern() + ")");
    private static final Pattern TEMPERATURE = Pattern.compile("(-?" + FIGURE + ")\\s*(" + DEGREES + ")");
    private static final Pattern VOLUME = Pattern.compile(
            FIGURE
                    + "\\s*(?:l|litres?|liters?|ml|millilitres?|milliliters?|gal|gallons?|qt|quarts?|fl\\.? oz|floz)(?!\\p{L})");
    private static final Pattern ACROSPIRES =
            Pattern.compile("acrospires?(?: lengths?)?:?((?:[\\s,;/]+\\d{1,4}(?![\\d.:%]))+)");
    private static final Pattern CHITTED = Pattern.compile(
            "(?:chit(?:ted|s)?:?\\s*(\\d{1,4})\\s*(?:of|/|out of|from)\\s*(\\d{1,4}))|(?:(\\d{1,4})\\s*(?:of|/|out of)\\s*(\\d{1,4})\\s*chit(?:ted|s)?)");
    private static final Pattern CHITTED_ALONE =
            Pattern.compile("chit(?:ted|s)?:?\\s*(\\d{1,4}(?:[.,]\\d)?\\s*%?)|(\\d{1,4}\\s*%?)\\s*chit(?:ted|s)?");
    private static final Pattern DRIED_SAMPLE = Pattern.compile("sample:?\\s*(" + FIGURE + "\\s*" + MASS_UNIT
            + ")\\s*(?:dried\\s*)?(?:to|->|→|then)\\s*(" + FIGURE + "\\s*" + MASS_UNIT + ")");
    private static final Pattern MOISTURE =
            Pattern.compile("(?:moisture|sample)(?: of)?(?: dried)?(?: sample)?:?\\s*(" + FIGURE + ")\\s*%");
    private static final Pattern COLOUR =
            Pattern.compile("colou?r:?\\s*(" + FIGURE + "\\s*(?:ebc|srm|°?\\s*l(?:ovibond)?)?)(?!\\p{L})");
    private static final Pattern VENTS =
            Pattern.compile("vents?(?: are| set)?(?: to)?:?\\s*(open|shut|closed|half(?: open| shut)?|\\d{1,3}\\s*%)");
    private static final Pattern HEAT = Pattern.compile(
            "(?:(?:set )?(?<!off )(?<!off the )(?<!out of the )(?<!into the )(?:kiln|oven|dryer|dehydrator|heater|heat)(?: set)?(?: to| at)?|set(?: to)?|(?:raised|up|turned up)(?: kiln| heat)?(?: to)):?\\s*(-?"
                    + FIGURE + ")\\s*(" + DEGREES + "|(?!\\s*[\\p{L}%\\d:]))");
    private static final Pattern SPOT_FIGURE = Pattern.compile(
            "(?<!\\p{L})(couch|core|pile|heap|bed|edge|top|bottom|air[- ]on)(?!\\p{L})(?: reads?| temp(?:erature)?| is| at)*:?\\s+(-?"
                    + FIGURE + ")(?!\\s*[\\p{L}%°\\d:])");
    private static final Pattern SPOT = Pattern.compile(
            "(?<!\\p{L})(couch|core|middle|centre|center|pile|heap|bed|edge|top|bottom|water|steep|air[- ]on|below the bed|room|air|garage|cellar|grain|malt)(?!\\p{L})(?: reads?| temp(?:erature)?| is| at)*:?\\s*$");

    private final DisplayUnits units;
    private final QuantityParser quantities;
    private final List<Tare> vessels;

    SpokenFigures(DisplayUnits units, List<Tare> vessels) {
        this.units = units;
        this.quantities = QuantityParser.forPerson(units);
        this.vessels = List.copyOf(vessels);
    }

    /** Takes out the vessel the piece was weighed in. */
    Optional<Tare> vessel(RestOfLine line) throws UnclearException {
        for (Tare tare : vessels) {
            String name = Pattern.quote(tare.vessel().toLowerCase(java.util.Locale.ROOT));
            if (line.take(Pattern.compile("(?:in|with|incl(?:uding)?\\.?)\\s+(?:the |my )?" + name + "(?!\\p{L})"))
                    .isPresent()) {
                return Optional.of(tare);
            }
        }
        Optional<MatchResult> other = line.has(MASS)
                ? line.take(Pattern.compile("(?:in|with) (?:the|my) ([\\p{L}][\\p{L} -]*?)(?=\\s*(?:$|[,;\u0001\\d]))"))
                : Optional.empty();
        if (other.isEmpty()) return Optional.empty();
        throw new UnclearException(
                Phrases.say("line.no-vessel", Quoted.shortly(other.get().group(1))),
                vessels.stream().map(Tare::vessel).toList());
    }

    /** "vessel blue tub 1.84 kg": an empty vessel to remember. */
    Optional<Report> emptyVessel(RestOfLine line) throws UnclearException, UnreadableException {
        Optional<MatchResult> found = line.take(EMPTY_VESSEL);
        if (found.isEmpty()) return Optional.empty();
        double tareKg = quantities.massKg(found.get().group(2));
        if (tareKg >= Tare.HEAVIEST_KG) {
            throw new UnclearException(Phrases.say("line.no-such-vessel", new QuantityFormat(units).mass(tareKg)));
        }
        return Optional.of(new VesselWeighed(new Tare(found.get().group(1).strip(), tareKg)));
    }

    Optional<Report> chitted(RestOfLine line) throws UnclearException {
        Optional<MatchResult> counted = line.take(CHITTED);
        if (counted.isPresent()) {
            MatchResult found = counted.get();
            int chitted = Integer.parseInt(found.group(1) != null ? found.group(1) : found.group(3));
            int of = Integer.parseInt(found.group(2) != null ? found.group(2) : found.group(4));
            if (of == 0 || chitted > of)
                throw new UnclearException(Phrases.say("line.more-than-all", "" + chitted, "" + of));
            return Optional.of(new ChittedCounted(chitted, of));
        }
        Optional<MatchResult> alone = line.take(CHITTED_ALONE);
        if (alone.isEmpty()) return Optional.empty();
        String figure = alone.get().group(1) != null
                ? alone.get().group(1)
                : alone.get().group(2);
        String digits = figure.replaceAll("[^0-9].*", "");
        throw new UnclearException(
                Phrases.say("line.of-how-many", figure.strip()),
                List.of("chitted " + digits + " of 50", "chitted " + digits + " of 100"));
    }

    Optional<Report> acrospires(RestOfLine line) throws UnclearException {
        Optional<MatchResult> found = line.take(ACROSPIRES);
        if (found.isEmpty()) return Optional.empty();
        List<Integer> counts =
                new ArrayList<>(Arrays.stream(found.get().group(1).strip().split("[\\s,;/]+"))
                        .filter(word -> !word.isEmpty())
                        .map(Integer::valueOf)
                        .toList());
        if (counts.size() == AcrospireCount.CLASSES - 1) counts.add(0, 0);
        if (counts.size() != AcrospireCount.CLASSES || counts.stream().allMatch(count -> count == 0)) {
            throw new UnclearException(Phrases.say("line.acrospires", "" + counts.size()));
        }
        return Optional.of(new AcrospiresCounted(new AcrospireCount(counts)));
    }

    Optional<Report> moisture(RestOfLine line) throws UnclearException, UnreadableException {
        Optional<MatchResult> dried = line.take(DRIED_SAMPLE);
        if (dried.isPresent()) {
            double wetKg = quantities.massKg(dried.get().group(1));
            double dryKg = quantities.massKg(dried.get().group(2));
            if (!(dryKg > 0 && dryKg <= wetKg)) throw new UnclearException(Phrases.say("line.sample-gained"));
            return Optional.of(new SampleDried(new Moisture(1 - dryKg / wetKg)));
        }
        Optional<MatchResult> told = line.take(MOISTURE);
        if (told.isEmpty()) return Optional.empty();
        double fraction = quantities.shareFraction(told.get().group(1) + " %");
        if (!(fraction < 0.9))
            throw new UnclearException(Phrases.say("line.too-wet", told.get().group(1)));
        return Optional.of(new SampleDried(new Moisture(fraction)));
    }

    Optional<Report> colour(RestOfLine line) throws UnreadableException {
        Optional<MatchResult> found = line.take(COLOUR);
        return found.isEmpty()
                ? Optional.empty()
                : Optional.of(
                        new ColourMeasured(quantities.colourEbc(found.get().group(1))));
    }

    Optional<Report> vents(RestOfLine line) throws UnreadableException {
        Optional<MatchResult> found = line.take(VENTS);
        if (found.isEmpty()) return Optional.empty();
        String word = found.get().group(1);
        double open = word.startsWith("half")
                ? 0.5
                : word.equals("open") ? 1 : word.endsWith("%") ? Math.min(1, quantities.shareFraction(word)) : 0;
        return Optional.of(new VentsSet(open));
    }

    Optional<Report> heat(RestOfLine line) throws UnclearException, UnreadableException {
        Optional<MatchResult> found = line.take(HEAT);
        return found.isEmpty()
                ? Optional.empty()
                : Optional.of(new HeatSet(
                        inRange(degrees(found.get().group(1), found.get().group(2)), 0)));
    }

    /** Every temperature with the place named before it. */
    List<Report> temperatures(RestOfLine line) throws UnclearException, UnreadableException {
        List<Report> reports = new ArrayList<>();
        for (Optional<MatchResult> found = line.take(TEMPERATURE); found.isPresent(); found = line.take(TEMPERATURE)) {
            double readC = inRange(degrees(found.get().group(1), found.get().group(2)), -40);
            reports.add(new TemperatureRead(readC, spot(line)));
        }
        for (MatchResult found : line.takeAll(SPOT_FIGURE)) {
            reports.add(new TemperatureRead(inRange(degrees(found.group(2), ""), -40), spotOf(found.group(1))));
        }
        return reports;
    }

    /** The place named just before where a temperature was taken out. */
    private static Spot spot(RestOfLine line) {
        Pattern before = Pattern.compile(SPOT.pattern().replace("$", "") + "(?=\u0001)");
        return line.take(before).map(found -> spotOf(found.group(1))).orElse(Spot.GRAIN);
    }

    private static Spot spotOf(String word) {
        return switch (word) {
            case "couch", "core", "middle", "centre", "center", "pile", "heap" -> Spot.CORE;
            case "edge" -> Spot.EDGE;
            case "top" -> Spot.TOP;
            case "bottom" -> Spot.BOTTOM;
            case "water", "steep" -> Spot.WATER;
            case "room", "air", "garage", "cellar" -> Spot.AIR;
            case "air-on", "air on", "below the bed" -> Spot.AIR_ON;
            default -> Spot.GRAIN;
        };
    }

    private double degrees(String figure, String unit) throws UnreadableException {
        return quantities.temperatureC(
                unit.equals("°") || unit.isBlank() ? figure : figure + " " + unit.replaceAll("^deg(rees?)? ?", ""));
    }

    private double inRange(double degreesC, double leastC) throws UnclearException {
        if (degreesC >= leastC && degreesC <= 300) return degreesC;
        throw new UnclearException(Phrases.say("line.no-such-heat", new QuantityFormat(units).temperature(degreesC)));
    }

    OptionalDouble volumeL(RestOfLine line) throws UnclearException, UnreadableException {
        Optional<MatchResult> found = line.take(VOLUME);
        if (found.isEmpty()) return OptionalDouble.empty();
        double volumeL = quantities.volumeL(found.get().group());
        if (volumeL <= 0) throw new UnclearException(Phrases.say("line.no-water"));
        return OptionalDouble.of(volumeL);
    }

    /** Weights with their units; a vessel's tare belongs to the only one. */
    Optional<Report> weight(RestOfLine line, Optional<Tare> tare) throws UnclearException, UnreadableException {
        List<MatchResult> found = line.takeAll(MASS);
        if (found.isEmpty()) return Optional.empty();
        if (found.size() > 1) {
            throw new UnclearException(
                    Phrases.say("line.two-weights"),
                    found.stream().map(one -> one.group().strip()).toList());
        }
        return Optional.of(weighed(quantities.massKg(found.get(0).group()), tare));
    }

    Weighed weighed(double grossKg, Optional<Tare> tare) throws UnclearException {
        QuantityFormat format = new QuantityFormat(units);
        if (!(grossKg > 0)) throw new UnclearException(Phrases.say("line.no-weight"));
        if (tare.isPresent() && tare.get().tareKg() >= grossKg) {
            throw new UnclearException(Phrases.say(
                    "line.lighter-than-vessel",
                    format.mass(grossKg),
                    tare.get().vessel(),
                    format.mass(tare.get().tareKg())));
        }
        return new Weighed(grossKg, tare);
    }
}
