package piecewright.text;

import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.util.List;
import java.util.OptionalDouble;
import piecewright.plan.Act;
import piecewright.plan.ActKind;
import piecewright.plan.Bill;
import piecewright.plan.Caution;
import piecewright.plan.Expectation;
import piecewright.plan.Finding;
import piecewright.plan.Phase;
import piecewright.plan.PhaseKind;
import piecewright.plan.Plan;
import piecewright.plan.Setting;
import piecewright.plan.Window;
import piecewright.process.PieceState;
import piecewright.quantity.Moisture;

/** A small plan with made-up figures, for tests of words and files. */
public final class PlanSamples {
    public static final ZoneId OSLO = ZoneId.of("Europe/Oslo");
    public static final Instant START = Instant.parse("2031-03-21T17:00:00Z");

    private PlanSamples() {}

    public static Act act(ActKind kind, String id, Setting setting) {
        return new Act(
                id,
                kind,
                START,
                Duration.ofMinutes(30),
                new Window(START.minusSeconds(3600), START.plusSeconds(3600), START.plusSeconds(7200)),
                setting,
                new Expectation(6.2704, new Moisture(0.44), 15.26, OptionalDouble.empty()),
                List.of());
    }

    public static Act raise() {
        Act plain = act(
                ActKind.RAISE,
                "kiln.raise-2",
                Setting.at("box kiln").withSetC(65).withGateFraction(0.12));
        return new Act(
                plain.id(),
                plain.kind(),
                plain.startsAt(),
                plain.work(),
                plain.window(),
                plain.setting(),
                new Expectation(4.5, new Moisture(0.13), 38, OptionalDouble.of(0.754321)),
                List.of(Caution.FIRE, Caution.HOT_SURFACES));
    }

    /** A soak and a raise, one phase and two findings. */
    public static Plan plan() {
        Act soak = act(
                ActKind.SOAK,
                "steep-1.soak",
                Setting.at("bucket").withWaterL(10).withSetC(12));
        Phase rest = new Phase(
                "rest",
                PhaseKind.RESTING,
                START,
                START.plusSeconds(86_400),
                "cellar",
                new Moisture(0.12),
                new Moisture(0.045));
        PieceState state = PieceState.rawGrain(5, new Moisture(0.12), 0, 2.2, 12);
        return new Plan(
                new Plan.Subject("pale", "Pale malt", "good barley", OSLO, Instant.parse("2031-04-20T22:00:00Z")),
                new Plan.Outcome(5.10049, 4.00051, 4.1, new Moisture(0.045), state, state.ledgers()),
                List.of(soak, raise()),
                List.of(rest),
                List.of(new Finding.TreatmentUnknown("lot"), new Finding.BedDepth("floor", 7.5, Duration.ofHours(11))),
                List.of(new Plan.Sample(START, state)),
                Bill.empty());
    }
}
