package piecewright.plan;

import java.util.function.Function;

/** Makes plans. Pure, for any number of threads. */
@FunctionalInterface
public interface Plans extends Function<PlanRequest, PlanResult> {
    /** The same, watched; unwatched where it is too quick to be worth it. */
    default Plans watchedBy(Watch watch) {
        return this;
    }

    /** The same, giving up sooner: to try many changes of a wish. */
    default Plans hurried() {
        return this;
    }
}
