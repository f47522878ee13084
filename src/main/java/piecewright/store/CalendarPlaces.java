package piecewright.store;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import piecewright.calendar.ExportOptions;

/**
 * Where the calendar entries of a batch went and how they were wanted, as far as neither a live file nor a collection
 * tells it.
 *
 * @param options chosen last; empty if nobody ever chose
 * @param exports files written to be imported by hand
 * @param user name of the account the batch is published with
 */
public record CalendarPlaces(Optional<ExportOptions> options, List<Export> exports, Optional<String> user) {
    public CalendarPlaces {
        Objects.requireNonNull(options);
        exports = List.copyOf(exports);
        Objects.requireNonNull(user);
    }

    /** One file and the batches in it. */
    public record Export(Path calendar, List<Path> batches) {
        public Export {
            Objects.requireNonNull(calendar);
            batches = List.copyOf(batches);
        }
    }

    public static CalendarPlaces none() {
        return new CalendarPlaces(Optional.empty(), List.of(), Optional.empty());
    }

    public CalendarPlaces withOptions(ExportOptions changed) {
        return new CalendarPlaces(Optional.of(changed), exports, user);
    }

    public CalendarPlaces withUser(String changed) {
        return new CalendarPlaces(options, exports, Optional.of(changed));
    }

    /** With this file, in place of what it held before. */
    public CalendarPlaces withExport(Export export) {
        List<Export> others = new ArrayList<>();
        for (Export other : exports) if (!other.calendar().equals(export.calendar())) others.add(other);
        others.add(export);
        return new CalendarPlaces(options, others, user);
    }
}
