package piecewright.plan;

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
                    standing = new Standing(read.reading().at(), read.held(), read.slowFraction());
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
        PieceState state = standing.state();
        double slow = standing.slowFraction();
        Instant since = standing.at();
        for (Read read : course.reads()) {
            if (read.reading().at().isAfter(since)) state = shifted(state, read);
        }
        return new Standing(standing.at(), state, slow);
    }

    private static PieceState shifted(PieceState state, Read read) {
        PieceState forecast = read.forecast();
        PieceState held = read.held();
        GrainMass mass = state.mass();
        double waterKg = Math.max(
                0, mass.waterKg() + held.mass().waterKg() - forecast.mass().waterKg());
        SteepState steep = state.steep();
        double core =
                steep.coreRatio() + held.steep().coreRatio() - forecast.steep().coreRatio();
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
