package piecewright.text;

import piecewright.history.Contradiction;
import piecewright.history.Contradiction.GotHeavier;
import piecewright.history.Contradiction.GotLighter;
import piecewright.history.Contradiction.Jumped;
import piecewright.history.Contradiction.NoSuchMoisture;
import piecewright.history.Contradiction.NoSuchTemperature;
import piecewright.history.Contradiction.NoSuchTime;
import piecewright.history.Contradiction.NoSuchWeight;
import piecewright.history.Contradiction.NotOfTheStyle;
import piecewright.history.Contradiction.OutOfOrder;
import piecewright.history.Contradiction.Shrunk;
import piecewright.history.Contradiction.TooMuchWater;
import piecewright.plan.ActKind;
import piecewright.quantity.Moisture;

/** Asks about an entry that cannot be true. */
final class QuestionWords {
    private final QuantityFormat quantities;

    QuestionWords(DisplayUnits units) {
        this.quantities = new QuantityFormat(units);
    }

    /** What is in doubt, why, and how it is mended. */
    String sentence(Contradiction doubted) {
        String entry = Integer.toString(doubted.entry());
        return doubt(entry, doubted) + " " + Phrases.say("question.left-out", entry);
    }

    private String doubt(String entry, Contradiction doubted) {
        if (doubted instanceof GotHeavier heavier) return heavier(entry, heavier);
        if (doubted instanceof GotLighter lighter) {
            return Phrases.say(
                    "question.got-lighter",
                    entry,
                    quantities.mass(lighter.netKg()),
                    quantities.mass(lighter.beforeKg()));
        }
        if (doubted instanceof NoSuchWeight none) {
            return Phrases.say(
                    "question.no-such-weight",
                    entry,
                    quantities.mass(none.netKg()),
                    quantities.mass(none.leastKg()),
                    quantities.mass(none.mostKg()));
        }
        if (doubted instanceof TooMuchWater much) {
            return Phrases.say(
                    "question.too-much-water",
                    entry,
                    quantities.volume(much.waterL()),
                    quantities.volume(much.mostL()));
        }
        return doubted instanceof NoSuchMoisture moist ? moisture(entry, moist) : others(entry, doubted);
    }

    private String moisture(String entry, NoSuchMoisture moist) {
        return Phrases.say(
                "question.no-such-moisture",
                entry,
                quantities.moisture(new Moisture(moist.moistureFraction())),
                quantities.moisture(new Moisture(moist.leastFraction())),
                quantities.moisture(new Moisture(moist.mostFraction())));
    }

    private String others(String entry, Contradiction doubted) {
        if (doubted instanceof NoSuchTemperature none) {
            return Phrases.say(
                    "question.no-such-temperature",
                    entry,
                    quantities.temperature(none.readC()),
                    quantities.temperature(none.leastC()),
                    quantities.temperature(none.mostC()));
        }
        if (doubted instanceof Jumped jumped) {
            return Phrases.say(
                    "question.jumped",
                    entry,
                    quantities.temperature(jumped.readC()),
                    quantities.temperature(jumped.beforeC()));
        }
        if (doubted instanceof Shrunk shrunk) {
            return Phrases.say(
                    "question.shrunk",
                    entry,
                    quantities.percent(shrunk.acrospireFraction()),
                    quantities.percent(shrunk.beforeFraction()));
        }
        if (doubted instanceof NotOfTheStyle none) {
            return Phrases.say("question.not-of-the-style", entry, title(none.act()));
        }
        if (doubted instanceof NoSuchTime none) return Phrases.say("question.time." + Phrases.key(none.time()), entry);
        OutOfOrder order = (OutOfOrder) doubted;
        return Phrases.say("question.out-of-order", entry, title(order.act()), ActNames.byId(order.afterActId()));
    }

    private static String title(ActKind act) {
        return Phrases.say("act." + act.key() + ".title");
    }

    private String heavier(String entry, GotHeavier heavier) {
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
}
