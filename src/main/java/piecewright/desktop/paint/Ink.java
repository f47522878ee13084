package piecewright.desktop.paint;

import java.util.Locale;

/** The colours of the theme that something painted by hand may use; a style sheet gives each its value. */
public enum Ink {
    PAPER,
    SURFACE,
    SUNKEN,
    NIGHT,
    HATCH,
    GRID,
    LINE,
    EDGE,
    INK,
    INK_2,
    INK_3,
    DAMSON,
    DAMSON_SOFT,
    ON_DAMSON,
    WATER,
    RASPBERRY,
    SLATE,
    LEAF,
    CAUTION,
    STOP,
    FILL_SOAK,
    FILL_COUCH,
    FILL_FLOOR,
    FILL_KILN;

    /** Name of the property in style sheets, such as "-ink-fill-soak". */
    String property() {
        return "-ink-" + name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
}
