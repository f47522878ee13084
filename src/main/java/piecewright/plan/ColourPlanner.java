package piecewright.plan;

import java.util.List;
import java.util.Objects;
import java.util.function.Function;
import piecewright.colour.ColourReach;
import piecewright.colour.Cure;
import piecewright.colour.Cure.Cured;
import piecewright.colour.CureSolver;
import piecewright.process.kiln.KilnParameters;
import piecewright.quantity.HoursRange;
import piecewright.quantity.TemperatureRange;
import piecewright.style.KilnSchedule;
import piecewright.style.MaltStyle;

/**
 * Plans for a colour: leaves the style as it is but for its cure, whose hours and temperature are solved inside the
 * style's ranges and the kit's limits. What a plain course gives is only a first guess; the plan's own drying, kiln and
 * hours decide, so the aim is corrected by what each plan comes to.
 */
public final class ColourPlanner {
    /** Judgement: nearer than the eye tells, and a quarter of the band of kilned malt. */
    private static final double NEAR_RATIO = 1.03;
    /** Judgement: half the band of kilned malt; a plan that misses by less is still a plan for that colour. */
    private static final double GOOD_ENOUGH_RATIO = 1.15;
    /** Judgement: the hours solved for may be missed by this much where somebody's hours ask for it. */
    private static final double SPARE_HOURS = 0.25;
    /** Judgement: by then it is as near as people's hours let it. */
    private static final int ROUNDS = 4;

    private final Function<PlanRequest, PlanResult> planner;
    private final KilnParameters parameters;
    private final List<MaltStyle> styles;

    /** @param styles all there are, to name those that reach a colour which the wished one does not */
    public ColourPlanner(Function<PlanRequest, PlanResult> planner, KilnParameters parameters, List<MaltStyle> styles) {
        this.planner = planner;
        this.parameters = parameters;
        this.styles = List.copyOf(styles);
    }

    /** The request with its style's cure solved, and the plan of it or why there is none. */
    public record Aimed(PlanRequest request, PlanResult result) {
        public Aimed {
            Objects.requireNonNull(request);
            Objects.requireNonNull(result);
        }
    }

    /** The plan that comes nearest to this colour, EBC. */
    public Aimed plan(PlanRequest request, double colourEbc) {
        double hottestC = HottestCure.ofC(request.house());
        CureSolver solver = new CureSolver(new Cure(request.style(), parameters), hottestC);
        double aimEbc = colourEbc;
        Aimed best = null;
        double bestOff = Double.POSITIVE_INFINITY;
        for (int round = 0; round < ROUNDS && bestOff > Math.log(NEAR_RATIO); round++) {
            ColourReach reach = solver.reach(aimEbc);
            if (reach instanceof ColourReach.NoHeater cold) return refused(request, cold);
            PlanRequest cured = request.withStyle(cured(request.style(), nearest(reach)));
            PlanResult result = planner.apply(cured);
            if (!(result instanceof PlanResult.Planned planned)) return best == null ? new Aimed(cured, result) : best;
            double gotEbc = planned.plan().outcome().finished().kiln().colourEbc();
            double off = Math.abs(Math.log(gotEbc / colourEbc));
            if (off >= bestOff) break;
            best = new Aimed(cured, result);
            bestOff = off;
            boolean asFarAsItGoes = reach instanceof ColourReach.OutOfReach;
            if (asFarAsItGoes) break;
            aimEbc *= colourEbc / gotEbc;
        }
        Aimed nearest = Objects.requireNonNull(best);
        return bestOff <= Math.log(NEAR_RATIO) ? nearest : orRefused(request, colourEbc, nearest, hottestC);
    }

    private static Cured nearest(ColourReach reach) {
        return reach instanceof ColourReach.Reached reached
                ? reached.cured()
                : ((ColourReach.OutOfReach) reach).nearest();
    }

    private static MaltStyle cured(MaltStyle style, Cured cured) {
        KilnSchedule kiln = style.kiln();
        double least = kiln.cureHours().lowHours();
        double most = kiln.cureHours().highHours();
        double from = Math.max(least, Math.min(cured.cureHours(), most) - SPARE_HOURS);
        double until = Math.min(most, Math.max(cured.cureHours(), least) + SPARE_HOURS);
        TemperatureRange cureC = new TemperatureRange(cured.cureC(), cured.cureC());
        return style.withKiln(kiln.withCure(cureC, new HoursRange(from, until)));
    }

    private static Aimed refused(PlanRequest request, ColourReach.NoHeater cold) {
        Obstacle obstacle = new Obstacle.NoHeater(cold.neededC(), cold.hottestC());
        return new Aimed(request, new PlanResult.NotPossible(List.of(obstacle)));
    }

    /** Good enough inside the band of the malt; else told, with the styles that reach it. */
    private Aimed orRefused(PlanRequest request, double colourEbc, Aimed nearest, double hottestC) {
        Plan plan = ((PlanResult.Planned) nearest.result()).plan();
        double nearestEbc = plan.outcome().finished().kiln().colourEbc();
        boolean asNearAsHoursLet = Math.abs(Math.log(nearestEbc / colourEbc)) <= Math.log(GOOD_ENOUGH_RATIO);
        if (asNearAsHoursLet) return nearest;
        List<String> reaching = styles.stream()
                .filter(style -> new CureSolver(new Cure(style, parameters), hottestC).reach(colourEbc)
                        instanceof ColourReach.Reached)
                .map(MaltStyle::title)
                .toList();
        Obstacle obstacle = new Obstacle.ColourOutOfReach(request.style().title(), colourEbc, nearestEbc, reaching);
        return new Aimed(request, new PlanResult.NotPossible(List.of(obstacle)));
    }
}
