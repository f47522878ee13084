package piecewright.rival;

import java.util.Optional;
import piecewright.plan.PlanRequest;
import piecewright.plan.Posed;

/** What grows while all else stands. */
enum GrowthAxis {
    DAYS("days to look over", 7, 10, 14, 21, 28) {
        @Override
        Optional<Posed> posed(GrowthHousehold household, int days) {
            return Posed.within(days, household.request(USUAL_HOURS, USUAL_IMMERSIONS), Posed.Steps.usual());
        }
    },
    STARTS("days to begin on", 1, 2, 4, 7, 14, 21) {
        @Override
        Optional<Posed> posed(GrowthHousehold household, int days) {
            PlanRequest request = household.request(USUAL_HOURS, USUAL_IMMERSIONS);
            return Posed.begun(days, USUAL_DAYS, request, Posed.Steps.usual());
        }
    },
    HOURS("hours a day", 4, 6, 8, 11, 16) {
        @Override
        Optional<Posed> posed(GrowthHousehold household, int hours) {
            return Posed.within(USUAL_DAYS, household.request(hours, USUAL_IMMERSIONS), Posed.Steps.usual());
        }
    },
    ACTS("acts of the style", 2, 3, 4, 5) {
        @Override
        Optional<Posed> posed(GrowthHousehold household, int immersions) {
            return Posed.within(USUAL_DAYS, household.request(USUAL_HOURS, immersions), Posed.Steps.usual());
        }

        @Override
        double size(int immersions) {
            return 2 * immersions + ACTS_AFTER_THE_STEEP;
        }
    };

    private static final int USUAL_DAYS = 14;
    private static final int USUAL_HOURS = 8;
    private static final int USUAL_IMMERSIONS = 4;
    /** Floor, wither, load, four raises of heat, cure, off, de-root. */
    private static final int ACTS_AFTER_THE_STEEP = 10;

    private final String key;
    private final int[] points;

    GrowthAxis(String key, int... points) {
        this.key = key;
        this.points = points;
    }

    String key() {
        return key;
    }

    /** Where it is measured, rising. */
    int[] points() {
        return points.clone();
    }

    /** The problem of a household at one value. */
    abstract Optional<Posed> posed(GrowthHousehold household, int value);

    /** What a value stands for on the axis. */
    double size(int value) {
        return value;
    }
}
