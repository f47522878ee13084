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
}
