package piecewright.app;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.nio.file.Path;
import java.util.HashMap;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import piecewright.colour.ColourAim;
import piecewright.process.kiln.KilnParameters;
import piecewright.store.StoreException;
import piecewright.store.StyleLibrary;
import piecewright.style.MaltStyle;

class AimedStyleTest {
    private static final Path FILE = Path.of("batch.json");
    private static final ColourAim AIM = new ColourAim(KilnParameters.defaults(), new ColourAim.Kit(105, 220, 1));

    private static MaltStyle style(String key) throws StoreException {
        return StyleLibrary.builtIn().style(key);
    }

    /** Round trip: what a colour fixed of a style is there again when its kept batch is read. */
    @ParameterizedTest
    @CsvSource(textBlock = """
            pale-ale,       6
            amber,          57.3
            brown,          131
            crystal-medium, 150
            munich,         16
            munich,         26
            dark,           30
            """)
    void whatAColourFixedIsKept(String key, double colourEbc) throws StoreException {
        MaltStyle aimed = ColourAim.aimed(style(key), AIM.reach(style(key), colourEbc));
        Map<String, String> wish = new HashMap<>();
        AimedStyle.note(aimed, wish);
        assertEquals(aimed, AimedStyle.of(FILE, style(key), wish));
    }

    @Test
    void aStyleAsItsScheduleHasItLeavesNoNote() throws StoreException {
        for (MaltStyle style : StyleLibrary.builtIn().all()) {
            Map<String, String> wish = new HashMap<>();
            AimedStyle.note(style, wish);
            assertEquals(Map.of(), wish, style.key());
        }
    }

    @Test
    void aNoteThatCannotBeIsRefused() throws StoreException {
        MaltStyle munich = style("munich");
        Map<String, String> beyond = Map.of("couchIndexHours", "40");
        assertThrows(StoreException.class, () -> AimedStyle.of(FILE, munich, beyond));
        Map<String, String> words = Map.of("roastMinutes", "long");
        assertThrows(StoreException.class, () -> AimedStyle.of(FILE, style("amber"), words));
    }
}
