package piecewright.process.kiln;

/**
 * How fast heat and moisture destroy diastatic power. A construction on six anchors, not measured kinetics: read it to
 * 15 percentage points.
 *
 * @param loss first-order loss at referencePercent moisture, per hour
 * @param moisturePerPercent growth of the logarithm of the loss per wet-basis percent
 * @param referencePercent moisture of the loss, wet-basis percent
 * @param wettestPercent moisture above which more changes nothing, wet-basis percent
 */
public record EnzymeParameters(
        Arrhenius loss, double moisturePerPercent, double referencePercent, double wettestPercent) {
    /** Judgement: constructed on six anchors of surviving activity; valid 45 to 105 °C. */
    public static final double LOSS_PER_HOUR = 0.025;
    /** Judgement: constructed on the same anchors. */
    public static final double LOSS_J_PER_MOL = 120_000;
    /** Judgement: 80 °C, where the loss is quoted. */
    public static final double LOSS_AT_K = 353.15;
    /** Judgement: constructed on the same anchors; wet enzymes die much faster. */
    public static final double MOISTURE_PER_PERCENT = 0.10;
    /** Judgement: the moisture at which the loss is quoted. */
    public static final double REFERENCE_PERCENT = 5;
    /** Judgement: no anchor is wetter. */
    public static final double WETTEST_PERCENT = 45;

    /** The same where heat destroys so many times as fast, above 0. */
    public EnzymeParameters withLossRatio(double changedRatio) {
        return new EnzymeParameters(
                new Arrhenius(loss.ratePerHour() * changedRatio, loss.activationJPerMol(), loss.referenceK()),
                moisturePerPercent,
                referencePercent,
                wettestPercent);
    }

    public static EnzymeParameters defaults() {
        return new EnzymeParameters(
                new Arrhenius(LOSS_PER_HOUR, LOSS_J_PER_MOL, LOSS_AT_K),
                MOISTURE_PER_PERCENT,
                REFERENCE_PERCENT,
                WETTEST_PERCENT);
    }
}
