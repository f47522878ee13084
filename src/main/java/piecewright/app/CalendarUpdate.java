package piecewright.app;

import java.time.ZoneId;
import java.util.List;
import java.util.Objects;
import piecewright.calendar.CalendarChanges;

/**
 * What a calendar was told, or would be.
 *
 * @param calendar the file, or the address of the collection
 * @param zone whose clock its moments are told by
 * @param leftOut a sentence for each batch it should show and cannot
 */
public record CalendarUpdate(String calendar, ZoneId zone, CalendarChanges changes, List<String> leftOut) {
    public CalendarUpdate {
        Objects.requireNonNull(calendar);
        Objects.requireNonNull(zone);
        Objects.requireNonNull(changes);
        leftOut = List.copyOf(leftOut);
    }
}
