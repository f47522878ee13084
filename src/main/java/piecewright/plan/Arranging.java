package piecewright.plan;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import piecewright.house.Trays;

/**
 * Chooses what a wish leaves open: where a piece grows, how deep it lies, how warm its water is. Every way is planned;
 * one is taken over the usual only when it asks less. Open choices are settled one after the other, each with those
 * before it settled.
 */
public final class Arranging {
    /** Judgement: depths worth comparing, cm: half the usual, and what fewer trays would make of it. */
    private static final double[] BEDS_CM = {2.5, 7.5, 10};
    /** Judgement: water a night in the fridge cooler, or a kettle warmer, K. */
    private static final double[] WATER_K = {-4, -2, 2, 4};
    /** Judgement: practice, steep water of 10 to 16 °C is common; no warmer is made on purpose. */
    private static final double WARMED_AT_MOST_C = 16;
    /** Judgement: nor colder. */
    private static final double CHILLED_AT_LEAST_C = 6;
    /** Judgement: the usual is left for a minute of work or more. */
    private static final double WORTH_MINUTES = 1;

    /** Judgement: nobody spreads more evenly. */
    private static final double SAME_BED_CM = 0.3;

    private final Plans planner;

    /** What can be left open. */
    public enum Choice {
        PLACE,
        BED,
        WATER;

        /** The word used in options and files. */
        public String key() {
            return name().toLowerCase(java.util.Locale.ROOT);
        }
    }

    /** The wish with its open choices settled, and what came of it; the plan says how they were settled. */
    public record Arranged(PlanRequest request, PlanResult result) {
        public Arranged {
            Objects.requireNonNull(request);
            Objects.requireNonNull(result);
        }
    }

    /** @param planner pure, for any number of threads */
    public Arranging(Plans planner) {
        this.planner = Objects.requireNonNull(planner);
    }

    /** The best way, looked for in a hurry while nothing fits, each open choice explained by a finding of the plan; the usual where nothing else is better. */
    public Arranged best(PlanRequest request, Set<Choice> open) {
        Way best = new Way(request, planner.apply(request));
        List<Finding> chosen = new ArrayList<>();
        for (Choice choice : Choice.values()) {
            if (!open.contains(choice)) continue;
            Way usual = best;
            Plans each = usual.plan().isPresent() ? planner : planner.hurried();
            List<Way> others = ways(usual.request(), choice).parallelStream()
                    .map(changed -> new Way(changed, each.apply(changed)))
                    .filter(way -> !sameAs(usual, way, choice))
                    .toList();
            best = Stream.concat(Stream.of(usual), others.stream())
                    .min(Comparator.comparingDouble(
                            way -> way.costMinutes() + (way.request().equals(usual.request()) ? 0 : WORTH_MINUTES)))
                    .orElseThrow();
            chosen(choice, best, usual, others).ifPresent(chosen::add);
        }
        return new Arranged(best.request(), told(best.result(), chosen));
    }

    private static PlanResult told(PlanResult result, List<Finding> chosen) {
        return result.match(
                planned -> {
                    List<Finding> findings = new ArrayList<>(planned.plan().findings());
                    findings.addAll(chosen);
                    return new PlanResult.Planned(planned.plan().withFindings(findings));
                },
                not -> not);
    }

    /** One way to arrange the piece. */
    private record Way(PlanRequest request, PlanResult result) {
        double costMinutes() {
            return plan().map(Plan::costMinutes).orElse(Double.POSITIVE_INFINITY);
        }

        Optional<Plan> plan() {
            return result.match(planned -> Optional.of(planned.plan()), not -> Optional.empty());
        }
    }

    /** The way taken held against the best of the rest that fits. */
    private static Optional<Finding> chosen(Choice choice, Way taken, Way usual, List<Way> others) {
        Optional<Way> next = Stream.concat(Stream.of(usual), others.stream())
                .filter(way -> !way.equals(taken) && way.plan().isPresent())
                .min(Comparator.comparingDouble(Way::costMinutes));
        if (taken.plan().isEmpty()) return Optional.empty();
        Plan plan = taken.plan().get();
        Finding.Chosen.Way won = new Finding.Chosen.Way(told(choice, plan), plan.costMinutes());
        Optional<Finding.Chosen.Lost> lost = next.flatMap(Way::plan)
                .map(other -> new Finding.Chosen.Lost(
                        new Finding.Chosen.Way(told(choice, other), other.costMinutes()),
                        plan.bill().against(other.bill()).stream()
                                .filter(one -> one.moreMinutes() > 0)
                                .limit(3)
                                .toList()));
        return Optional.of(new Finding.Chosen(about(choice), choice, won, lost));
    }

    /** Whether a way comes out as the usual one does: what is asked for is what is usual, or all the kit gives. */
    private static boolean sameAs(Way usual, Way way, Choice choice) {
        if (usual.plan().isEmpty() || way.plan().isEmpty()) return false;
        Setting one = told(choice, usual.plan().get());
        Setting other = told(choice, way.plan().get());
        return switch (choice) {
            case PLACE -> one.place().equals(other.place());
            case BED -> Math.abs(one.depthCm().orElseThrow() - other.depthCm().orElseThrow()) < SAME_BED_CM;
            case WATER -> one.setC().equals(other.setC());
        };
    }

    private static String about(Choice choice) {
        return choice == Choice.WATER ? "steep-1.soak" : "floor.spread";
    }

    /** The choice as the plan's own act tells it. */
    private static Setting told(Choice choice, Plan plan) {
        return plan.acts().stream()
                .filter(act -> act.id().equals(about(choice)))
                .findFirst()
                .orElseThrow()
                .setting();
    }

    private static List<PlanRequest> ways(PlanRequest request, Choice choice) {
        Arrangement like = request.arrangement();
        Set<Arrangement> ways = new LinkedHashSet<>();
        switch (choice) {
            case PLACE ->
                request.house().kit().trays().stream()
                        .map(Trays::place)
                        .forEach(place -> ways.add(like.growingIn(place)));
            case BED -> {
                for (double depthCm : BEDS_CM)
                    if (depthCm <= request.style().growth().deepestBedCm()) ways.add(like.withBedCm(depthCm));
            }
            case WATER -> {
                for (double byK : WATER_K) {
                    double fillC = request.house().steepWaterC() + byK;
                    boolean colder = byK < 0 && fillC >= CHILLED_AT_LEAST_C;
                    if (colder || byK > 0 && fillC <= WARMED_AT_MOST_C) ways.add(like.withFillC(fillC));
                }
            }
        }
        return ways.stream().map(request::arranged).toList();
    }
}
