package piecewright.plan;

import java.time.Instant;
import java.time.ZoneId;
import java.util.List;
import java.util.Objects;
import piecewright.process.Ledgers;
import piecewright.process.PieceState;
import piecewright.quantity.Moisture;

/**
 * A time-stamped plan of one piece.
 *
 * @param acts hands-on acts in time order
 * @param phases passive stretches in time order, the last one the rest before milling
 * @param course forecast state along time, in time order, for pictures
 * @param costMinutes what the search minimised, in cost-minutes
 */
public record Plan(
        Subject subject,
        Outcome outcome,
        List<Act> acts,
        List<Phase> phases,
        List<Finding> findings,
        List<Sample> course,
        double costMinutes) {
    public Plan {
        Objects.requireNonNull(subject);
        Objects.requireNonNull(outcome);
        acts = List.copyOf(acts);
        phases = List.copyOf(phases);
        findings = List.copyOf(findings);
        course = List.copyOf(course);
        if (acts.isEmpty()) throw new IllegalArgumentException("acts must not be empty");
    }

    public Plan withFindings(List<Finding> changed) {
        return new Plan(subject, outcome, acts, phases, changed, course, costMinutes);
    }

    public Instant startsAt() {
        return acts.get(0).startsAt();
    }

    /**
     * @param style key of the style
     * @param readyAt when the malt has rested as the style asks
     */
    public record Subject(String style, String title, String lot, ZoneId zone, Instant readyAt) {}

    /**
     * @param rawGrainKg grain as bought that goes into the steep, floaters included, kg
     * @param finishedMaltKg malt that is malt: from germinated corns only, de-rooted, kg
     * @param scaleMaltKg what the scale shows, dead corns included, kg
     * @param endMoisture off the kiln
     */
    public record Outcome(
            double rawGrainKg,
            double finishedMaltKg,
            double scaleMaltKg,
            Moisture endMoisture,
            PieceState finished,
            Ledgers ledgers) {}

    /** The forecast state at one instant. */
    public record Sample(Instant at, PieceState state) {}
}
