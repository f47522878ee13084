package piecewright.text;

import piecewright.replan.Question;
import piecewright.replan.Question.GotHeavier;
import piecewright.replan.Question.GotLighter;
import piecewright.replan.Question.NoSuchWeight;
import piecewright.replan.Question.OutOfOrder;

/** Asks about an entry that cannot be true. */
final class QuestionWords {
    private final QuantityFormat quantities;

    QuestionWords(DisplayUnits units) {
        this.quantities = new QuantityFormat(units);
    }

    String sentence(Question question) {
        String entry = Integer.toString(question.entry());
        if (question instanceof GotHeavier heavier) {
            String cause = heavier.vessel()
                    .map(vessel -> Phrases.say(
                            "question.got-heavier.vessel",
                            vessel.name(),
                            quantities.mass(vessel.tareKg()),
                            quantities.mass(vessel.withoutKg())))
                    .orElseGet(() -> Phrases.say(
                            "question.got-heavier.other", quantities.mass(heavier.netKg() - heavier.beforeKg())));
            return Phrases.say(
                    "question.got-heavier",
                    entry,
                    quantities.mass(heavier.netKg()),
                    quantities.mass(heavier.beforeKg()),
                    cause);
        }
        if (question instanceof GotLighter lighter) {
            return Phrases.say(
                    "question.got-lighter",
                    entry,
                    quantities.mass(lighter.netKg()),
                    quantities.mass(lighter.beforeKg()));
        }
        if (question instanceof NoSuchWeight none) {
            return Phrases.say(
                    "question.no-such-weight",
                    entry,
                    quantities.mass(none.netKg()),
                    quantities.mass(none.leastKg()),
                    quantities.mass(none.mostKg()));
        }
        OutOfOrder order = (OutOfOrder) question;
        String act = Phrases.say("act." + order.act().key() + ".title");
        return Phrases.say("question.out-of-order", entry, act, ActNames.byId(order.afterActId()));
    }
}
