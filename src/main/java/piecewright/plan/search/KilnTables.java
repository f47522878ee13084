package piecewright.plan.search;

import java.util.ArrayList;
import java.util.List;
import piecewright.belief.SlowKiln;
import piecewright.house.Heater.HotAir;
import piecewright.plan.Setup;
import piecewright.process.Surroundings;
import piecewright.process.kiln.DryingBed;
import piecewright.process.kiln.KilnParameters;

/** Expected and slow drying of one piece at each set temperature of its kilning, the cure last. */
final class KilnTables {
    /** Judgement: dry matter at loading, share of what was steeped, at the upper end: dries slowest; only the tables use it. */
    private static final double USUAL_DRY_FRACTION = 0.98;

    private final List<DryTable> expected = new ArrayList<>();
    private final List<DryTable> slow = new ArrayList<>();

    KilnTables(Setup setup, Stops stops) {
        var drying = setup.outfit().drying();
        var gates = setup.models().gates();
        for (int rung = 0; rung < stops.rungs().size(); rung++) {
            add(
                    setup,
                    gates.drying(),
                    drying.dryer().air(),
                    setup.dryingC(rung),
                    setup.air().dryer());
        }
        add(
                setup,
                gates.curing(),
                drying.curingAir(),
                drying.cureC(),
                setup.air().curer());
    }

    private void add(Setup setup, SlowKiln tenth, HotAir air, double setC, Surroundings room) {
        double dryKg = setup.dryMatterKg() * USUAL_DRY_FRACTION;
        KilnParameters parameters = setup.models().kiln();
        double flow = air.airFlowM3PerHour();
        double slowFlow = tenth.flowM3PerHour(air);
        expected.add(new DryTable(new DryingBed(parameters.drying()), dryKg, setC, flow, room));
        slow.add(new DryTable(new DryingBed(tenth.slow(parameters).drying()), dryKg, setC, slowFlow, room));
    }

    DryTable expected(int level) {
        return expected.get(level);
    }

    DryTable slow(int level) {
        return slow.get(level);
    }
}
