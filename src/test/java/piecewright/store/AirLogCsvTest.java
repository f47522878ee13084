package piecewright.store;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.nio.file.Path;
import java.time.Instant;
import java.time.ZoneId;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import piecewright.house.AirTemperature;

class AirLogCsvTest {
    private static final Path FILE = Path.of("air.csv");
    private static final ZoneId OSLO = ZoneId.of("Europe/Oslo");

    private static List<AirTemperature.Reading> read(String text) throws StoreException {
        return AirLogCsv.parse(FILE, text, OSLO).readings();
    }

    private static AirTemperature.Reading reading(String at, double airC) {
        return new AirTemperature.Reading(Instant.parse(at), airC);
    }

    @Test
    void readsTheHousesClockAndOffsets() throws StoreException {
        assertEquals(
                List.of(reading("2031-03-19T17:00:00Z", 7.5), reading("2031-03-19T18:00:00Z", -2)),
                read("time,airC\r\n2031-03-19T18:00,7.5\r\n\r\n2031-03-19T18:00:00Z,-2\r\n"));
        assertEquals(
                List.of(reading("2031-10-26T00:30:00Z", 7), reading("2031-10-26T01:30:00Z", 6)),
                read("time,airC\n2031-10-26T02:30+02:00,7\n2031-10-26T02:30+01:00,6"));
    }

    @Test
    void readsSemicolonsDecimalCommasQuotesAndFahrenheit() throws StoreException {
        assertEquals(
                List.of(reading("2031-03-19T17:00:00Z", 10)),
                read("no;Time;airF;note\n1;\"2031-03-19 18:00\";50,0;\"=1+1; \"\"x\"\"\"\n"));
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', quoteCharacter = '`', textBlock = """
                    time,temp               | 1 | the header has no column "airC" or "airF"; name the column of temperatures so
                    when,airC               | 1 | the header has no column "time"; name the column of times so
                    time,airC,airF          | 1 | two columns could be meant; keep one "time" and one "airC" or "airF"
                    time,airC               | 1 | there is no reading below the header; add rows
                    time,airC~yesterday,7   | 2 | "yesterday" is not a time; write it like 2031-03-19T18:00
                    time,airC~2031-03-19T18:00 | 2 | too few cells; each row needs as many as the header
                    time,airC~2031-03-19T18:00,=1+1 | 2 | "=1+1" is not a number; write it like 7.8
                    time,airC~2031-03-19T18:00,NaN | 2 | "NaN" is not a number; write it like 7.8
                    time,airC~2031-03-19T18:00,700 | 2 | "700" is no air temperature; correct or drop the row
                    time,airC~2031-03-19T18:00,7~2031-03-19T18:00,7 | 3 | the time is not after the one before; sort the rows by time and drop doubles
                    time,airC~2031-03-30T02:30,7 | 2 | "2031-03-30T02:30" does not exist: the clocks skip it in Europe/Oslo; write the offset too, like 2031-03-30T02:30+01:00
                    time,airC~2031-10-26T02:30,7 | 2 | "2031-10-26T02:30" comes twice: the clocks go back then in Europe/Oslo; write the offset too, like 2031-03-30T02:30+01:00
                    """)
    void refusesWithTheLine(String text, int line, String message) {
        var refused = assertThrows(StoreException.class, () -> read(text.replace('~', '\n')));
        assertEquals("air.csv: line " + line + ": " + message, refused.getMessage());
    }

    @Test
    void boundsTheRows() {
        StringBuilder text = new StringBuilder("time,airC\n");
        Instant at = Instant.parse("2031-01-01T00:00:00Z");
        for (int i = 0; i <= 200_000; i++) text.append(at.plusSeconds(60L * i)).append(",7\n");
        var refused = assertThrows(StoreException.class, () -> read(text.toString()));
        assertEquals("air.csv: line 200002: more than 200000 rows; thin the readings out", refused.getMessage());
    }
}
