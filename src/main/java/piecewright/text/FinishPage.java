package piecewright.text;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import piecewright.replan.Finished;
import piecewright.replan.Finished.Stretch;

/** What came of a finished batch, held against its plan. */
public final class FinishPage {
    private final QuantityFormat quantities;

    public FinishPage(DisplayUnits units) {
        this.quantities = new QuantityFormat(units);
    }

    /** What the plan expected. */
    public record Expected(double grainKg, double maltKg, double colourEbc) {}

    /** The page: the day, sentences, and what was learned as its own page has it. */
    public String of(String dated, List<String> sentences, String learned) {
        StringBuilder page = new StringBuilder(Phrases.say("finish.title", dated)).append('\n');
        sentences.forEach(sentence -> page.append(Paragraph.of("", sentence)));
        page.append('\n').append(learned);
        return page.append(Paragraph.of("", Phrases.say("finish.closed"))).toString();
    }

    /** Why it cannot be finished yet, as a paragraph. */
    public static String notYet(String why) {
        return Paragraph.of("", why);
    }

    /** Yield, colour, how long each part took, notes, what was not done; a sentence each. */
    public List<String> sentences(Finished finished, Expected expected) {
        List<String> sentences = new ArrayList<>();
        Finished.Outcome outcome = finished.outcome();
        sentences.add(Phrases.say(
                "finish.yield",
                quantities.mass(outcome.maltKg()),
                quantities.mass(outcome.grainKg()),
                quantities.percent(outcome.yieldFraction()),
                quantities.mass(expected.maltKg()),
                quantities.percent(expected.maltKg() / expected.grainKg())));
        sentences.add(colour(outcome.colourEbc(), expected.colourEbc()));
        List<String> parts = finished.stretches().stream().map(this::part).toList();
        if (!parts.isEmpty()) sentences.add(Phrases.say("finish.took", String.join(", ", parts)));
        finished.notes().forEach(note -> sentences.add(Phrases.say("finish.note", Quoted.shortly(note))));
        if (!finished.notDone().isEmpty()) {
            List<String> names = finished.notDone().stream().map(ActNames::byId).toList();
            sentences.add(Phrases.say("finish.not-done", String.join(", ", names)));
        }
        return sentences;
    }

    private String colour(OptionalDouble measuredEbc, double expectedEbc) {
        return measuredEbc.isPresent()
                ? Phrases.say(
                        "finish.colour", quantities.colour(measuredEbc.getAsDouble()), quantities.colour(expectedEbc))
                : Phrases.say("finish.no-colour", quantities.colour(expectedEbc));
    }

    private String part(Stretch stretch) {
        Duration rounded = Duration.ofMinutes(15 * Math.round(stretch.lasted().toMinutes() / 15.0));
        return Phrases.say("part." + Phrases.key(stretch.part())) + " " + quantities.time(rounded);
    }
}
