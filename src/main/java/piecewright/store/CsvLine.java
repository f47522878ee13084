package piecewright.store;

import java.time.DateTimeException;
import java.time.Instant;
import java.time.LocalDateTime;
import java.time.OffsetDateTime;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import piecewright.text.Quoted;

/** One line of a CSV file: its cells, and a cell as an instant. */
final class CsvLine {
    private CsvLine() {}

    /** Cells between separators; a cell in double quotes may hold the separator, and doubled quotes for one. */
    static List<String> cells(String line, char separator) {
        List<String> cells = new ArrayList<>();
        StringBuilder cell = new StringBuilder();
        boolean quoted = false;
        for (int i = 0; i < line.length(); i++) {
            char c = line.charAt(i);
            if (quoted && c == '"' && i + 1 < line.length() && line.charAt(i + 1) == '"') {
                cell.append('"');
                i++;
            } else if (c == '"') {
                quoted = !quoted;
            } else if (c == separator && !quoted) {
                cells.add(cell.toString());
                cell.setLength(0);
            } else {
                cell.append(c);
            }
        }
        cells.add(cell.toString());
        return cells;
    }

    /** An ISO time with offset, or without one by the zone's clock; a time the clock skips or shows twice is refused. */
    static Instant instant(String cell, ZoneId zone, Function<String, StoreException> bad) throws StoreException {
        String shown = "\"" + Quoted.shortly(cell) + "\" ";
        String iso =
                cell.length() > 10 && cell.charAt(10) == ' ' ? cell.substring(0, 10) + "T" + cell.substring(11) : cell;
        try {
            if (iso.matches(".*([Zz]|[+-][0-9]{2}:[0-9]{2})"))
                return OffsetDateTime.parse(iso).toInstant();
            LocalDateTime local = LocalDateTime.parse(iso);
            List<ZoneOffset> offsets = zone.getRules().getValidOffsets(local);
            if (offsets.size() == 1) return local.toInstant(offsets.get(0));
            String why = offsets.isEmpty()
                    ? "does not exist: the clocks skip it in " + zone
                    : "comes twice: the clocks go back then in " + zone;
            throw bad.apply(shown + why + "; write the offset too, like 2031-03-30T02:30+01:00");
        } catch (DateTimeException notATime) {
            throw bad.apply(shown + "is not a time; write it like 2031-03-19T18:00");
        }
    }
}
