package piecewright.plan;

import java.time.Instant;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Stream;
import piecewright.plan.Plan.Sample;
import piecewright.plan.Simulation.Course;

/** What no timetable makes good: air in which the wet grain would freeze or its bed spoil. */
final class GrainHarm {
    /** Judgement: the juice of a swollen kernel freezes a degree below water, and ice kills the germ. */
    static final double FREEZES_C = -1;

    /** Judgement: no growing bed is less than this over the mean of its air. */
    private static final double LEAST_RISE_K = 0.1;

    /** Acts that take the grain up from its bed. */
    private static final Set<ActKind> LIFTS = EnumSet.of(ActKind.PACK, ActKind.STEW, ActKind.LOAD);

    private GrainHarm() {}

    /** The harm of a forecast; empty for none. */
    static Optional<Obstacle> of(Setup setup, Course course) {
        Optional<Obstacle> frost = frost(setup, course);
        return frost.isPresent() ? frost : heat(setup, course);
    }

    /**
     * The harm that no day and no hours escape, known before anything is searched; empty where a search must tell. No
     * bed is cooler over a day than its air.
     */
    static Optional<Obstacle> certain(Setup setup, Rooms rooms) {
        Outfit outfit = setup.outfit();
        for (String place : List.of(outfit.soaking().place(), outfit.growing().place())) {
            double warmestC = rooms.warmestC(place);
            if (warmestC < FREEZES_C) return Optional.of(new Obstacle.WouldFreeze(place, warmestC, rooms.origin()));
        }
        double warmestC = setup.style().growth().warmestGrainC();
        String grows = outfit.growing().place();
        double coldestC = rooms.coldestDayC(grows);
        return coldestC > warmestC + Rules.BED_SPOILS_OVER_K - LEAST_RISE_K
                ? Optional.of(new Obstacle.BedTooWarm(grows, coldestC, warmestC, rooms.origin()))
                : Optional.empty();
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
        return meanC >= warmestC + Rules.BED_SPOILS_OVER_K
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

    /** A bed on the floor or withering, at any time and as any act finds it. */
    private static Optional<Obstacle> heat(Setup setup, Course course) {
        double warmestC = setup.style().growth().warmestGrainC();
        List<Sample> tooWarm = onTheFloor(course)
                .filter(sample -> sample.state().grainC() > warmestC + Rules.BED_SPOILS_OVER_K)
                .toList();
        return tooWarm.isEmpty()
                ? Optional.empty()
                : Optional.of(new Obstacle.BedTooWarm(
                        setup.outfit().growing().place(),
                        tooWarm.stream()
                                .mapToDouble(sample -> sample.state().grainC())
                                .max()
                                .orElseThrow(),
                        warmestC,
                        tooWarm.get(0).at()));
    }

    /** The grain from when it is spread until it is packed, stewed or loaded, in time order. */
    private static Stream<Sample> onTheFloor(Course course) {
        Instant spread = course.first(ActKind.FLOOR).visit().at();
        Instant lifted = course.stations().stream()
                .filter(station -> LIFTS.contains(station.visit().kind()))
                .findFirst()
                .orElseThrow()
                .visit()
                .at();
        Stream<Sample> found = course.stations().stream()
                .map(station -> new Sample(station.visit().at(), station.before()))
                .filter(sample -> sample.at().isAfter(spread));
        return Stream.concat(
                        course.samples().stream().filter(sample -> !sample.at().isBefore(spread)), found)
                .filter(sample -> !sample.at().isAfter(lifted))
                .sorted(Comparator.comparing(Sample::at));
    }

    private static Optional<Sample> first(Course course, Predicate<Sample> which) {
        return course.samples().stream().filter(which).findFirst();
    }
}
