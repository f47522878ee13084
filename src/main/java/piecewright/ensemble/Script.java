package piecewright.ensemble;

import java.time.Instant;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.IntStream;
import piecewright.plan.Act;
import piecewright.plan.ActKind;
import piecewright.plan.Blueprint;
import piecewright.plan.PlanRequest.When;
import piecewright.plan.Rules;
import piecewright.plan.Timetable.Visit;
import piecewright.process.Metabolism;
import piecewright.quantity.Moisture;
import piecewright.style.MaltStyle;

/** A plan as somebody follows it: its acts in minutes after the origin, with what it expects at each. */
final class Script {
    private static final Set<ActKind> OFF_THE_FLOOR = EnumSet.of(ActKind.PACK, ActKind.STEW, ActKind.LOAD);

    private final Blueprint blueprint;
    private final Rules rules;
    private final Moments moments;
    private final List<Line> lines;
    private final double ripeChitRatio;
    private final DrinkingPace pace;

    Script(Blueprint blueprint) {
        this.blueprint = blueprint;
        this.rules =
                new Rules(blueprint.setup().style(), blueprint.setup().lot().waterSensitiveFraction());
        this.moments = new Moments(blueprint.availability(), blueprint.origin());
        List<Visit> visits = blueprint.timetable().visits();
        List<Act> acts = blueprint.plan().acts();
        this.lines = IntStream.range(0, visits.size())
                .mapToObj(i -> Line.of(visits.get(i), acts.get(i), blueprint.origin()))
                .toList();
        this.ripeChitRatio = ripeChitRatio();
        this.pace = DrinkingPace.of(this);
    }

    /**
     * One act.
     *
     * @param dryKg dry matter the plan expects there, by which weights are read, kg
     * @param growthRatio acrospire the plan expects there
     */
    record Line(Visit visit, int minute, int workMinutes, Act act, double dryKg, double growthRatio) {
        static Line of(Visit visit, Act act, Instant origin) {
            Moisture moisture = act.expect().moisture();
            return new Line(
                    visit,
                    Moments.minute(origin, visit.at()),
                    (int) act.work().toMinutes(),
                    act,
                    act.expect().massKg() * (1 - moisture.wetBasisFraction()),
                    act.expect().acrospireFraction().orElse(0));
        }

        String id() {
            return visit.id();
        }
    }

    Blueprint blueprint() {
        return blueprint;
    }

    MaltStyle style() {
        return blueprint.setup().style();
    }

    Rules rules() {
        return rules;
    }

    Moments moments() {
        return moments;
    }

    List<Line> lines() {
        return lines;
    }

    List<Line> of(ActKind kind) {
        return lines.stream().filter(line -> line.visit().kind() == kind).toList();
    }

    /** The soaks and drains before the grain is heaped or cast. */
    List<Line> steep() {
        return lines.stream()
                .takeWhile(line ->
                        line.visit().kind() != ActKind.HEAP && line.visit().kind() != ActKind.FLOOR)
                .toList();
    }

    /** What a drained weight of the planned steep tells. */
    DrinkingPace pace() {
        return pace;
    }

    Line first(ActKind kind) {
        return of(kind).get(0);
    }

    /** The act that ends growth: wither, or what takes the piece off the floor where there is none. */
    Line endOfGrowth() {
        List<Line> withers = of(ActKind.WITHER);
        return withers.isEmpty() ? offTheFloor() : withers.get(0);
    }

    /** The act that takes the piece off the floor: into the couch, into the stew or on to the kiln. */
    Line offTheFloor() {
        return lines.stream()
                .filter(line -> OFF_THE_FLOOR.contains(line.visit().kind()))
                .findFirst()
                .orElseThrow();
    }

    /** Whether the plan has an act of that kind. */
    boolean has(ActKind kind) {
        return lines.stream().anyMatch(line -> line.visit().kind() == kind);
    }

    /** χ at which enough corns have chitted to cast. */
    double ripe() {
        return ripeChitRatio;
    }

    /** Minute from which the malt must rest to be ready in time; empty when only the start was wished. */
    Optional<Integer> readyBy() {
        if (!(blueprint.request().when() instanceof When.ReadyBy wish)) return Optional.empty();
        Instant day =
                wish.day().atStartOfDay(blueprint.request().house().zone()).toInstant();
        double restDays = style().finish().restDays();
        return Optional.of(Moments.minute(blueprint.origin(), day) - (int) Math.round(restDays * 24 * 60));
    }

    Instant instant(int minute) {
        return blueprint.origin().plusSeconds(60L * minute);
    }

    private double ripeChitRatio() {
        Metabolism metabolism = blueprint.setup().models().metabolism();
        double low = 0.1;
        double high = 5;
        for (int i = 0; i < 50; i++) {
            double middle = (low + high) / 2;
            if (rules.ripe(metabolism.chittedFraction(middle))) high = middle;
            else low = middle;
        }
        return high;
    }
}
