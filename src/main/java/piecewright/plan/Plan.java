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
 * @param checks visits before the first act that find out what nobody measured yet, in time order
 * @param phases passive stretches in time order, the last one the rest before milling
 * @param course forecast state along time, in time order, for pictures
 * @param bill what the search minimised, taken apart
 */
public record Plan(
        Subject subject,
        Outcome outcome,
        List<Check> checks,
        List<Act> acts,
        List<Phase> phases,
        List<Finding> findings,
        List<Sample> course,
        Bill bill) {
    public Plan {
        Objects.requireNonNull(subject);
        Objects.requireNonNull(outcome);
        checks = List.copyOf(checks);
        acts = List.copyOf(acts);
        phases = List.copyOf(phases);
        findings = List.copyOf(findings);
        course = List.copyOf(course);
        Objects.requireNonNull(bill);
        if (acts.isEmpty()) throw new IllegalArgumentException("acts must not be empty");
    }

    /** A plan before anybody asked what there is to find out first. */
    public Plan(
            Subject subject,
            Outcome outcome,
            List<Act> acts,
            List<Phase> phases,
            List<Finding> findings,
            List<Sample> course,
            Bill bill) {
        this(subject, outcome, List.of(), acts, phases, findings, course, bill);
    }

    /** The same plan with these checks before it and these findings. */
    public Plan withChecks(List<Check> changed, List<Finding> changedFindings) {
        return new Plan(subject, outcome, changed, acts, phases, changedFindings, course, bill);
    }

    public Plan withFindings(List<Finding> changed) {
        return new Plan(subject, outcome, checks, acts, phases, changed, course, bill);
    }

    /** What the search minimised, cost-minutes. */
    public double costMinutes() {
        return bill.totalMinutes();
    }

    /** When the first act begins; checks come before it. */
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
