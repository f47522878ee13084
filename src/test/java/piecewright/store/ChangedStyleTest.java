package piecewright.store;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;
import piecewright.style.MaltStyle;

/** A style with one part changed to what it is already is the same style: nothing else was lost on the way. */
class ChangedStyleTest {
    @Test
    void eachPartIsChangedAlone() throws StoreException {
        for (MaltStyle style : StyleLibrary.builtIn().all()) {
            assertEquals(style, style.withSteep(style.steep()));
            assertEquals(style, style.withGrowth(style.growth()));
            assertEquals(style, style.withKiln(style.kiln()));
            assertEquals(style, style.withCouches(style.couches()));
            assertEquals(style, style.withOven(style.oven()));
            assertEquals(style, style.finishedBy(style.finish()));
        }
    }
}
