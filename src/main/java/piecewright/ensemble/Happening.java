package piecewright.ensemble;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;

/**
 * How a plan went in one reality.
 *
 * @param met what was found at each act that took place, by act id
 * @param milestoneMinutes minutes after the origin; one that never came is left out
 */
record Happening(
        Map<String, Met> met,
        List<Breach> breaches,
        Map<Milestone, Double> milestoneMinutes,
        Map<Figure, Double> figures) {
    Happening {
        met = Map.copyOf(met);
        breaches = List.copyOf(breaches);
        milestoneMinutes = new EnumMap<>(milestoneMinutes);
        figures = new EnumMap<>(figures);
    }
}
