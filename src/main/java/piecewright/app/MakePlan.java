package piecewright.app;

import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import piecewright.plan.Arranging;
import piecewright.plan.Arranging.Choice;
import piecewright.plan.ColourPlanner;
import piecewright.plan.ModelParameters;
import piecewright.plan.Plan;
import piecewright.plan.PlanRequest;
import piecewright.plan.PlanRequest.When;
import piecewright.plan.PlanResult;
import piecewright.plan.Plans;
import piecewright.plan.Preflight;
import piecewright.quantity.EbcRange;
import piecewright.style.MaltStyle;

/** Plans a wish: to a colour if one is wished for, and with the tests of lot and kit that nobody made yet. */
public final class MakePlan {
    private final Plans planner;
    private final List<MaltStyle> styles;

    /** @param styles all there are, to name those that reach a colour which the wished one does not */
    public MakePlan(Plans planner, List<MaltStyle> styles) {
        this.planner = planner;
        this.styles = List.copyOf(styles);
    }

    /** The same, giving up sooner: to try many days. */
    MakePlan hurried() {
        return new MakePlan(planner.hurried(), styles);
    }

    /**
     * What is wished beside the wish itself.
     *
     * @param colourEbc empty for the middle of the style's cure
     * @param open what the plan may choose by itself of how the piece is set up
     * @param checksFrom tests before the first act, none of them before then by the house's clock; empty for none at all
     */
    public record Extras(OptionalDouble colourEbc, Set<Choice> open, Optional<LocalDateTime> checksFrom) {
        public Extras {
            open = Set.copyOf(open);
            Objects.requireNonNull(colourEbc);
            Objects.requireNonNull(checksFrom);
        }
    }

    /** What came of it; the wish holds the style as it was planned, its cure solved. */
    public record Made(ReadWish wish, PlanResult result) {
        public Made {
            Objects.requireNonNull(wish);
            Objects.requireNonNull(result);
        }
    }

    public Made of(ReadWish wish, Extras extras) {
        Made made = arranged(coloured(wish, extras.colourEbc()), extras.open());
        boolean plain = extras.checksFrom().isEmpty() || !(made.result() instanceof PlanResult.Planned);
        return settled(plain ? made : checked(made, extras.checksFrom().get()));
    }

    /** What the plan chose is part of the wish from now on: what is under way keeps its place and its kit. */
    private static Made settled(Made made) {
        if (!(made.result() instanceof PlanResult.Planned planned)) return made;
        PlanRequest request = made.wish().request();
        PlanRequest chosen =
                request.arranged(request.arrangement().asIn(planned.plan().acts()));
        return new Made(made.wish().withRequest(chosen), planned);
    }

    private Made coloured(ReadWish wish, OptionalDouble colourEbc) {
        ColourPlanner aim =
                new ColourPlanner(planner, ModelParameters.defaults().kiln(), styles);
        if (colourEbc.isEmpty()) return inStyle(new Made(wish, planner.apply(wish.request())), aim);
        ColourPlanner.Aimed aimed = aim.plan(wish.request(), colourEbc.getAsDouble());
        return new Made(wish.withRequest(aimed.request()), aimed.result());
    }

    /** A plan whose malt would miss the colour of its style is made for the middle of it, where that can be. */
    private static Made inStyle(Made made, ColourPlanner aim) {
        if (!(made.result() instanceof PlanResult.Planned planned)) return made;
        PlanRequest request = made.wish().request();
        EbcRange usual = request.style().finish().colour();
        double gotEbc = planned.plan().outcome().finished().kiln().colourEbc();
        if (usual.contains(gotEbc)) return made;
        double middleEbc = (usual.lowEbc() + usual.highEbc()) / 2;
        ColourPlanner.Aimed middle = aim.nearest(request, middleEbc);
        boolean nearer = middle.result()
                .match(
                        other -> offRatio(other.plan(), middleEbc) < offRatio(planned.plan(), middleEbc),
                        notPossible -> false);
        return nearer ? new Made(made.wish().withRequest(middle.request()), middle.result()) : made;
    }

    /** By what factor a plan's malt is paler or darker than that, 1 or more. */
    private static double offRatio(Plan plan, double colourEbc) {
        double ratio = plan.outcome().finished().kiln().colourEbc() / colourEbc;
        return Math.max(ratio, 1 / ratio);
    }

    private Made arranged(Made made, Set<Choice> open) {
        if (open.isEmpty()) return made;
        Arranging.Arranged best = new Arranging(planner).best(made.wish().request(), open);
        return new Made(made.wish().withRequest(best.request()), best.result());
    }

    /** Where the days leave it free, the piece starts late enough for every test to be made before it. */
    private Made checked(Made made, LocalDateTime from) {
        PlanRequest request = made.wish().request();
        Preflight preflight = new Preflight(request, from);
        Plan plan = ((PlanResult.Planned) made.result()).plan();
        if (request.when() instanceof When.ReadyBy by) {
            Optional<LocalDate> start = preflight.roomFrom(plan);
            if (start.isPresent()) {
                PlanResult later = planner.apply(request.withWhen(new When.ReadyBy(by.day(), start.get())));
                if (later instanceof PlanResult.Planned planned) plan = planned.plan();
            }
        }
        return new Made(made.wish(), new PlanResult.Planned(preflight.added(plan)));
    }
}
