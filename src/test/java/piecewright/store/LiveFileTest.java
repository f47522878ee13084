package piecewright.store;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.Charset;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.LocalTime;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import piecewright.calendar.ExportOptions;
import piecewright.calendar.ExportOptions.PassivePhases;
import piecewright.calendar.QuietHours;
import piecewright.text.ColourUnit;
import piecewright.text.DisplayUnits;
import piecewright.text.UnitSystem;

class LiveFileTest {
    @TempDir
    private Path folder;

    /** With letters of a language where the machine's file names can hold them; an empty terminal's cannot. */
    private static String odd() {
        Charset names = Charset.forName(System.getProperty("sun.jnu.encoding", "UTF-8"));
        return names.newEncoder().canEncode("ö") ? "größe, 1.json" : "size, 1.json";
    }

    private LiveList list() {
        return new LiveList(
                List.of(folder.resolve(odd()), folder.resolve("b.json")),
                new DisplayUnits(UnitSystem.US, ColourUnit.LOVIBOND, Locale.forLanguageTag("de-AT")),
                new ExportOptions(
                        PassivePhases.LEFT_OUT,
                        List.of(Duration.ofMinutes(45), Duration.ZERO),
                        Optional.of(new QuietHours(LocalTime.of(22, 0), LocalTime.of(6, 30)))));
    }

    @Test
    void whatALiveCalendarShowsAndHowIsReadBackEqual() throws StoreException {
        Path file = folder.resolve("live.ics.batches.json");
        LiveFile.writeList(file, list());
        assertEquals(list(), LiveFile.readList(file));
        LiveList plain = new LiveList(List.of(), DisplayUnits.metric(), ExportOptions.usual());
        LiveFile.writeList(file, plain);
        assertEquals(plain, LiveFile.readList(file));
    }

    @Test
    void aBatchNotesItsCalendar() throws StoreException {
        Path file = folder.resolve("b.json.live.json");
        assertEquals(Optional.empty(), LiveFile.readMark(file));
        LiveFile.writeMark(file, folder.resolve("live.ics"));
        assertEquals(Optional.of(folder.resolve("live.ics")), LiveFile.readMark(file));
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            "us"          | "stones"   | units
            "lovibond"    | "pink"     | colourUnit
            "minutes" : 0 | "minutes" : 2000 | alarms[1].minutes
            "minutes" : 0 | "minutes" : 45   | impossible value
            "06:30"       | "22:00"    | quiet
            "phases"      | "phase"    | phase
            """)
    void aDamagedListIsRefusedByFileAndKey(String good, String bad, String key) throws StoreException, IOException {
        Path file = folder.resolve("live.ics.batches.json");
        LiveFile.writeList(file, list());
        String text = Files.readString(file);
        assertNotEquals(text, text.replace(good, bad), "the table must change the file");
        Files.writeString(file, text.replace(good, bad));
        StoreException refused = assertThrows(StoreException.class, () -> LiveFile.readList(file));
        assertTrue(String.valueOf(refused.getMessage()).startsWith(file.toString()), refused.getMessage());
        assertTrue(String.valueOf(refused.getMessage()).contains(key), refused.getMessage());
    }
}
