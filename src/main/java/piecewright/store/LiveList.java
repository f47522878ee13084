package piecewright.store;

import java.nio.file.Path;
import java.util.List;
import java.util.Objects;
import piecewright.calendar.ExportOptions;
import piecewright.text.DisplayUnits;

/** Which batches a live calendar shows, and in which units and manner. */
public record LiveList(List<Path> batches, DisplayUnits units, ExportOptions options) {
    public LiveList {
        batches = List.copyOf(batches);
        Objects.requireNonNull(units);
        Objects.requireNonNull(options);
    }
}
