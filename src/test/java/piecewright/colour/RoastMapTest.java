package piecewright.colour;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import piecewright.colour.RoastMap.Cell;
import piecewright.colour.RoastMap.Forbidden;
import piecewright.process.kiln.KilnParameters;
import piecewright.store.StoreException;
import piecewright.store.StyleLibrary;
import piecewright.style.MaltStyle;

class RoastMapTest {
    private static MaltStyle style(String key) throws StoreException {
        return StyleLibrary.builtIn().style(key);
    }

    /** Property: in every row longer, in every column hotter, is darker; seven rows of seven. */
    @Test
    void longerAndHotterIsDarker() throws StoreException {
        for (String key : List.of("amber", "brown", "chocolate", "crystal-medium")) {
            List<Cell> cells =
                    RoastMap.of(style(key), KilnParameters.defaults(), 220).cells();
            assertEquals(49, cells.size());
            for (int at = 0; at < 49; at++) {
                double ebc = cells.get(at).roasted().colourEbc();
                if (at % 7 > 0) assertTrue(ebc > cells.get(at - 1).roasted().colourEbc(), key);
                if (at >= 7) assertTrue(ebc > cells.get(at - 7).roasted().colourEbc(), key);
            }
        }
    }

    /** Amber asks for 150 °C and 40 to 55 minutes; nothing but that is free. */
    @Test
    void onlyTheStyleIsFree() throws StoreException {
        for (Cell cell :
                RoastMap.of(style("amber"), KilnParameters.defaults(), 220).cells()) {
            long minutes = cell.roasted().last().toMinutes();
            boolean amber = cell.roasted().lastC() == 150 && minutes >= 40 && minutes <= 55;
            assertEquals(amber, cell.forbidden().isEmpty(), cell.toString());
        }
    }

    /** Home ceiling 220 °C; what an oven does not reach it does not roast. */
    @Test
    void ovensAndKitchensForbid() throws StoreException {
        for (Cell cell :
                RoastMap.of(style("chocolate"), KilnParameters.defaults(), 205).cells()) {
            double ovenC = cell.roasted().lastC();
            assertEquals(ovenC > 205, cell.forbidden().contains(Forbidden.OVEN_TOO_COOL), cell.toString());
            assertEquals(ovenC > 220, cell.forbidden().contains(Forbidden.TOO_HOT_FOR_A_KITCHEN), cell.toString());
        }
        assertTrue(RoastMap.of(style("black"), KilnParameters.defaults(), 250).cells().stream()
                .allMatch(cell -> !cell.forbidden().isEmpty()));
    }
}
