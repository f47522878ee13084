package piecewright.history;

import java.time.Instant;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;
import piecewright.journal.Entry;
import piecewright.plan.Found;
import piecewright.plan.Timetable.Visit;

/**
 * What is held to have happened to a batch.
 *
 * @param acts done or inferred, in time order
 * @param measurements believed, in time order
 * @param settings heaters and vents set, in time order
 * @param signs what was seen, smelt or happened, in time order
 * @param contradictions entries in doubt, left out of everything else, in time order
 * @param fates what every entry of the log counts as, by its number
 * @param found the measurements as a forecast takes them
 * @param entryByReading the entries of the readings found, in their order
 * @param followedUntil the instant that was asked about, or when wet grain cannot have waited any longer, if that is sooner
 */
public record Account(
        List<Done> acts,
        List<Measurement> measurements,
        List<Entry> settings,
        List<Entry> signs,
        List<Contradiction> contradictions,
        Map<Integer, Fate> fates,
        Found found,
        List<Integer> entryByReading,
        Instant followedUntil) {
    public Account {
        acts = List.copyOf(acts);
        measurements = List.copyOf(measurements);
        settings = List.copyOf(settings);
        signs = List.copyOf(signs);
        contradictions = List.copyOf(contradictions);
        fates = Map.copyOf(fates);
        Objects.requireNonNull(found);
        entryByReading = List.copyOf(entryByReading);
        Objects.requireNonNull(followedUntil);
    }

    /**
     * An act that was done.
     *
     * @param visit its name in the plan and when it began
     * @param entry the entry that tells of it first; empty when nobody wrote it down and it is inferred, because a later
     *     one was done
     * @param waterKg water sprinkled, kg; empty when nobody said
     * @param workedMinutes how long somebody was at it, all its parts together, where begin and end were written down
     */
    public record Done(Visit visit, Optional<Integer> entry, OptionalDouble waterKg, OptionalDouble workedMinutes) {
        public Done {
            Objects.requireNonNull(visit);
            Objects.requireNonNull(entry);
            Objects.requireNonNull(waterKg);
            Objects.requireNonNull(workedMinutes);
        }

        public boolean inferred() {
            return entry.isEmpty();
        }
    }

    /** The acts done as a plan has them, in time order. */
    public List<Visit> visits() {
        return acts.stream().map(Done::visit).toList();
    }

    /** The entry that tells of an act, by act id. */
    public Map<String, Integer> entryByAct() {
        Map<String, Integer> entries = new HashMap<>();
        acts.forEach(
                done -> done.entry().ifPresent(entry -> entries.put(done.visit().id(), entry)));
        return Map.copyOf(entries);
    }

    /** Acts nobody wrote down that must have been done, by id, in time order. */
    public List<String> inferred() {
        return acts.stream()
                .filter(Done::inferred)
                .map(done -> done.visit().id())
                .toList();
    }

    /** Whether the act was done. */
    public boolean did(String actId) {
        return acts.stream().anyMatch(done -> done.visit().id().equals(actId));
    }

    /** The last act done. */
    public Optional<Visit> last() {
        return acts.isEmpty()
                ? Optional.empty()
                : Optional.of(acts.get(acts.size() - 1).visit());
    }

    /** Entries of a log that say something, those in doubt and those to come left out. */
    public boolean counts(Entry entry) {
        Fate fate = fates.get(entry.number());
        return fate != null
                && switch (fate) {
                    case DONE, MEASURED, SET, SEEN, NOTED -> true;
                    case CONTRADICTED, STRUCK, CORRECTION, LATER -> false;
                };
    }

    /** When the log ends: the last thing done or found; empty when nothing was. */
    public Optional<Instant> until() {
        Optional<Instant> act = last().map(Visit::at);
        Optional<Instant> found = measurements.isEmpty()
                ? Optional.empty()
                : Optional.of(measurements.get(measurements.size() - 1).at());
        return act.isPresent() && found.isPresent() && found.get().isAfter(act.get()) ? found : act;
    }
}
