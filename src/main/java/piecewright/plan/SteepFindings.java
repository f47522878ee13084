package piecewright.plan;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import piecewright.plan.Simulation.Course;
import piecewright.plan.Simulation.Station;
import piecewright.quantity.Moisture;

/** What a person should know about the steep of a plan and the heap after it. One method per finding. */
final class SteepFindings {
    /** Judgement: practice, over 47 to 48 % grain is over-wet: it sours and outgrows itself. */
    static final double OVER_WET_FRACTION = 0.47;

    private final Setup setup;
    private final Rules rules;

    SteepFindings(Setup setup) {
        this.setup = setup;
        this.rules = new Rules(setup.style(), setup.lot().waterSensitiveFraction());
    }

    List<Finding> of(Course course) {
        List<Finding> findings = new ArrayList<>();
        longSoaks(course.stations(), findings);
        overWet(course.stations(), findings);
        noWetCouch(course.stations(), findings);
        return findings;
    }

    private void longSoaks(List<Station> stations, List<Finding> findings) {
        for (int i = 1; i < stations.size(); i++) {
            Station drain = stations.get(i);
            if (drain.visit().kind() != ActKind.DRAIN) continue;
            Duration lasts = Duration.between(
                    stations.get(i - 1).visit().at(), drain.visit().at());
            double longest = rules.longestUsualSoakHours(drain.visit().number(), drain.meanC());
            if (lasts.toMinutes() > 60 * longest) {
                findings.add(new Finding.LongSoak(drain.visit().id(), lasts, longest, drain.meanC()));
            }
        }
    }

    private static void overWet(List<Station> stations, List<Finding> findings) {
        stations.stream()
                .filter(station -> station.visit().kind() == ActKind.DRAIN)
                .reduce((first, second) -> second)
                .ifPresent(last -> {
                    Moisture out = last.before().mass().moisture();
                    if (out.wetBasisFraction() > OVER_WET_FRACTION) {
                        findings.add(new Finding.OverWet(last.visit().id(), out));
                    }
                });
    }

    private void noWetCouch(List<Station> stations, List<Finding> findings) {
        boolean heaped = stations.stream().anyMatch(station -> station.visit().kind() == ActKind.HEAP);
        if (setup.heaping().isEmpty() || heaped) return;
        Heaping heaping = setup.heaping().get();
        findings.add(new Finding.NoWetCouch(
                "floor.spread",
                heaping.expected().worth(),
                heaping.expected(),
                heaping.schedule().warmestCoreC()));
    }
}
