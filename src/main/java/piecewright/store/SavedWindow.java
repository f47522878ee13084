package piecewright.store;

import java.time.LocalDate;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;
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

    /**
     * The sentence; lot and house are paths as text.
     *
     * @param colourEbc empty for what is usual for the style
     */
    public record SavedWish(
            String styleKey, double maltKg, OptionalDouble colourEbc, LocalDate readyBy, String lot, String house) {
        public SavedWish {
            Objects.requireNonNull(styleKey);
            Objects.requireNonNull(colourEbc);
            Objects.requireNonNull(readyBy);
            Objects.requireNonNull(lot);
            Objects.requireNonNull(house);
        }
    }
}
