package piecewright.app;

import java.time.Instant;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import piecewright.ensemble.ActBands;
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
     * Bands, verdict and help; empty for a plan with acts the ensemble has no rules for.
     *
     * @param now when the weather was told, unless the wish says from when on it counts
     */
    public Optional<Sureness> of(PlanRequest request, Plan plan, Instant now, int members) {
        return chances(request, plan, now, members).map(sure -> helped(request, plan, now, sure));
    }

    /** Bands and verdict alone: a tenth of the work, help is not looked for. */
    public Optional<Sureness> chances(PlanRequest request, Plan plan, Instant now, int members) {
        Blueprint blueprint = planner.blueprint(request, plan);
        return Ensemble.of(blueprint, asOf(request, now))
                .map(ensemble -> ensemble.sureness(Belief.prior(blueprint), members));
    }

    /** The same bands with what would help; plans again several times. */
    public Sureness helped(PlanRequest request, Plan plan, Instant now, Sureness sure) {
        Blueprint blueprint = planner.blueprint(request, plan);
        WhatHelps help = new WhatHelps(planner, asOf(request, now), sure.members());
        return sure.withHelp(help.best(blueprint, Belief.prior(blueprint), sure.verdict()));
    }

    /** The bands of the acts as far as the ensemble knows their rules: of a couched plan, until it is packed. */
    public List<ActBands> bands(PlanRequest request, Plan plan, Instant now, int members) {
        Blueprint blueprint = planner.blueprint(request, plan);
        return Ensemble.beginning(blueprint, asOf(request, now), Belief.prior(blueprint), members);
    }

    /** Band of one figure of the finished piece; empty where the ensemble has no rules for the plan or no such figure. */
    public Optional<Band> of(PlanRequest request, Plan plan, Figure figure) {
        Blueprint blueprint = planner.blueprint(request, plan);
        Instant asOf = asOf(request, plan.startsAt());
        return Ensemble.of(blueprint, asOf)
                .flatMap(ensemble ->
                        ensemble.sureness(Belief.prior(blueprint), MEMBERS).figure(figure));
    }

    /** The day from which acts are wished, or now where only the start is told. */
    private static Instant asOf(PlanRequest request, Instant now) {
        return request.when() instanceof When.ReadyBy wish
                ? wish.earliestStart().atStartOfDay(request.house().zone()).toInstant()
                : now;
    }
}
