package piecewright.app;

import java.util.Objects;
import piecewright.calendar.ExportOptions;
import piecewright.text.DisplayUnits;

/** How one person wants the entries of a calendar: units and language, phases, alarms, quiet hours. */
public record CalendarManner(DisplayUnits units, ExportOptions options) {
    public CalendarManner {
        Objects.requireNonNull(units);
        Objects.requireNonNull(options);
    }

    /** In these units, with what is usual. */
    public static CalendarManner usual(DisplayUnits units) {
        return new CalendarManner(units, ExportOptions.usual());
    }
}
