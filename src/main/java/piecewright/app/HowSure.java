package piecewright.app;

import java.time.Instant;
import java.util.Objects;
import java.util.Optional;
import piecewright.ensemble.Band;
import piecewright.ensemble.Belief;
import piecewright.ensemble.Ensemble;
import piecewright.ensemble.Figure;
import piecewright.ensemble.Sureness;
import piecewright.ensemble.WhatHelps;
import piecewright.plan.Blueprint;
import piecewright.plan.ModelParameters;
import piecewright.plan.Plan;
import piecewright.plan.PlanRequest;
import piecewright.plan.PlanRequest.When;
import piecewright.plan.Planner;

/** How sure a plan is and what would help, as the faces ask it. */
public final class HowSure {
    /** Judgement: enough for a band to stand still to a tenth of its width. */
    private static final int MEMBERS = 200;

    private final Planner planner;

    public HowSure(ModelParameters parameters) {
        this.planner = new Planner(Objects.requireNonNull(parameters));
    }

    /**
     * Bands, verdict and help.
     *
     * @param now when the weather was told, unless the wish says from when on it counts
     */
    public Sureness of(PlanRequest request, Plan plan, Instant now, int members) {
        return helped(request, plan, now, chances(request, plan, now, members));
    }

    /** Bands and verdict alone: a tenth of the work, help is not looked for. */
    public Sureness chances(PlanRequest request, Plan plan, Instant now, int members) {
        Blueprint blueprint = planner.blueprint(request, plan);
        return Ensemble.of(blueprint, asOf(request, now)).sureness(Belief.prior(blueprint), members);
    }

    /** The same bands with what would help; plans again several times. */
    public Sureness helped(PlanRequest request, Plan plan, Instant now, Sureness sure) {
        Blueprint blueprint = planner.blueprint(request, plan);
        WhatHelps help = new WhatHelps(planner, asOf(request, now), sure.members());
        return sure.withHelp(help.best(blueprint, Belief.prior(blueprint), sure.verdict()));
    }

    /** Band of one figure of the piece; empty where plans of its kind have no such figure. */
    public Optional<Band> of(PlanRequest request, Plan plan, Figure figure) {
        return chances(request, plan, asOf(request, plan.startsAt()), MEMBERS).figure(figure);
    }

    /** The day from which acts are wished, or now where only the start is told. */
    private static Instant asOf(PlanRequest request, Instant now) {
        return request.when() instanceof When.ReadyBy wish
                ? wish.earliestStart().atStartOfDay(request.house().zone()).toInstant()
                : now;
    }
}
