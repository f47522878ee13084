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
 * @param frame where the window stood; empty before it was ever shown
 * @param batch the file of the batch that was looked at, as text
 */
public record SavedWindow(
        String theme,
        int textPercent,
        UnitSystem units,
        ColourUnit colour,
        Optional<SavedWish> wish,
        Optional<Frame> frame,
        Optional<String> batch) {
    public SavedWindow {
        Objects.requireNonNull(theme);
        Objects.requireNonNull(units);
        Objects.requireNonNull(colour);
        Objects.requireNonNull(wish);
        Objects.requireNonNull(frame);
        Objects.requireNonNull(batch);
    }

    /** A window on the screen: its upper left corner and its size, pixels; whether it fills the screen. */
    public record Frame(double x, double y, double width, double height, boolean full) {}

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
