package piecewright.app;

import java.nio.file.Path;
import java.util.List;
import java.util.Objects;
import piecewright.calendar.ExportOptions;
import piecewright.store.StoreException;
import piecewright.text.DisplayUnits;

/** How one person wants the entries of a calendar: units and language, phases, alarms, quiet hours. */
public record CalendarManner(DisplayUnits units, ExportOptions options) {
    public CalendarManner {
        Objects.requireNonNull(units);
        Objects.requireNonNull(options);
    }

    /** In these units, as it was chosen for the first of these batches for which anything was, else as usual. */
    public static CalendarManner of(List<Path> batches, DisplayUnits units) throws StoreException {
        return new CalendarManner(units, CalendarHabits.chosen(batches).orElseGet(ExportOptions::usual));
    }

    /** In these units, with what is usual. */
    public static CalendarManner usual(DisplayUnits units) {
        return new CalendarManner(units, ExportOptions.usual());
    }
}
