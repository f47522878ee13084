package piecewright.text;

import piecewright.plan.Check;

/** Words of the visits before the first act. */
final class CheckWords {
    private static final double FORMER_SAMPLE_G = 100;

    /** Judgement: practice, a sample is dried through at 100 to 105 °C. */
    private static final double DRYING_C = 103;

    /** Judgement: what a sample weighs after eight hours in water of 15 °C, for an example of an entry. */
    private static final double DRUNK_RATIO = 1.32;

    private final QuantityFormat quantities;

    CheckWords(QuantityFormat quantities) {
        this.quantities = quantities;
    }

    static String title(Check check) {
        return Phrases.say("check." + check.kind().key() + ".title", check.about());
    }

    String toDo(Check check) {
        return switch (check.kind()) {
            case DRY_IN, DRY_OUT ->
                said(
                        check,
                        ".do",
                        check.about(),
                        quantities.scaleMass(sampleG(check) / 1000),
                        quantities.temperature(DRYING_C));
            case TEST_SOAK, TEST_WEIGH ->
                said(check, ".do", check.about(), quantities.scaleMass(sampleG(check) / 1000));
            case BOX_FILL -> said(check, ".do", check.about(), quantities.volume(5), quantities.temperature(50));
            default -> said(check, ".do", check.about());
        };
    }

    String gain(Check check) {
        double beforeSd = check.gain().beforeSd();
        double afterSd = check.gain().afterSd();
        return switch (check.kind()) {
            case LAY_OUT, COUNT -> Phrases.say("check.gain.count", quantities.percent(beforeSd), points(afterSd));
            case DRY_IN, DRY_OUT -> Phrases.say("check.gain.moisture", points(beforeSd), points(afterSd));
            case TEST_SOAK, TEST_WEIGH ->
                Phrases.say("check.gain.steep", quantities.percent(beforeSd), quantities.percent(afterSd));
            case BOX_FILL, BOX_READ ->
                Phrases.say("check.gain.box", quantities.percent(beforeSd), quantities.percent(afterSd));
            case OVEN ->
                Phrases.say(
                        "check.gain.oven", quantities.temperatureStep(beforeSd), quantities.temperatureStep(afterSd));
        };
    }

    String entry(Check check) {
        return switch (check.kind()) {
            case LAY_OUT, COUNT ->
                Phrases.say("check.entry.count", "{ \"waterMl\": 4, \"corns\": 100, \"by72Hours\": 97 }");
            case DRY_IN, DRY_OUT ->
                Phrases.say("check.entry.moisture", "\"moisture\": { \"wetBasisPercent\": 12.4, \"sdPercent\": 0.3 }");
            case TEST_SOAK, TEST_WEIGH ->
                Phrases.say(
                        "check.entry.steep",
                        "\"testSteep\": { \"startG\": " + Math.round(sampleG(check)) + ", \"drainedG\": "
                                + Math.round(DRUNK_RATIO * sampleG(check)) + ", \"hours\": 8, \"waterC\": 15 }");
            case BOX_FILL, BOX_READ ->
                Phrases.say(
                        "check.entry.box",
                        "\"waterTest\": { \"waterL\": 5, \"startC\": 50, \"endC\": 40.5, \"roomC\": 20,"
                                + " \"hours\": 6 }");
            case OVEN -> Phrases.say("check.entry.oven", "\"thermostatErrorK\": 3");
        };
    }

    /** Plans of earlier programs asked for a hundred grams and did not say so in figures. */
    private static double sampleG(Check check) {
        return check.gain().sampleG() > 0 ? check.gain().sampleG() : FORMER_SAMPLE_G;
    }

    private static String points(double fraction) {
        double tenths = Math.rint(1000 * fraction) / 10;
        return tenths == Math.rint(tenths) ? Long.toString((long) tenths) : Double.toString(tenths);
    }

    private String said(Check check, String part, String... arguments) {
        return Phrases.say(quantities, "check." + check.kind().key() + part, arguments);
    }
}
