package piecewright.journal;

import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import piecewright.journal.Report.Corrected;
import piecewright.journal.Report.Tare;
import piecewright.journal.Report.VesselWeighed;

/**
 * All entries about one piece in the order they were written. Entries are only ever added.
 *
 * @param entries numbers strictly rising; gaps are allowed, where a damaged line could not be read
 */
public record Journal(List<Entry> entries) {
    public Journal {
        entries = List.copyOf(entries);
        for (int i = 1; i < entries.size(); i++) {
            if (entries.get(i).number() <= entries.get(i - 1).number()) {
                throw new IllegalArgumentException(
                        "numbers must rise: " + entries.get(i).number());
            }
        }
    }

    public static Journal empty() {
        return new Journal(List.of());
    }

    /** The number the next entry gets. */
    public int nextNumber() {
        return entries.isEmpty() ? 1 : entries.get(entries.size() - 1).number() + 1;
    }

    /** This journal with one entry more. */
    public Journal with(Entry entry) {
        List<Entry> more = new ArrayList<>(entries);
        more.add(entry);
        return new Journal(more);
    }

    /** The entry of that number as it was written. */
    public Optional<Entry> entry(int number) {
        int low = 0;
        int high = entries.size() - 1;
        while (low <= high) {
            int middle = (low + high) >>> 1;
            int there = entries.get(middle).number();
            if (there == number) return Optional.of(entries.get(middle));
            if (there < number) low = middle + 1;
            else high = middle - 1;
        }
        return Optional.empty();
    }

    /**
     * What is held to have happened, in the order it happened: corrections applied, void entries left out, no
     * corrections among them. A corrected entry keeps its number, and its act unless the correction names another. Of
     * several corrections of one entry, or of its corrections, the last counts.
     */
    public List<Entry> effective() {
        Map<Integer, Entry> held = new TreeMap<>();
        Map<Integer, Entry> written = new HashMap<>();
        Map<Integer, Integer> meant = new HashMap<>();
        for (Entry entry : entries) {
            written.put(entry.number(), entry);
            if (!(entry.report() instanceof Corrected corrected)) {
                held.put(entry.number(), entry);
                continue;
            }
            int root = meant.getOrDefault(corrected.entry(), corrected.entry());
            meant.put(entry.number(), root);
            Optional<Entry> original = Optional.ofNullable(written.get(root));
            held.remove(root);
            if (original.isPresent() && corrected.instead().isPresent()) {
                Optional<String> actId = entry.actId().or(() -> original.get().actId());
                held.put(
                        root,
                        new Entry(
                                root,
                                entry.at(),
                                entry.writtenAt(),
                                actId,
                                corrected.instead().get()));
            }
        }
        return held.values().stream().sorted(Comparator.comparing(Entry::at)).toList();
    }

    /** Vessels whose weight is remembered, each with the weight found last. */
    public List<Tare> vessels() {
        Map<String, Tare> vessels = new TreeMap<>();
        for (Entry entry : effective()) {
            if (entry.report() instanceof VesselWeighed weighed) {
                vessels.put(weighed.tare().vessel().toLowerCase(java.util.Locale.ROOT), weighed.tare());
            }
        }
        return List.copyOf(vessels.values());
    }

    /** Of the effective entries those not after an instant. */
    public List<Entry> effectiveUntil(Instant instant) {
        return effective().stream()
                .filter(entry -> !entry.at().isAfter(instant))
                .toList();
    }
}
