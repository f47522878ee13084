package piecewright.ensemble;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import piecewright.plan.ActKind;
import piecewright.plan.Blueprint;
import piecewright.plan.Simulation.Passing;
import piecewright.plan.Timetable.Visit;
import piecewright.process.PieceState;
import piecewright.process.Stage;

/**
 * The usual timetable of home malting, by the clock alone: 8 h under water, 8 h of air, twice, 4 h under water; on the
 * floor 12 h later, turned morning and evening; loaded after five days; 12 h at the first rung, 8 h at the second, 4 h
 * of cure. Common practice, no source. It promises the style's steep-out moisture and colour, and the break 11 h after
 * loading (10 to 12 h, remembered).
 */
final class TextbookTimetable {
    static final double BREAK_HOURS = 11;
    static final double COUCH_PEAK_C = 50;

    private record Step(double atHours, ActKind kind, int number) {}

    /** What came of it. */
    record Result(double steepOutFraction, Optional<Double> breakHours, double colourEbc) {}

    private TextbookTimetable() {}

    private static List<Step> steps() {
        List<Step> steps = new ArrayList<>(List.of(
                new Step(0, ActKind.SOAK, 1),
                new Step(8, ActKind.DRAIN, 1),
                new Step(16, ActKind.SOAK, 2),
                new Step(24, ActKind.DRAIN, 2),
                new Step(32, ActKind.SOAK, 3),
                new Step(36, ActKind.DRAIN, 3),
                new Step(48, ActKind.FLOOR, 0)));
        for (int turn = 1; turn < 10; turn++) steps.add(new Step(48 + 12 * turn, ActKind.TURN, turn));
        steps.addAll(List.of(
                new Step(168, ActKind.LOAD, 0),
                new Step(172, ActKind.STIR, 0),
                new Step(176, ActKind.STIR, 1),
                new Step(180, ActKind.RAISE, 1),
                new Step(188, ActKind.CURE, 0),
                new Step(192, ActKind.OFF, 0)));
        return steps;
    }

    static Result in(Reality reality, Blueprint blueprint) {
        PieceState now = reality.raw();
        Passing passing = Passing.none();
        double startHours = blueprint.hours(blueprint.plan().startsAt());
        double last = startHours;
        double loaded = Double.NaN;
        double out = 0;
        Crossing broken = new Crossing(-0.23);
        for (Step step : steps()) {
            double until = startHours + step.atHours();
            for (double at = last; until - at > 1e-9 && passing.expected().isPresent(); at += 0.25) {
                PieceState before = now;
                now = passing.expected().get().step(now, at, 0.25);
                if (!Double.isNaN(loaded)) {
                    broken.rose(-moisture(before), -moisture(now), at - loaded, at + 0.25 - loaded);
                }
            }
            last = until;
            if (step.kind() == ActKind.LOAD) loaded = until;
            if (step.kind() == ActKind.DRAIN) out = moisture(now);
            Visit visit = new Visit("textbook", step.kind(), step.number(), blueprint.origin());
            now = reality.acted(visit, now, 0);
            Passing before = passing;
            passing = reality.after(visit, passing);
            Optional<Stage> entered = passing.expected();
            if (passing != before && entered.isPresent()) now = entered.get().entered(now);
        }
        Optional<Double> breakHours = broken.happened() ? Optional.of(broken.atMinutes()) : Optional.empty();
        return new Result(out, breakHours, now.kiln().colourEbc());
    }

    private static double moisture(PieceState state) {
        return state.mass().moisture().wetBasisFraction();
    }
}
