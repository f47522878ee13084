package piecewright.purchase;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import piecewright.grain.GrainLot;
import piecewright.plan.ModelParameters;
import piecewright.process.PieceState;
import piecewright.store.LotFile;
import piecewright.store.StoreException;
import piecewright.store.StyleLibrary;

/** What a roast burns counts when grain is bought. */
class RoastLossTest {
    private static PieceState finished(String style) throws StoreException {
        GrainLot lot = LotFile.read(Path.of("demo-data/lots/two-row-barley.json"));
        return new ReferenceCourse(StyleLibrary.builtIn().style(style), lot, ModelParameters.defaults()).finished(5);
    }

    /** From memory: amber loses 1 to 2 % more than pale malt, chocolate 5 to 10 %. */
    @Test
    void darkerRoastsLoseMore() throws StoreException {
        double amber = Losses.of(finished("amber"), 0.02, 0.97).roastingFraction();
        double chocolate = Losses.of(finished("chocolate"), 0.02, 0.97).roastingFraction();
        assertEquals(0, Losses.of(finished("pale"), 0.02, 0.97).roastingFraction());
        assertTrue(amber > 0.008 && amber < 0.02, "amber: " + amber);
        assertTrue(chocolate > 0.05 && chocolate < 0.10, "chocolate: " + chocolate);
    }

    /** Conservation of mass: grain less all items is the malt, to a gram. */
    @Test
    void theWaterfallStillCloses() throws StoreException {
        PieceState end = finished("crystal-dark");
        Waterfall fall = Waterfall.of(5, 0.1364, end, end.mass().totalKg());
        double lostKg =
                fall.items().stream().mapToDouble(Waterfall.Item::lostKg).sum();
        assertEquals(5 - lostKg, fall.usefulMaltKg(), 0.001);
        assertTrue(
                fall.items().stream().anyMatch(item -> item.loss() == Waterfall.Loss.ROASTING && item.lostKg() > 0.03));
    }
}
