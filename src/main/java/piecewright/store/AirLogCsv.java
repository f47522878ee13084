package piecewright.store;

import java.nio.file.Path;
import java.time.Instant;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import piecewright.house.AirTemperature;
import piecewright.quantity.Units;
import piecewright.text.Quoted;

/**
 * Reads air temperatures from the CSV file of a logger or forecast: a header line, a column "time" and a column "airC"
 * or "airF", separated by commas or semicolons; other columns are passed over. Times are ISO; without an offset they
 * are the house's clock. Every cell is a time or a number: nothing in the file is ever computed.
 */
public final class AirLogCsv {
    private static final int MOST_ROWS = 200_000;
    private static final double COLDEST_C = -40;
    private static final double HOTTEST_C = 60;
    private static final Set<String> TIME = Set.of("time", "timestamp", "datetime");
    private static final Set<String> CELSIUS = Set.of("airc", "temperaturec");
    private static final Set<String> FAHRENHEIT = Set.of("airf", "temperaturef");

    private final Path file;
    private final ZoneId zone;
    private final char separator;
    private int timeColumn = -1;
    private int airColumn = -1;
    private boolean fahrenheit;

    private AirLogCsv(Path file, ZoneId zone, char separator) {
        this.file = file;
        this.zone = zone;
        this.separator = separator;
    }

    /** The readings of this file, at most 20 MB and 200 000 rows. */
    public static AirTemperature.Logged read(Path file, ZoneId zone) throws StoreException {
        return parse(file, TextFile.read(file, TextFile.LARGE_BYTES), zone);
    }

    static AirTemperature.Logged parse(Path file, String text, ZoneId zone) throws StoreException {
        String[] lines = text.split("\r\n|\n|\r", -1);
        AirLogCsv csv = new AirLogCsv(file, zone, lines[0].indexOf(';') >= 0 ? ';' : ',');
        csv.header(lines[0]);
        List<AirTemperature.Reading> readings = new ArrayList<>();
        Instant before = Instant.MIN;
        for (int i = 1; i < lines.length; i++) {
            if (lines[i].isBlank()) continue;
            if (readings.size() == MOST_ROWS)
                throw csv.bad(i, "more than " + MOST_ROWS + " rows; thin the readings out");
            AirTemperature.Reading reading = csv.row(i, lines[i]);
            if (!reading.at().isAfter(before)) {
                throw csv.bad(i, "the time is not after the one before; sort the rows by time and drop doubles");
            }
            before = reading.at();
            readings.add(reading);
        }
        if (readings.isEmpty()) throw csv.bad(0, "there is no reading below the header; add rows");
        return new AirTemperature.Logged(readings);
    }

    private void header(String line) throws StoreException {
        List<String> names = CsvLine.cells(line, separator);
        for (int i = 0; i < names.size(); i++) {
            String name = names.get(i).strip().toLowerCase(Locale.ROOT);
            if (TIME.contains(name)) timeColumn = once(timeColumn, i);
            if (CELSIUS.contains(name) || FAHRENHEIT.contains(name)) {
                airColumn = once(airColumn, i);
                fahrenheit = FAHRENHEIT.contains(name);
            }
        }
        if (timeColumn < 0) throw bad(0, "the header has no column \"time\"; name the column of times so");
        if (airColumn < 0) {
            throw bad(0, "the header has no column \"airC\" or \"airF\"; name the column of temperatures so");
        }
    }

    private int once(int before, int column) throws StoreException {
        if (before >= 0) throw bad(0, "two columns could be meant; keep one \"time\" and one \"airC\" or \"airF\"");
        return column;
    }

    private AirTemperature.Reading row(int line, String text) throws StoreException {
        List<String> cells = CsvLine.cells(text, separator);
        if (cells.size() <= Math.max(timeColumn, airColumn)) {
            throw bad(line, "too few cells; each row needs as many as the header");
        }
        Instant at = CsvLine.instant(cells.get(timeColumn).strip(), zone, message -> bad(line, message));
        double air = number(line, cells.get(airColumn).strip());
        double airC = fahrenheit ? Units.celsiusOfFahrenheit(air) : air;
        if (!(airC >= COLDEST_C && airC <= HOTTEST_C)) {
            throw bad(
                    line,
                    "\"" + Quoted.shortly(cells.get(airColumn)) + "\" is no air temperature; correct or drop the row");
        }
        return new AirTemperature.Reading(at, airC);
    }

    private double number(int line, String cell) throws StoreException {
        String plain = separator == ';' ? cell.replace(',', '.') : cell;
        if (!plain.matches("-?[0-9]{1,4}(\\.[0-9]{1,12})?")) {
            throw bad(line, "\"" + Quoted.shortly(cell) + "\" is not a number; write it like 7.8");
        }
        return Double.parseDouble(plain);
    }

    private StoreException bad(int line, String message) {
        return new StoreException(file, "line " + (line + 1) + ": " + message);
    }
}
