package piecewright.plan;

import piecewright.plan.Simulation.Course;
import piecewright.plan.Simulation.Station;
import piecewright.quantity.FractionRange;
import piecewright.style.HotCouchSchedule;

/** Whether a simulated timetable keeps every guard: what the quick forms promised, the reference stages confirm. */
final class Verification {
    /** Judgement: the quick forms may differ from the reference by this much at a gate, wet basis. */
    private static final double GATE_SLACK_FRACTION = 0.003;
    /** Judgement: and by this much in growth or steep-out moisture. */
    private static final double STATE_SLACK_FRACTION = 0.01;

    /** Judgement: and by this share of the style's couch index. */
    private static final double INDEX_SLACK_FRACTION = 0.1;

    private Verification() {}

    static boolean holds(Setup setup, Course course) {
        return holds(setup, course, 0);
    }

    /** The same where the first so many acts are done: what happened keeps no guard any more. */
    static boolean holds(Setup setup, Course course, int done) {
        boolean holds = within(
                setup.style().growth().acceptable(),
                course.first(ActKind.LOAD).before().growth().growthRatio());
        double out = 0;
        for (Station station : course.stations()) {
            if (station.visit().kind() == ActKind.DRAIN) {
                out = station.before().mass().moisture().wetBasisFraction();
            }
        }
        for (Station station : course.stations().subList(done, course.stations().size())) {
            holds &= gateIsOpen(setup, station);
        }
        if (setup.couching().isPresent() && course.has(ActKind.PACK) && course.has(ActKind.BREAK))
            holds &= couchIsInStyle(setup.couching().get().schedule(), course);
        holds &= wetCouchStaysCool(setup, course);
        return holds && within(setup.style().steep().acceptable(), out);
    }

    /** Judgement: the quick form of a wet couch may differ from the reference by this much. */
    private static final double HEAP_SLACK_K = 0.3;

    private static boolean wetCouchStaysCool(Setup setup, Course course) {
        double hottestC = course.hottestC(ActKind.HEAP, ActKind.FLOOR);
        return setup.heaping().isEmpty() || hottestC <= setup.heaping().get().warmestMeanC() + HEAP_SLACK_K;
    }

    private static boolean couchIsInStyle(HotCouchSchedule schedule, Course course) {
        Station packed = course.first(ActKind.PACK);
        Station broken = course.first(ActKind.BREAK);
        double indexHours = broken.before().couch().indexHours();
        double slackHours = INDEX_SLACK_FRACTION * schedule.indexHours();
        double hottestC = course.hottestC(ActKind.PACK, ActKind.BREAK);
        return within(schedule.packing(), packed.before().mass().moisture().wetBasisFraction())
                && indexHours >= schedule.acceptableIndex().lowHours() - slackHours
                && indexHours <= schedule.acceptableIndex().highHours() + slackHours
                && hottestC <= schedule.spreadAboveC();
    }

    private static boolean within(FractionRange range, double fraction) {
        return fraction >= range.lowFraction() - STATE_SLACK_FRACTION
                && fraction <= range.highFraction() + STATE_SLACK_FRACTION;
    }

    private static boolean gateIsOpen(Setup setup, Station station) {
        double gate = switch (station.visit().kind()) {
            case RAISE ->
                setup.style().kiln().ladder().get(station.visit().number()).belowMoistureFraction();
            case CURE -> setup.cureGateFraction();
            default -> 1;
        };
        return station.slowFraction() <= gate + GATE_SLACK_FRACTION;
    }
}
