package piecewright.plan;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import piecewright.plan.Plan.Outcome;
import piecewright.plan.Plan.Subject;
import piecewright.plan.Simulation.Course;
import piecewright.plan.Simulation.Station;
import piecewright.plan.search.Search;
import piecewright.plan.search.Stops;
import piecewright.process.PieceState;
import piecewright.quantity.Moisture;

/** Describes a simulated timetable as a plan. */
final class PlanWriter {
    private static final int MINUTES_PER_DAY = 24 * 60;

    private final PlanRequest request;
    private final Setup setup;
    private final Stops stops;
    private final Cautions cautions;

    PlanWriter(PlanRequest request, Setup setup) {
        this.request = request;
        this.setup = setup;
        this.stops = Stops.of(
                setup.style(),
                setup.outfit().drying().hottestDryC(),
                setup.outfit().drying().cureC());
        this.cautions = new Cautions(request.lot().kind(), request.lot().treatment());
    }

    Plan write(Course course, double rawGrainKg, double costMinutes) {
        List<Act> acts = acts(course);
        Instant off = course.first(ActKind.OFF).visit().at();
        Instant readyAt =
                off.plus(Duration.ofMinutes(Math.round(setup.style().finish().restDays() * MINUTES_PER_DAY)));
        Subject subject = new Subject(
                setup.style().key(),
                setup.style().title(),
                request.lot().name(),
                request.house().zone(),
                readyAt);
        List<Phase> phases = phases(course, readyAt);
        List<Finding> findings = new Findings(request, setup).of(course, acts);
        return new Plan(subject, outcome(course, rawGrainKg), acts, phases, findings, course.samples(), costMinutes);
    }

    private Outcome outcome(Course course, double rawGrainKg) {
        PieceState finished = course.finished();
        double scaleKg = finished.mass().totalKg();
        return new Outcome(
                rawGrainKg,
                Yield.usefulMaltKg(finished, setup.lot().energyFraction()),
                scaleKg,
                course.first(ActKind.OFF).before().mass().moisture(),
                finished,
                finished.ledgers());
    }

    private List<Act> acts(Course course) {
        List<Act> acts = new ArrayList<>();
        Windows windows = new Windows(setup, course.stations());
        for (int i = 0; i < course.stations().size(); i++) {
            Station station = course.stations().get(i);
            boolean sprinkles = station.waterKg() > 0;
            ActKind kind = sprinkles ? ActKind.SPRINKLE : station.visit().kind();
            Setting setting = setting(station);
            acts.add(new Act(
                    station.visit().id(),
                    kind,
                    station.visit().at(),
                    work(station),
                    windows.of(i),
                    setting,
                    expectation(station),
                    cautions.at(
                            kind,
                            station.visit().number(),
                            station.before().mass().totalKg(),
                            setting.setC().orElse(0))));
        }
        return acts;
    }

    private Duration work(Station station) {
        for (int stop = 0; stop <= stops.deroot(); stop++) {
            if (stops.id(stop).equals(station.visit().id())) return Duration.ofMinutes(stops.workMinutes(stop));
        }
        boolean checks = station.visit().kind() == ActKind.CHECK;
        return Duration.ofMinutes(checks ? Search.CHECK_MINUTES : Search.TURN_MINUTES);
    }

    private Expectation expectation(Station station) {
        PieceState state = station.visit().kind() == ActKind.DEROOT ? station.after() : station.before();
        double growth = state.growth().growthRatio();
        return new Expectation(
                state.mass().totalKg(),
                state.mass().moisture(),
                state.grainC(),
                growth > 0 ? OptionalDouble.of(growth) : OptionalDouble.empty());
    }

    private Setting setting(Station station) {
        var outfit = setup.outfit();
        int number = station.visit().number();
        String dryer = outfit.drying().dryer().name();
        String curer = outfit.drying().curer().name();
        return switch (station.visit().kind()) {
            case SOAK ->
                Setting.at(outfit.soaking().place())
                        .withSetC(setup.fillC())
                        .withWaterL(outfit.soaking().waterL(number));
            case DRAIN -> Setting.at(outfit.soaking().place());
            case FLOOR ->
                Setting.at(outfit.growing().place())
                        .withDepthCm(outfit.growing().depthCm());
            case WITHER ->
                Setting.at(outfit.withering().place())
                        .withDepthCm(outfit.withering().depthCm());
            case PACK, CHECK -> {
                Couching couching = setup.couching().orElseThrow();
                yield Setting.at(couching.box().name())
                        .withLimitC(couching.schedule().spreadAboveC());
            }
            case BREAK -> Setting.at(outfit.withering().place());
            case TURN, SPRINKLE -> {
                Setting setting = Setting.at(
                        station.during() == PhaseKind.WITHERING
                                ? outfit.withering().place()
                                : outfit.growing().place());
                yield station.waterKg() > 0 ? setting.withWaterL(station.waterKg()) : setting;
            }
            case LOAD -> Setting.at(dryer).withSetC(setup.dryingC(0));
            case STIR -> Setting.at(dryer);
            case RAISE ->
                Setting.at(dryer)
                        .withSetC(setup.dryingC(number))
                        .withGateFraction(
                                setup.style().kiln().ladder().get(number).belowMoistureFraction());
            case CURE -> Setting.at(curer).withSetC(outfit.drying().cureC()).withGateFraction(setup.cureGateFraction());
            case OFF -> Setting.at(curer);
            case DEROOT -> Setting.at(outfit.growing().place());
        };
    }

    private List<Phase> phases(Course course, Instant readyAt) {
        List<Phase> phases = new ArrayList<>();
        List<Station> stations = course.stations();
        Station from = stations.get(0);
        for (Station station : stations.subList(1, stations.size())) {
            ActKind kind = station.visit().kind();
            if (kind == ActKind.TURN || kind == ActKind.STIR || kind == ActKind.CHECK) continue;
            if (from.visit().at().isBefore(station.visit().at())) {
                phases.add(phase(
                        from, station.visit().at(), station.before().mass().moisture()));
            }
            from = station;
        }
        Moisture last = from.after().mass().moisture();
        Instant since = from.visit().at();
        if (since.isBefore(readyAt)) phases.add(phase(from, readyAt, last));
        return phases;
    }

    private Phase phase(Station from, Instant until, Moisture moistureUntil) {
        PhaseKind kind = switch (from.visit().kind()) {
            case SOAK -> PhaseKind.IMMERSION;
            case DRAIN -> PhaseKind.AIR_REST;
            case FLOOR -> PhaseKind.GROWTH;
            case WITHER -> PhaseKind.WITHERING;
            case PACK -> PhaseKind.COUCHING;
            case BREAK -> PhaseKind.COOLING;
            case LOAD, RAISE -> PhaseKind.DRYING;
            case CURE -> PhaseKind.CURING;
            default -> PhaseKind.RESTING;
        };
        return new Phase(
                from.visit().id() + "-" + kind.key(),
                kind,
                from.visit().at(),
                until,
                setting(from).place().orElse(""),
                from.after().mass().moisture(),
                moistureUntil);
    }
}
