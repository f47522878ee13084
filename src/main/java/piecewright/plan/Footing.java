package piecewright.plan;

import java.time.Duration;
import java.time.Instant;
import java.util.List;
import piecewright.plan.Simulation.Course;
import piecewright.plan.Simulation.Read;
import piecewright.plan.Simulation.Station;
import piecewright.plan.Timetable.Visit;
import piecewright.plan.search.UnderWay;
import piecewright.plan.search.UnderWay.Standing;
import piecewright.process.GrainMass;
import piecewright.process.PieceState;
import piecewright.process.SteepState;

/**
 * Where a search takes up a piece: at the last act that began a phase whose length counts (immersion, rest, wither,
 * cure), what was read since put back to it; on the floor and in the kiln, which know no length, at the last turning,
 * stirring or weighing, in a hot couch at the last thermometer reading. Judgement: who weighs the whole piece has turned
 * it.
 */
final class Footing {
    /** Judgement: nothing grows or dries in so short a time that anybody could tell. */
    private static final Duration WEIGHED_BEFORE = Duration.ofMinutes(5);

    /** Judgement: drained grain is weighed within the hour. */
    private static final Duration DRIPS = Duration.ofHours(1);

    private Footing() {}

    /** @param course of the acts done or certain, and what was read */
    static UnderWay of(Setup setup, Course course) {
        List<Visit> visits = course.stations().stream().map(Station::visit).toList();
        Visit began = UnderWay.began(visits);
        boolean lengthCounts = switch (began.kind()) {
            case FLOOR, LOAD, RAISE, LOWER -> false;
            default -> true;
        };
        Standing standing = standing(lengthCounts ? station(course, began) : last(course));
        if (!lengthCounts) {
            for (Read read : course.reads()) {
                if (read.reading().settles() && read.reading().at().isAfter(standing.at())) {
                    Instant at = read.reading().at();
                    Instant from = began.kind() == ActKind.FLOOR ? justBefore(at, standing.at()) : at;
                    standing = new Standing(from, read.held(), read.slowFraction());
                }
            }
        }
        if (began.kind() == ActKind.PACK) standing = lastRead(standing, course);
        boolean cured = visits.stream().anyMatch(visit -> visit.kind() == ActKind.CURE);
        int rung = began.kind() == ActKind.LOWER
                ? HeatLeft.hottestRung(setup, HeatLeft.heater(setup, cured)).orElse(0)
                : 0;
        return new UnderWay(visits, withReads(standing, course), rung);
    }

    /** Whoever weighs at an act weighs before it: the act may come at once. */
    private static Instant justBefore(Instant read, Instant since) {
        Instant before = read.minus(WEIGHED_BEFORE);
        return before.isAfter(since) ? before : since;
    }

    /** A couch is followed from its last thermometer reading on. */
    private static Standing lastRead(Standing packed, Course course) {
        return course.reads().stream()
                .filter(read -> read.reading().grainC().isPresent()
                        && read.reading().at().isAfter(packed.at()))
                .reduce((first, second) -> second)
                .map(read -> new Standing(read.reading().at(), read.held(), read.slowFraction()))
                .orElse(packed);
    }

    private static Station station(Course course, Visit visit) {
        return course.stations().stream()
                .filter(station -> station.visit().equals(visit))
                .findFirst()
                .orElseThrow();
    }

    private static Station last(Course course) {
        return course.stations().get(course.stations().size() - 1);
    }

    private static Standing standing(Station station) {
        return new Standing(station.visit().at(), station.after(), station.slowFraction());
    }

    /** What was read later, as if it had been so from the start of the phase on. */
    private static Standing withReads(Standing standing, Course course) {
        boolean drained = drainedAndWeighed(standing.at(), course);
        PieceState state = standing.state();
        double slow = standing.slowFraction();
        Instant since = standing.at();
        for (Read read : course.reads()) {
            if (read.reading().at().isAfter(since)) state = shifted(state, read, drained);
        }
        return new Standing(standing.at(), state, slow);
    }

    /** Whether the steep-out is known: weighed as it was drained. What a rest takes off later is its film. */
    private static boolean drainedAndWeighed(Instant drainedAt, Course course) {
        boolean drained = course.stations().stream()
                .anyMatch(station -> station.visit().kind() == ActKind.DRAIN
                        && station.visit().at().equals(drainedAt));
        Instant soon = drainedAt.plus(DRIPS);
        return drained
                && course.reads().stream()
                        .anyMatch(read -> read.reading().weighs()
                                && !read.reading().at().isBefore(drainedAt)
                                && !read.reading().at().isAfter(soon));
    }

    /** @param drained whether water found later says nothing of what was there as it was drained */
    private static PieceState shifted(PieceState state, Read read, boolean drained) {
        PieceState forecast = read.forecast();
        PieceState held = read.held();
        GrainMass mass = state.mass();
        double moreKg = drained ? 0 : held.mass().waterKg() - forecast.mass().waterKg();
        double waterKg = Math.max(0, mass.waterKg() + moreKg);
        SteepState steep = state.steep();
        double moreRatio =
                drained ? 0 : held.steep().coreRatio() - forecast.steep().coreRatio();
        double core = steep.coreRatio() + moreRatio;
        double chit =
                steep.chitRatio() + held.steep().chitRatio() - forecast.steep().chitRatio();
        double growth = Math.max(
                0,
                state.growth().growthRatio()
                        + held.growth().growthRatio()
                        - forecast.growth().growthRatio());
        return state.withMass(new GrainMass(mass.initialDryMatterKg(), mass.dryMatterKg(), waterKg))
                .withSteep(new SteepState(core, steep.outerRatio(), steep.soakHours(), steep.waterChanges(), chit))
                .withGrowth(state.growth().withGrowthRatio(growth));
    }
}
