package piecewright.truth;

import piecewright.plan.PlanRequest;
import piecewright.plan.Styled;
import piecewright.store.StoreException;
import piecewright.store.StyleLibrary;
import piecewright.style.MaltStyle;

/** The seeded households with what a style needs in the house, wishing for it. */
final class Homes {
    private Homes() {}

    static PlanRequest of(String key, long seed) {
        return Styled.requestFor(style(key), seed);
    }

    static MaltStyle style(String key) {
        try {
            return StyleLibrary.builtIn().style(key);
        } catch (StoreException unknown) {
            throw new AssertionError(unknown);
        }
    }
}
