package piecewright.calendar;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;

/**
 * What one export writes, and the ledger to keep once it is in place.
 *
 * @param confirmed every event of the plan
 * @param cancelled stubs of dropped events; none once the batch is over
 */
public record Revision(Ledger ledger, List<DatedEvent> confirmed, List<DatedEvent> cancelled) {
    public Revision {
        Objects.requireNonNull(ledger);
        confirmed = List.copyOf(confirmed);
        cancelled = List.copyOf(cancelled);
    }

    /** For a live file or a published collection: what is dropped is left out. */
    public List<DatedEvent> forLiveFile() {
        return confirmed;
    }

    /** For a one-off file: what is dropped is said to be cancelled, since the importer will not notice otherwise. */
    public List<DatedEvent> forImportFile() {
        List<DatedEvent> all = new ArrayList<>(confirmed);
        all.addAll(cancelled);
        return List.copyOf(all);
    }
}
