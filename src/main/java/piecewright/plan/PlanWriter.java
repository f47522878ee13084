package piecewright.plan;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import piecewright.house.Heater;
import piecewright.plan.Plan.Outcome;
import piecewright.plan.Plan.Subject;
import piecewright.plan.Simulation.Course;
import piecewright.plan.Simulation.Station;
import piecewright.plan.Timetable.Visit;
import piecewright.plan.search.Stops;
import piecewright.plan.search.UnderWay;
import piecewright.process.PieceState;
import piecewright.quantity.Moisture;

/** Describes a simulated timetable as a plan. */
final class PlanWriter {
    private static final int MINUTES_PER_DAY = 24 * 60;

    private final PlanRequest request;
    private final Setup setup;
    private final Stops stops;
    private final Cautions cautions;
    private final Optional<StewBlock> stew;
    private final Optional<RoastBlock> roast;

    PlanWriter(PlanRequest request, Setup setup) {
        this.request = request;
        this.setup = setup;
        this.stops = Stops.of(setup);
        this.stew = StewBlock.of(setup);
        this.roast = RoastBlock.of(setup);
        this.cautions = new Cautions(request.lot());
    }

    Plan write(Course course, double rawGrainKg, Bill bill) {
        List<Act> acts = acts(course);
        Instant rested = restsFrom(course)
                .plus(Duration.ofMinutes(Math.round(setup.style().finish().restDays() * MINUTES_PER_DAY)));
        Instant last = acts.get(acts.size() - 1).startsAt();
        Instant readyAt = last.isAfter(rested) ? last : rested;
        Subject subject = new Subject(
                setup.style().key(),
                setup.style().title(),
                request.lot().name(),
                request.house().zone(),
                readyAt);
        List<Phase> phases = phases(course, readyAt);
        List<Finding> findings = new Findings(request, setup).of(course, acts);
        return new Plan(subject, outcome(course, rawGrainKg), acts, phases, findings, course.samples(), bill);
    }

    /** When the rest begins: off the kiln, or when the last roast is over. */
    private Instant restsFrom(Course course) {
        Visit last = course.stations().get(course.stations().size() - 1).visit();
        return last.kind() == ActKind.ROAST
                ? last.at().plus(Duration.ofMinutes(roast.orElseThrow().minutes()))
                : course.first(ActKind.OFF).visit().at();
    }

    private Outcome outcome(Course course, double rawGrainKg) {
        PieceState finished = course.finished();
        double scaleKg = finished.mass().totalKg();
        return new Outcome(
                rawGrainKg,
                Yield.usefulMaltKg(finished, setup.lot().energyFraction()),
                scaleKg,
                endMoisture(course),
                finished,
                finished.ledgers());
    }

