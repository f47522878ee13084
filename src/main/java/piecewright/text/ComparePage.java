package piecewright.text;

import java.util.ArrayList;
import java.util.List;
import piecewright.belief.Interval;
import piecewright.learn.Comparison;
import piecewright.learn.Comparison.InputDifference;
import piecewright.learn.Comparison.OutcomeDifference;
import piecewright.learn.Figure;

/** Two finished batches held against each other, in sentences. */
public final class ComparePage {
    private final QuantityFormat quantities;
    private final DecimalWords decimals;

    public ComparePage(DisplayUnits units) {
        this.quantities = new QuantityFormat(units);
        this.decimals = new DecimalWords(units.locale());
    }

    /** The page. */
    public String of(String first, String second, Comparison comparison) {
        StringBuilder page = new StringBuilder(Phrases.say("compare.title", first, second)).append('\n');
        sentences(comparison).forEach(sentence -> page.append(Paragraph.of("", sentence)));
        return page.toString();
    }

    public List<String> sentences(Comparison comparison) {
        List<String> sentences = new ArrayList<>();
        comparison.inputs().forEach(input -> sentences.add(input(input)));
        sentences.add(verdict(comparison));
        comparison.outcomes().forEach(outcome -> sentences.add(outcome(outcome)));
        return sentences;
    }

    /** Whether what differs in the outcomes has one reason. */
    public static String verdict(Comparison comparison) {
        if (comparison.inputs().isEmpty()) return Phrases.say("compare.alike");
        return Phrases.say(comparison.differInOneThing() ? "compare.one-thing" : "compare.many-things");
    }

    private static String input(InputDifference input) {
        String none = Phrases.say("compare.none");
        return Phrases.say(
                "compare.input",
                input.name(),
                input.first().orElse(none),
                input.second().orElse(none));
    }

    /** How far apart, and whether chance does as much. */
    public String outcome(OutcomeDifference outcome) {
        Interval change = outcome.change();
        boolean colour = outcome.figure() == Figure.COLOUR;
        String noise = outcome.isMoreThanNoise() ? "compare.more-than-noise" : "compare.noise";
        String chances = Long.toString(Math.round(100 * outcome.byChanceFraction()));
        return Phrases.say(
                colour ? "compare.outcome.ratio" : "compare.outcome.points",
                Phrases.say("compare.outcome." + outcome.name()),
                colour ? ratio(change.middle()) : points(change.middle()),
                colour ? ratio(change.low()) : points(change.low()),
                colour ? ratio(change.high()) : points(change.high()),
                Phrases.say(noise, chances));
    }

    private String ratio(double ratio) {
        return quantities.ratio(ratio);
    }

    private String points(double fraction) {
        return decimals.signed(100 * fraction, 1);
    }
}
