package piecewright.plan.search;

import java.util.ArrayList;
import java.util.List;
import piecewright.house.Heater.HotAir;
import piecewright.plan.KilnDoubt;
import piecewright.plan.Setup;
import piecewright.process.kiln.DryingBed;
import piecewright.process.kiln.KilnParameters;
import piecewright.style.KilnSchedule.Rung;

/** The set temperatures of one piece's kilning, each with its expected and its slow drying. */
final class KilnHeat {
    /** Judgement: dry matter at loading, share of what was steeped, at the upper end: dries slowest; only the tables use it. */
    private static final double USUAL_DRY_FRACTION = 0.98;

    private final List<DryTable> expected = new ArrayList<>();
    private final List<DryTable> slow = new ArrayList<>();
    private final List<Rung> rungs;
    private final double cureGateRatio;
    private final double gateMarginFraction;

    KilnHeat(Setup setup, Stops stops, double gateMarginFraction) {
        this.gateMarginFraction = gateMarginFraction;
        this.rungs = stops.rungs();
        var drying = setup.outfit().drying();
        for (int rung = 0; rung < rungs.size(); rung++)
            add(setup, drying.dryer().air(), setup.dryingC(rung));
        add(setup, drying.curingAir(), drying.cureC());
        this.cureGateRatio = ratioOf(setup.cureGateFraction() - gateMarginFraction);
    }

    private void add(Setup setup, HotAir air, double setC) {
        boolean cures = expected.size() == rungs.size();
        var room = cures ? setup.air().curer() : setup.air().dryer();
        double dryKg = setup.dryMatterKg() * USUAL_DRY_FRACTION;
        KilnParameters parameters = setup.models().kiln();
        double flow = air.airFlowM3PerHour();
        double slowFlow = KilnDoubt.slowFlowM3PerHour(air);
        expected.add(new DryTable(new DryingBed(parameters.drying()), dryKg, setC, flow, room));
        slow.add(new DryTable(new DryingBed(KilnDoubt.slow(parameters).drying()), dryKg, setC, slowFlow, room));
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
        return expected.get(level);
    }

    DryTable slow(int level) {
        return slow.get(level);
    }
}
