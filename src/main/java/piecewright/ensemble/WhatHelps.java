package piecewright.ensemble;

import java.time.Instant;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import piecewright.belief.Priors;
import piecewright.plan.Blueprint;
import piecewright.plan.PlanRequest;
import piecewright.plan.PlanResult;
import piecewright.plan.Planner;
import piecewright.remedy.Change;
import piecewright.remedy.Changed;
import piecewright.remedy.Steps;

/** Finds what would make a plan surer, by measuring more or by planning again, and following the plan each time. */
public final class WhatHelps {
    /** Judgement: less than three chances in a hundred more is no help. */
    private static final double LEAST_GAIN_FRACTION = 0.03;
    /** Judgement: a plan this sure needs no help. */
    private static final double SURE_FRACTION = 0.95;
    /** Judgement: standard deviation of ln steep rate after a test soak of 100 g. */
    private static final double SOAKED_SD = 0.10;
    /** Judgement: standard deviation of ln raw moisture after a meter or an oven: 0.3 points of twelve. */
    private static final double METERED_SD = 0.025;
    /** Judgement: a doubt already so small, in shares of what measuring leaves, is not measured again. */
    private static final double KNOWN_RATIO = 1.01;

    private static final Map<Doubt, Double> MEASURED_SD = new EnumMap<>(Map.of(
            Doubt.STEEP_RATE,
            SOAKED_SD,
            Doubt.AIR_FLOW,
            Priors.MEASURED_AIR_FLOW_SD,
            Doubt.BOX_LOSS,
            Priors.TESTED_BOX_LOSS_SD,
            Doubt.RAW_MOISTURE,
            METERED_SD));

    private final Planner planner;
    private final Instant asOf;
    private final int members;

    public WhatHelps(Planner planner, Instant asOf, int members) {
        this.planner = planner;
        this.asOf = asOf;
        this.members = members;
    }

    /** The help that helps most; empty when the plan is sure enough or nothing helps by much. */
    public Optional<Help> best(Blueprint blueprint, Belief belief, Verdict now) {
        if (now.softFraction() >= SURE_FRACTION) return Optional.empty();
        Stream<Help> measured =
                MEASURED_SD.keySet().stream().flatMap(doubt -> measured(doubt, blueprint, belief).stream());
        Stream<Help> arranged = new Steps(blueprint.request())
                .easiest().stream().flatMap(change -> arranged(change, blueprint, belief).stream());
        return Stream.concat(measured, arranged)
                .filter(help -> help.softFraction() >= now.softFraction() + LEAST_GAIN_FRACTION)
                .max(Comparator.comparingDouble(Help::softFraction));
    }

    /** What measuring makes of the plan; empty where it tells nothing new. */
    public Optional<Help> measured(Doubt doubt, Blueprint blueprint, Belief belief) {
        double sd = MEASURED_SD.getOrDefault(doubt, Double.POSITIVE_INFINITY);
        boolean matters =
                doubt != Doubt.BOX_LOSS || blueprint.setup().couching().isPresent();
        if (!matters || belief.sd(doubt) <= sd * KNOWN_RATIO) return Optional.empty();
        return Optional.of(new Help.Measured(doubt, soft(blueprint, belief.known(doubt, sd))));
    }

    /** What a change makes of the plan; empty where it leaves none. */
    public Optional<Help> arranged(Change change, Blueprint blueprint, Belief belief) {
        PlanRequest wish = new Changed(blueprint.request()).by(change);
        if (!(planner.plan(wish) instanceof PlanResult.Planned planned)) return Optional.empty();
        return Optional.of(new Help.Arranged(change, soft(planner.blueprint(wish, planned.plan()), belief)));
    }

    private double soft(Blueprint blueprint, Belief belief) {
        return Ensemble.of(blueprint, asOf).sureness(belief, members).verdict().softFraction();
    }
}
