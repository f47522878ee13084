package piecewright.plan;

import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.function.Function;
import piecewright.colour.ColourAim;
import piecewright.colour.ColourReach;
import piecewright.process.PieceState;
import piecewright.process.kiln.KilnParameters;
import piecewright.quantity.HoursRange;
import piecewright.style.KilnSchedule;
import piecewright.style.MaltStyle;

/**
 * Plans for a colour: leaves the style as it is but for what it leaves free, its cure, the minutes of its roast or the
 * hours of its hot couch, solved inside the style's ranges and the kit's limits. What a plain course gives is only a first guess; the plan's own
 * drying, kiln and hours decide, so the aim is corrected by what each plan comes to.
 */
public final class ColourPlanner {
    /** Judgement: nearer than the eye tells, and a tenth of the band of kilned malt. */
    private static final double NEAR_RATIO = 1.03;
    /** Judgement: half the band of kilned malt; a plan that misses by less is still a plan for that colour. */
    private static final double GOOD_ENOUGH_RATIO = 1.15;
    /** Judgement: the hours of a cure may be missed by this much where somebody's hours ask for it. */
    private static final double SPARE_HOURS = 0.25;
    /** Judgement: by then it is as near as people's hours let it. */
    private static final int ROUNDS = 6;

    private final Function<PlanRequest, PlanResult> planner;
    private final KilnParameters parameters;
    private final List<MaltStyle> styles;

    /** @param styles all there are, to name those that reach a colour which the wished one does not */
    public ColourPlanner(Function<PlanRequest, PlanResult> planner, KilnParameters parameters, List<MaltStyle> styles) {
        this.planner = planner;
        this.parameters = parameters;
        this.styles = List.copyOf(styles);
    }

    /** The request with what its style left free solved, and the plan of it or why there is none. */
    public record Aimed(PlanRequest request, PlanResult result) {
        public Aimed {
            Objects.requireNonNull(request);
            Objects.requireNonNull(result);
        }
    }

    /** The plan of this colour, EBC; where none comes near enough, what comes nearest and which styles come there. */
    public Aimed plan(PlanRequest request, double colourEbc) {
        ColourAim aim = HottestHeat.aim(request.house(), parameters);
        Nearest nearest = nearest(request, colourEbc, aim);
        return nearest.isNear() ? nearest.aimed().orElseThrow() : outOfReach(request, colourEbc, nearest, aim);
    }

    /** The plan that comes nearest to this colour, EBC, however near that is; or why the first try has none. */
    public Aimed nearest(PlanRequest request, double colourEbc) {
        return nearest(request, colourEbc, HottestHeat.aim(request.house(), parameters))
                .aimed()
                .orElseThrow();
    }

    private Nearest nearest(PlanRequest request, double colourEbc, ColourAim aim) {
        ColourReach reach = aim.reach(request.style(), colourEbc);
        Nearest nearest = Nearest.none();
        for (int round = 0; round < ROUNDS && nearest.offRatio() > NEAR_RATIO; round++) {
            Optional<Obstacle> lacking = lacking(reach);
            if (lacking.isPresent()) return nearest.or(refused(request, lacking.get()));
            PlanRequest fixed = request.withStyle(fixed(request.style(), reach));
            PlanResult result = planner.apply(fixed);
            if (!(result instanceof PlanResult.Planned planned)) {
                return nearest.or(new Aimed(fixed, result));
            }
            PieceState malt = planned.plan().outcome().finished();
            double gotRatio = malt.kiln().colourEbc() / colourEbc;
            double offRatio = Math.max(gotRatio, 1 / gotRatio);
            if (offRatio < nearest.offRatio()) nearest = new Nearest(Optional.of(new Aimed(fixed, result)), offRatio);
            if (goesNoFurther(reach, gotRatio)) break;
            reach = corrected(aim, reach, request.style(), malt, colourEbc);
        }
        return nearest;
    }