    private static Moisture endMoisture(Course course) {
        Station last = course.stations().get(course.stations().size() - 1);
        PieceState dry = last.visit().kind() == ActKind.ROAST
                ? last.after()
                : course.first(ActKind.OFF).before();
        return dry.mass().moisture();
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
                    expectation(station, i == course.stations().size() - 1),
                    cautions.at(
                            kind,
                            station.visit().number(),
                            liftedKg(course, i),
                            setting.setC().orElse(0)),
                    inner(station, course)));
        }
        return acts;
    }

    /** The piece, or before draining one vessel of it with its water. */
    private double liftedKg(Course course, int index) {
        Station station = course.stations().get(index);
        double massKg = station.before().mass().totalKg();
        if (station.visit().kind() != ActKind.DRAIN) return massKg;
        var soaking = setup.outfit().soaking();
        double soakedKg = course.stations().get(index - 1).before().mass().totalKg();
        return (soakedKg + soaking.waterL(station.visit().number())) / soaking.vessels();
    }

    /** Every load of a roast goes through the same minutes, so each is told from the piece before the first. */
    private Optional<InnerSchedule> inner(Station station, Course course) {
        return switch (station.visit().kind()) {
            case STEW -> stew.map(block -> block.inner(station.before()));
            case ROAST ->
                roast.map(block -> block.inner(course.first(ActKind.ROAST).before()));
            default -> Optional.empty();
        };
    }

    private Duration work(Station station) {
        return Duration.ofMinutes(stops.minutes(station.visit()));
    }

    /** What is found as the act begins; for the last act, what is left when it is over. */
    private static Expectation expectation(Station station, boolean last) {
        PieceState state = last ? station.after() : station.before();
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
            case HEAP ->
                heaped().withDepthCm(setup.heaping()
                        .orElseThrow()
                        .depthCm(station.before().mass(), setup));
            case LOOK -> heaped();
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
            case STEW ->
                Setting.at(stew.orElseThrow().oven().name())
                        .withDepthCm(stew.orElseThrow().depthCm());
            case ROAST ->
                Setting.at(roast.orElseThrow().oven().name())
                        .withDepthCm(setup.style().oven().roast().orElseThrow().depthCm());
            case LOAD -> Setting.at(dryer).withSetC(setup.dryingC(0));
            case STIR -> Setting.at(dryer);
            case RAISE ->
                Setting.at(dryer)
                        .withSetC(setup.dryingC(number))
                        .withGateFraction(
                                setup.style().kiln().ladder().get(number).belowMoistureFraction());
            case LOWER -> lowered(station.during() == PhaseKind.CURING);
            case CURE -> Setting.at(curer).withSetC(outfit.drying().cureC()).withGateFraction(setup.cureGateFraction());
            case OFF -> Setting.at(curer);
            case DEROOT -> Setting.at(outfit.growing().place());
        };
    }

    /** Turned down to what may be left on, or, with no temperature to set, off. */
    private Setting lowered(boolean cured) {
        Heater heater = HeatLeft.heater(setup, cured);
        Setting setting = Setting.at(heater.name());
        OptionalInt rung = HeatLeft.hottestRung(setup, heater);
        return rung.isPresent() ? setting.withSetC(setup.dryingC(rung.getAsInt())) : setting;
    }

    private Setting heaped() {
        Heaping heaping = setup.heaping().orElseThrow();
        return Setting.at(heaping.where()).withLimitC(heaping.schedule().warmestCoreC());
    }

    private List<Phase> phases(Course course, Instant readyAt) {
        List<Phase> phases = new ArrayList<>();
        List<Station> stations = course.stations();
        Station from = stations.get(0);
        for (Station station : stations.subList(1, stations.size())) {
            ActKind kind = station.visit().kind();
            if (!UnderWay.bounds(kind)) continue;
            if (from.visit().kind() == ActKind.STEW) from = station;
            if (since(from).isBefore(station.visit().at())) {
                phases.add(phase(
                        from, station.visit().at(), station.before().mass().moisture()));
            }
            from = station;
        }
        Moisture last = from.after().mass().moisture();
        if (since(from).isBefore(readyAt)) phases.add(phase(from, readyAt, last));
        return phases;
    }

    private boolean isLastLoad(Station roasted) {
        return roasted.visit().number() == roast.orElseThrow().loads();
    }

    /** When the phase after an act begins: with the act, but after an attended block. */
    private Instant since(Station from) {
        boolean roasts = from.visit().kind() == ActKind.ROAST;
        return from.visit().at().plus(roasts ? work(from) : Duration.ZERO);
    }

    private Phase phase(Station from, Instant until, Moisture moistureUntil) {
        PhaseKind kind = switch (from.visit().kind()) {
            case SOAK -> PhaseKind.IMMERSION;
            case DRAIN -> PhaseKind.AIR_REST;
            case HEAP -> PhaseKind.WET_COUCHING;
            case FLOOR -> PhaseKind.GROWTH;
            case WITHER -> PhaseKind.WITHERING;
            case PACK -> PhaseKind.COUCHING;
            case BREAK -> PhaseKind.COOLING;
            case LOAD, RAISE, LOWER -> PhaseKind.DRYING;
            case CURE -> PhaseKind.CURING;
            case DEROOT -> roast.isPresent() ? PhaseKind.STORED : PhaseKind.RESTING;
            case ROAST -> isLastLoad(from) ? PhaseKind.RESTING : PhaseKind.STORED;
            default -> PhaseKind.RESTING;
        };
        return new Phase(
                from.visit().id() + "-" + kind.key(),
                kind,
                since(from),
                until,
                setting(from).place().orElse(""),
                from.after().mass().moisture(),
                moistureUntil,
                attended(kind, from));
    }

    private boolean attended(PhaseKind kind, Station from) {
        if (from.visit().kind() == ActKind.LOWER) return false;
        var drying = setup.outfit().drying();
        return switch (kind) {
            case DRYING ->
                Rules.needsSomebody(
                        drying.dryer().control(), setup.dryingC(from.visit().number()));
            case CURING -> Rules.needsSomebody(drying.curer().control(), drying.cureC());
            default -> false;
        };
    }
}
