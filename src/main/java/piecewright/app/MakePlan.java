package piecewright.app;

import java.util.List;
import java.util.Objects;
import java.util.OptionalDouble;
import java.util.function.Function;
import piecewright.plan.ColourAim;
import piecewright.plan.ModelParameters;
import piecewright.plan.PlanRequest;
import piecewright.plan.PlanResult;
import piecewright.style.MaltStyle;

/** Plans a wish, to a colour if one is wished for. */
public final class MakePlan {
    private final Function<PlanRequest, PlanResult> planner;
    private final List<MaltStyle> styles;

    /** @param styles all there are, to name those that reach a colour which the wished one does not */
    public MakePlan(Function<PlanRequest, PlanResult> planner, List<MaltStyle> styles) {
        this.planner = planner;
        this.styles = List.copyOf(styles);
    }

    /** What came of it; the wish holds the style as it was planned, its cure solved. */
    public record Made(ReadWish wish, PlanResult result) {
        public Made {
            Objects.requireNonNull(wish);
            Objects.requireNonNull(result);
        }
    }

    /** @param colourEbc empty for the middle of the style's cure */
    public Made of(ReadWish wish, OptionalDouble colourEbc) {
        if (colourEbc.isEmpty()) return new Made(wish, planner.apply(wish.request()));
        ColourAim aim = new ColourAim(planner, ModelParameters.defaults().kiln(), styles);
        ColourAim.Aimed aimed = aim.plan(wish.request(), colourEbc.getAsDouble());
        return new Made(new ReadWish(aimed.request(), wish.lotText(), wish.houseText()), aimed.result());
    }
}