    /** Whether the style ends here: what was tried is its darkest and still too pale, or its palest and still too dark. */
    private static boolean goesNoFurther(ColourReach tried, double gotRatio) {
        Optional<ColourReach.Change> change = Optional.empty();
        if (tried instanceof ColourReach.OutOfReach out) change = Optional.of(out.change());
        if (tried instanceof ColourReach.RoastOutOfReach out) change = Optional.of(out.change());
        return change.map(one -> one == ColourReach.Change.A_PALER_STYLE ? gotRatio > 1 : gotRatio < 1)
                .orElse(false);
    }

    /** The best plan so far, and by what factor its colour is off, 1 or more. */
    private record Nearest(Optional<Aimed> aimed, double offRatio) {
        static Nearest none() {
            return new Nearest(Optional.empty(), Double.POSITIVE_INFINITY);
        }

        /** This, or what came of the first try. */
        Nearest or(Aimed refused) {
            return aimed.isPresent() ? this : new Nearest(Optional.of(refused), Double.POSITIVE_INFINITY);
        }

        boolean isPlanned() {
            return aimed.isPresent() && aimed.get().result() instanceof PlanResult.Planned;
        }

        boolean isNear() {
            return !isPlanned() || offRatio <= GOOD_ENOUGH_RATIO;
        }
    }

    /**
     * What to aim at after a plan came to something else than the plain course: as much further as it fell short. The couch
     * was broken when somebody was there, so its index stays and the cure makes up for it.
     */
    private static ColourReach corrected(
            ColourAim aim, ColourReach tried, MaltStyle style, PieceState malt, double colourEbc) {
        double shortRatio = colourEbc / malt.kiln().colourEbc();
        if (style.couches().hot().isEmpty()) return aim.reach(style, aim.made(style, tried) * shortRatio);
        HoursRange range = style.couches().hot().get().acceptableIndex();
        double indexHours = Math.max(
                range.lowHours(), Math.min(range.highHours(), malt.couch().indexHours()));
        MaltStyle broken = style.withCouches(style.couches().withIndexHours(indexHours));
        return aim.byCure(broken, aim.made(broken, tried) * shortRatio);
    }

    private static MaltStyle fixed(MaltStyle style, ColourReach reach) {
        MaltStyle fixed = ColourAim.aimed(style, reach);
        KilnSchedule kiln = fixed.kiln();
        HoursRange whole = style.kiln().cureHours();
        HoursRange spare = new HoursRange(
                Math.max(whole.lowHours(), kiln.cureHours().lowHours() - SPARE_HOURS),
                Math.min(whole.highHours(), kiln.cureHours().highHours() + SPARE_HOURS));
        return fixed.withKiln(kiln.withCure(kiln.cureC(), spare));
    }

    private static Optional<Obstacle> lacking(ColourReach reach) {
        if (reach instanceof ColourReach.NoHeater cold) {
            return Optional.of(new Obstacle.NoHeater(cold.neededC(), cold.hottestC()));
        }
        return reach instanceof ColourReach.NoBox ? Optional.of(new Obstacle.NoBox()) : Optional.empty();
    }

    private static Aimed refused(PlanRequest request, Obstacle obstacle) {
        return new Aimed(request, new PlanResult.NotPossible(List.of(obstacle)));
    }

    /** Said only of a style whose plan was made and came there. */
    private static boolean comesTo(Nearest tried) {
        return tried.isPlanned() && tried.isNear();
    }

    private Aimed outOfReach(PlanRequest request, double colourEbc, Nearest nearest, ColourAim aim) {
        Plan plan = ((PlanResult.Planned) nearest.aimed().orElseThrow().result()).plan();
        List<String> reaching = styles.stream()
                .filter(style -> style.grains().contains(request.lot().kind()))
                .filter(style -> !style.key().equals(request.style().key()))
                .filter(style -> aim.reach(style, colourEbc).isReached())
                .filter(style -> comesTo(nearest(request.withStyle(style), colourEbc, aim)))
                .map(MaltStyle::title)
                .toList();
        Obstacle obstacle = new Obstacle.ColourOutOfReach(
                request.style().title(),
                colourEbc,
                plan.outcome().finished().kiln().colourEbc(),
                reaching);
        return new Aimed(request, new PlanResult.NotPossible(List.of(obstacle)));
    }
}
