package piecewright.chart;

import java.util.Locale;
import piecewright.plan.ActKind;

/** The outlines of act markers about their middle: the shape tells the family, two letters the act. */
enum ActShape {
    DROP("M0 -12C4 -6 9 -2 9 3A9 9 0 0 1 -9 3C-9 -2 -4 -6 0 -12Z"),
    CUP("M-10 -9L10 -9L7 10L-7 10Z"),
    MOUND("M-11 10C-11 -4 -6 -10 0 -10C6 -10 11 -4 11 10Z"),
    RING("M-10 0A10 10 0 1 1 10 0A10 10 0 1 1 -10 0Z"),
    ROOF("M0 -12L11 -4L11 10L-11 10L-11 -4Z"),
    KEEL("M-11 -10L11 -10L11 4L0 12L-11 4Z"),
    GEM("M0 -12L12 0L0 12L-12 0Z");

    private final String outline;

    ActShape(String outline) {
        this.outline = outline;
    }

    String outline() {
        return outline;
    }

    static ActShape of(ActKind kind) {
        return switch (kind) {
            case SOAK, SPRINKLE -> DROP;
            case DRAIN -> CUP;
            case HEAP, FLOOR, WITHER -> MOUND;
            case LOAD, RAISE, LOWER, CURE -> ROOF;
            case OFF -> KEEL;
            case DEROOT -> GEM;
            default -> RING;
        };
    }

    /** "So" for a soak. */
    static String letters(ActKind kind) {
        String key = kind.key();
        return key.substring(0, 1).toUpperCase(Locale.ROOT) + key.substring(1, 2);
    }
}
