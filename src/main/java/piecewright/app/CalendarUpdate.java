package piecewright.app;

import java.nio.file.Path;
import java.time.ZoneId;
import java.util.List;
import java.util.Objects;
import piecewright.calendar.CalendarChanges;

/**
 * What a calendar was told, or would be.
 *
 * @param calendar the file, or the address of the collection
 * @param zone whose clock its moments are told by
 * @param missing batches it should show that are no longer there
 */
public record CalendarUpdate(String calendar, ZoneId zone, CalendarChanges changes, List<Path> missing) {
    public CalendarUpdate {
        Objects.requireNonNull(calendar);
        Objects.requireNonNull(zone);
        Objects.requireNonNull(changes);
        missing = List.copyOf(missing);
    }
}
