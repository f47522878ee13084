package piecewright.ensemble;

import java.time.Instant;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import piecewright.ensemble.Breach.Severity;
import piecewright.ensemble.Script.Line;
import piecewright.plan.Blueprint;

/** Follows one plan through many realities, on all cores; the same plan and belief give the same bands. */
public final class Ensemble {
    private final Blueprint blueprint;
    private final Script script;
    private final Weather weather;

    private Ensemble(Blueprint blueprint, Instant asOf) {
        this.blueprint = blueprint;
        this.script = new Script(blueprint);
        this.weather = new Weather(blueprint, asOf);
    }

    /**
     * An ensemble of one plan.
     *
     * @param asOf when the weather was told; its errors grow from then on
     */
    public static Ensemble of(Blueprint blueprint, Instant asOf) {
        return new Ensemble(blueprint, asOf);
    }

    /** How sure the plan is, from so many members; help is not looked for. */
    public Sureness sureness(Belief belief, int members) {
        return sureness(Members.drawn(belief, members));
    }

    Sureness sureness(List<Member> members) {
        List<Happening> happenings =
                members.parallelStream().map(this::happening).toList();
        return new Sureness(
                members.size(),
                acts(happenings.stream().map(Happening::met).toList()),
                milestones(happenings),
                figures(happenings),
                verdict(happenings),
                Optional.empty());
    }

    /** How the plan goes for one member. */
    Happening happening(Member member) {
        return new Rehearsal(script).in(ModelReality.of(blueprint, member, weather), member.luck());
    }

    /** How the plan goes in a reality of other equations, with the luck of that member. */
    Happening happening(Reality reality, Member member) {
        return new Rehearsal(script).in(reality, member.luck());
    }

    private List<ActBands> acts(List<Map<String, Met>> members) {
        return script.lines().parallelStream()
                .flatMap(line -> bands(line, members).stream())
                .toList();
    }

    private Optional<ActBands> bands(Line line, List<Map<String, Met>> members) {
        List<Met> met = members.stream()
                .flatMap(each -> Optional.ofNullable(each.get(line.id())).stream())
                .toList();
        return met.isEmpty() ? Optional.empty() : Optional.of(bands(line, met, (double) met.size() / members.size()));
    }

    private ActBands bands(Line line, List<Met> met, double happensFraction) {
        boolean grows = line.act().expect().acrospireFraction().isPresent();
        return new ActBands(
                line.id(),
                happensFraction,
                TimeBand.of(blueprint.origin(), band(met, Met::minute)),
                band(met, Met::weighedKg),
                band(met, each -> each.found().mass().moisture().wetBasisFraction()),
                band(met, each -> each.found().grainC()),
                grows ? Optional.of(band(met, each -> each.found().growth().growthRatio())) : Optional.empty());
    }

    private static <T> Band band(List<T> all, ToDoubleFunction<T> figure) {
        return Band.of(all.stream().mapToDouble(figure).toArray());
    }

    private Map<Milestone, TimeBand> milestones(List<Happening> happenings) {
        Map<Milestone, TimeBand> bands = new EnumMap<>(Milestone.class);
        for (Milestone milestone : Milestone.values()) {
            double[] minutes = happenings.stream()
                    .flatMap(each -> Optional.ofNullable(each.milestoneMinutes().get(milestone)).stream())
                    .mapToDouble(Double::doubleValue)
                    .toArray();
            if (minutes.length > 0) bands.put(milestone, TimeBand.of(blueprint.origin(), Band.of(minutes)));
        }
        return bands;
    }

    private static Map<Figure, Band> figures(List<Happening> happenings) {
        Map<Figure, Band> bands = new EnumMap<>(Figure.class);
        for (Figure figure : Figure.values()) {
            double[] found = happenings.stream()
                    .flatMap(each -> Optional.ofNullable(each.figures().get(figure)).stream())
                    .mapToDouble(Double::doubleValue)
                    .toArray();
            if (found.length > 0) bands.put(figure, Band.of(found));
        }
        return bands;
    }

    private Verdict verdict(List<Happening> happenings) {
        double size = happenings.size();
        long soft =
                happenings.stream().filter(each -> each.breaches().isEmpty()).count();
        long hard = happenings.stream()
                .filter(each -> each.breaches().stream().noneMatch(one -> one.severity() == Severity.HARD))
                .count();
        Map<String, Integer> byAct = new HashMap<>();
        for (Happening happening : happenings) {
            happening.breaches().stream().map(Breach::actId).distinct().forEach(id -> byAct.merge(id, 1, Integer::sum));
        }
        Optional<Verdict.Weakest> weakest = script.lines().stream()
                .map(Line::id)
                .filter(byAct::containsKey)
                .reduce((first, second) -> times(byAct, second) > times(byAct, first) ? second : first)
                .map(id -> new Verdict.Weakest(id, usual(happenings, id), times(byAct, id) / size));
        return new Verdict(soft / size, hard / size, weakest);
    }

    private static int times(Map<String, Integer> byAct, String id) {
        return byAct.getOrDefault(id, 0);
    }

    private static Fault usual(List<Happening> happenings, String actId) {
        Map<Fault, Integer> counts = new EnumMap<>(Fault.class);
        for (Happening happening : happenings) {
            happening.breaches().stream()
                    .filter(breach -> breach.actId().equals(actId))
                    .map(Breach::fault)
                    .distinct()
                    .forEach(fault -> counts.merge(fault, 1, Integer::sum));
        }
        return counts.entrySet().stream()
                .max(Map.Entry.comparingByValue())
                .map(Map.Entry::getKey)
                .orElse(Fault.LATE);
    }
}
