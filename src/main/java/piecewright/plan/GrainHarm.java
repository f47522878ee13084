package piecewright.plan;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import piecewright.plan.Plan.Sample;
import piecewright.plan.Simulation.Course;

/** What no timetable makes good: air in which the wet grain would freeze or its bed spoil. */
final class GrainHarm {
    /** Judgement: a bed this much over the style's warmest spoils: mould, uneven growth, matted roots. */
    static final double MOST_OVER_K = 4;
    /** Judgement: the juice of a swollen kernel freezes a degree below water, and ice kills the germ. */
    static final double FREEZES_C = -1;

    /** Judgement: what a forecast may be over it besides, K: weather and lot differ by that much. */
    private static final double MOST_FORECAST_OVER_K = MOST_OVER_K + 2;
    /** Judgement: a peak before a turning is a warning; three hours of it, by the half hour, spoil the bed. */
    private static final int LASTING_SAMPLES = 6;

    private GrainHarm() {}

    /** The harm of a forecast; empty for none. */
    static Optional<Obstacle> of(Setup setup, Course course) {
        Optional<Obstacle> frost = frost(setup, course);
        return frost.isPresent() ? frost : heat(setup, course);
    }

    /** The harm that the air alone does, whatever the hours; empty where the hours may be at fault. */
    static Optional<Obstacle> ofAir(Setup setup, Rooms rooms) {
        Outfit outfit = setup.outfit();
        for (String place : List.of(outfit.soaking().place(), outfit.growing().place())) {
            double meanC = rooms.meanC(place);
            if (meanC < FREEZES_C) return Optional.of(new Obstacle.WouldFreeze(place, meanC, rooms.origin()));
        }
        double warmestC = setup.style().growth().warmestGrainC();
        String grows = outfit.growing().place();
        double meanC = rooms.meanC(grows);
        return meanC > warmestC + MOST_OVER_K
                ? Optional.of(new Obstacle.BedTooWarm(grows, meanC, warmestC, rooms.origin()))
                : Optional.empty();
    }

    private static Optional<Obstacle> frost(Setup setup, Course course) {
        Instant wet = course.first(ActKind.DRAIN).visit().at();
        Instant spread = course.first(ActKind.FLOOR).visit().at();
        Instant dried = course.first(ActKind.LOAD).visit().at();
        return first(
                        course,
                        sample -> !sample.at().isBefore(wet)
                                && sample.at().isBefore(dried)
                                && sample.state().grainC() < FREEZES_C)
                .map(sample -> new Obstacle.WouldFreeze(
                        sample.at().isBefore(spread)
                                ? setup.outfit().soaking().place()
                                : setup.outfit().growing().place(),
                        sample.state().grainC(),
                        sample.at()));
    }

    private static Optional<Obstacle> heat(Setup setup, Course course) {
        double warmestC = setup.style().growth().warmestGrainC();
        Instant spread = course.first(ActKind.FLOOR).visit().at();
        Instant grown = course.stations().stream()
                .filter(station ->
                        Simulation.GROWTH_ENDS.contains(station.visit().kind()))
                .findFirst()
                .orElseThrow()
                .visit()
                .at();
        Predicate<Sample> onTheFloor =
                sample -> !sample.at().isBefore(spread) && sample.at().isBefore(grown);
        List<Sample> tooWarm = course.samples().stream()
                .filter(onTheFloor.and(sample -> sample.state().grainC() > warmestC + MOST_FORECAST_OVER_K))
                .toList();
        if (tooWarm.size() < LASTING_SAMPLES) return Optional.empty();
        double expectedC = tooWarm.stream()
                .mapToDouble(sample -> sample.state().grainC())
                .max()
                .orElse(0);
        return Optional.of(new Obstacle.BedTooWarm(
                setup.outfit().growing().place(),
                expectedC,
                warmestC,
                tooWarm.get(0).at()));
    }

    private static Optional<Sample> first(Course course, Predicate<Sample> which) {
        return course.samples().stream().filter(which).findFirst();
    }
}
