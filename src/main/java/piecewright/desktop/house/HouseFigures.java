package piecewright.desktop.house;

import java.math.BigDecimal;
import java.time.LocalTime;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import piecewright.house.AirTemperature;
import piecewright.house.NightActs;
import piecewright.text.DisplayUnits;
import piecewright.text.QuantityFormat;
import piecewright.text.QuantityParser;
import piecewright.text.UnreadableException;
import piecewright.text.WindowWords;

/** Figures of a house as they are typed and shown in the person's units. */
final class HouseFigures {
    private static final Pattern PLAIN = Pattern.compile("-?[0-9]+(?:[.,][0-9]+)?");
    private static final Pattern SPAN = Pattern.compile("(.+?)\\s*(?:to|bis|–|\\.\\.)\\s*(.+)");

    private static final Pattern CLOCK = Pattern.compile("([01]?[0-9]|2[0-3])[:.]([0-5][0-9])");
    private static final int MOST_NIGHT_ACTS = 20;

    private final QuantityParser parser;
    private final QuantityFormat format;

    HouseFigures(DisplayUnits units) {
        this.parser = QuantityParser.forPerson(units);
        this.format = new QuantityFormat(units);
    }

    /** How the air of a place is known, by the keys of the file. */
    record Air(Map<String, Double> figures, Optional<String> loggerCsv) {}

    double read(HouseField.Kind kind, String typed) throws UnreadableException {
        return switch (kind) {
            case VOLUME -> parser.volumeL(typed);
            case AREA -> parser.areaM2(typed);
            case TEMPERATURE -> parser.temperatureC(typed);
            default -> plain(typed);
        };
    }

    private static double plain(String typed) throws UnreadableException {
        String figure = typed.strip();
        if (!PLAIN.matcher(figure).matches()) {
            throw new UnreadableException(WindowWords.say("house.plain-figure", figure));
        }
        return Double.parseDouble(figure.replace(',', '.'));
    }

    String shown(HouseField.Kind kind, double figure) {
        return switch (kind) {
            case VOLUME -> format.volume(figure);
            case AREA -> format.area(figure);
            case TEMPERATURE -> format.temperature(figure);
            default -> BigDecimal.valueOf(figure).stripTrailingZeros().toPlainString();
        };
    }

    /** "18 C", "17 to 20", or the name of a logger's file. */
    Air air(String typed) throws UnreadableException {
        String words = typed.strip();
        if (words.endsWith(".csv")) return new Air(Map.of(), Optional.of(words));
        Matcher span = SPAN.matcher(words);
        if (span.matches()) {
            double lowC = parser.temperatureC(span.group(1));
            double highC = parser.temperatureC(span.group(2));
            return new Air(Map.of("lowC", lowC, "highC", highC), Optional.empty());
        }
        return new Air(Map.of("constantC", parser.temperatureC(words)), Optional.empty());
    }

    /** The same the other way round. */
    String shown(AirTemperature air, Optional<String> loggerCsv) {
        if (loggerCsv.isPresent()) return loggerCsv.get();
        if (air instanceof AirTemperature.Constant constant) return format.temperature(constant.airC());
        if (air instanceof AirTemperature.Daily daily) return span(daily.lowC(), daily.highC());
        return WindowWords.say("house.air.dated");
    }

    /** The nights with one of their figures as it is typed. */
    NightActs nights(NightActs now, HouseViewModel.Night what, String typed) throws UnreadableException {
        return switch (what) {
            case MOST -> {
                double most = plain(typed);
                if (most != Math.rint(most) || most < 0 || most > MOST_NIGHT_ACTS) {
                    throw new UnreadableException(
                            WindowWords.say("house.nights-range", Integer.toString(MOST_NIGHT_ACTS)));
                }
                yield new NightActs((int) most, now.from(), now.until());
            }
            case FROM -> new NightActs(now.most(), time(typed), now.until());
            case UNTIL -> new NightActs(now.most(), now.from(), time(typed));
        };
    }

    private static LocalTime time(String typed) throws UnreadableException {
        Matcher clock = CLOCK.matcher(typed.strip());
        if (!clock.matches()) throw new UnreadableException(WindowWords.say("house.no-time", typed.strip()));
        return LocalTime.of(Integer.parseInt(clock.group(1)), Integer.parseInt(clock.group(2)));
    }

    String span(double lowC, double highC) {
        return WindowWords.say("house.air.daily", format.temperature(lowC), format.temperature(highC));
    }
}
