package piecewright.store;

import java.time.LocalDate;
import java.util.Objects;
import java.util.Optional;
import piecewright.text.ColourUnit;
import piecewright.text.UnitSystem;

/**
 * How somebody left the window.
 *
 * @param theme "light" or "dark"
 * @param textPercent 100 to 200
 * @param wish the sentence as it stood
 */
public record SavedWindow(
        String theme, int textPercent, UnitSystem units, ColourUnit colour, Optional<SavedWish> wish) {
    public SavedWindow {
        Objects.requireNonNull(theme);
        Objects.requireNonNull(units);
        Objects.requireNonNull(colour);
        Objects.requireNonNull(wish);
    }

    /** The sentence; lot and house are paths as text. */
    public record SavedWish(String styleKey, double maltKg, LocalDate readyBy, String lot, String house) {
        public SavedWish {
            Objects.requireNonNull(styleKey);
            Objects.requireNonNull(readyBy);
            Objects.requireNonNull(lot);
            Objects.requireNonNull(house);
        }
    }
}
