package piecewright.desktop.act;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.IntStream;
import piecewright.plan.Act;
import piecewright.plan.Plan;
import piecewright.plan.Window;
import piecewright.text.DisplayUnits;
import piecewright.text.MomentFormat;
import piecewright.text.QuantityFormat;
import piecewright.text.WindowWords;
import piecewright.text.Wording;

/** Everything the sheet says about one act. */
record ActPage(Head head, Window window, Instant at, Target target, List<String> steps, Words words) {
    ActPage {
        steps = List.copyOf(steps);
    }

    /** Its name and place in the plan. */
    record Head(String id, String title, String place, String when, String window) {}

    /** What the scale should show, and what else should be found. */
    record Target(String mass, String others) {}

    /** What to look and smell for, why, and what may hurt. */
    record Words(String look, String why, List<String> cautions) {
        Words {
            cautions = List.copyOf(cautions);
        }
    }

    static Optional<ActPage> of(Plan plan, String actId, DisplayUnits units) {
        OptionalInt index = IntStream.range(0, plan.acts().size())
                .filter(i -> plan.acts().get(i).id().equals(actId))
                .findFirst();
        return index.isPresent() ? Optional.of(of(plan, index.getAsInt(), units)) : Optional.empty();
    }

    private static ActPage of(Plan plan, int index, DisplayUnits units) {
        Act act = plan.acts().get(index);
        Wording wording = new Wording(units, plan.subject().zone());
        MomentFormat moments = new MomentFormat(plan.subject().zone(), units.locale());
        QuantityFormat quantities = new QuantityFormat(units);
        String place = WindowWords.say(
                "act.place",
                Integer.toString(index + 1),
                Integer.toString(plan.acts().size()),
                quantities.time(act.work()));
        Head head =
                new Head(act.id(), wording.actTitle(act), place, moments.moment(act.startsAt()), wording.window(act));
        String others = act.expect().acrospireFraction().isPresent()
                ? WindowWords.say(
                        "act.expect-grown",
                        quantities.moisture(act.expect().moisture()),
                        quantities.temperature(act.expect().grainC()),
                        quantities.percent(act.expect().acrospireFraction().getAsDouble()))
                : WindowWords.say(
                        "act.expect",
                        quantities.moisture(act.expect().moisture()),
                        quantities.temperature(act.expect().grainC()));
        Words words = new Words(
                wording.lookFor(act),
                wording.why(act),
                act.cautions().stream().map(wording::namedCaution).toList());
        List<String> steps = sentences(wording.whatToDo(act));
        Target target = new Target(quantities.scaleMass(act.expect().massKg()), others);
        return new ActPage(head, act.window(), act.startsAt(), target, steps, words);
    }

    /** One step a sentence. */
    static List<String> sentences(String text) {
        return List.of(text.split("(?<=[.!?]) (?=\\p{Lu})"));
    }
}
