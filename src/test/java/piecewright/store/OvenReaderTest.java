package piecewright.store;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import piecewright.style.ColourLever;
import piecewright.style.MaltStyle;

class OvenReaderTest {
    private static final Path FILE = Path.of("schedules/crystal-medium.json");

    private static String text() throws IOException {
        return Files.readString(FILE);
    }

    @Test
    void stewAndRoastAreReadAsWritten() throws IOException, StoreException {
        MaltStyle style = StyleFile.parse(FILE, text());
        assertEquals(70, style.oven().stew().orElseThrow().ovenC());
        assertEquals(90, style.oven().stew().orElseThrow().shortestMinutes());
        assertEquals(2, style.oven().roast().orElseThrow().steps().size());
        assertEquals(120, style.oven().roast().orElseThrow().last().ovenC());
        assertEquals(2, style.oven().roast().orElseThrow().depthCm());
        assertEquals(ColourLever.ROAST_MINUTES, style.finish().lever());
    }

    @Test
    void styleWithoutThemIsColouredByItsCure() throws StoreException {
        MaltStyle pale = StyleLibrary.builtIn().style("pale");
        assertTrue(pale.oven().stew().isEmpty() && pale.oven().roast().isEmpty());
        assertEquals(ColourLever.CURE_HOURS, pale.finish().lever());
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', quoteCharacter = '~', textBlock = """
            "roast-minutes"      | "roast-minute"        | roast-minutes
            "ovenC": 120         | "ovenC": 300          | 60 to 260
            "minutes": [90, 240] | "minutes": [240, 90]  | swap the two figures
            "deepestCm"          | "deepestCM"           | not known
            "depthCm": 2,        | "depthCm": 20,        | 0.5 to 5
            "ovenC": 70          | "ovenC": 90           | 60 to 80
            """)
    void whatIsWrongIsNamedWithItsMend(String from, String to, String says) throws IOException {
        String wrong = text().replace(from, to);
        StoreException refused = assertThrows(StoreException.class, () -> StyleFile.parse(FILE, wrong));
        assertTrue(String.valueOf(refused.getMessage()).contains(says), refused.getMessage());
    }

    @Test
    void aRoastColourNeedsARoast() throws IOException {
        String pale = Files.readString(Path.of("schedules/pale.json"))
                .replace("\"colourEbc\"", "\"colourBy\": \"roast-minutes\", \"colourEbc\"");
        StoreException refused = assertThrows(StoreException.class, () -> StyleFile.parse(FILE, pale));
        assertTrue(String.valueOf(refused.getMessage()).contains("needs a roast"), refused.getMessage());
    }

    @Test
    void theOffsetOfAnOvenIsRead() throws StoreException {
        var heaters = HouseFile.read(Path.of("demo-data/houses/terrace-kitchen.json"))
                .kit()
                .heaters();
        assertEquals(-6, heaters.get(1).control().dialOffsetK());
        assertEquals(0, heaters.get(0).control().dialOffsetK(), "unchecked");
    }
}
