package piecewright.plan.search;

import java.util.List;
import piecewright.style.KilnSchedule.Rung;

/** The set temperatures of one piece's kilning: when each may be set, and how the piece dries there. */
final class KilnHeat {
    private final KilnTables tables;
    private final List<Rung> rungs;
    private final double cureGateRatio;
    private final double gateMarginFraction;

    KilnHeat(QuickForms forms, double gateMarginFraction) {
        this.gateMarginFraction = gateMarginFraction;
        this.rungs = forms.stops().rungs();
        this.tables = forms.kiln();
        this.cureGateRatio = ratioOf(forms.setup().cureGateFraction() - gateMarginFraction);
    }

    static double ratioOf(double moistureFraction) {
        return moistureFraction / (1 - moistureFraction);
    }

    int cureLevel() {
        return rungs.size();
    }

    /** Moisture, kg per kg dry, at or below which this level of heat may be set; level 0 is open from loading. */
    double gateRatio(int level) {
        return level == cureLevel()
                ? cureGateRatio
                : ratioOf(rungs.get(level).belowMoistureFraction() - gateMarginFraction);
    }

    DryTable expected(int level) {
        return tables.expected(level);
    }

    DryTable slow(int level) {
        return tables.slow(level);
    }
}
