package piecewright.plan.search;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * A way to have come so far: at this stop, at this candidate instant, with this grain, at this cost.
 *
 * @param at index of the candidate instant
 * @param nights night acts used so far
 * @param before the label one stop earlier; null for a start
 */
record Label(
        int stop,
        int at,
        Grain grain,
        double costMinutes,
        int nights,
        @Nullable Label before) {
    /** The labels from the start to this one. */
    List<Label> path() {
        List<Label> path = new ArrayList<>();
        for (Label label = this; label != null; label = label.before()) path.add(label);
        Collections.reverse(path);
        return path;
    }
}
