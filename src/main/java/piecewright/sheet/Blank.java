package piecewright.sheet;

import java.util.List;
import piecewright.plan.ActKind;

/** What is left blank at an act for the person to fill in, beside the time. */
enum Blank {
    WEIGHT,
    GRAIN_TEMPERATURE,
    ACROSPIRE,
    WATER_TEMPERATURE,
    SMELL,
    COLOUR;

    static List<Blank> of(ActKind kind) {
        return switch (kind) {
            case SOAK -> List.of(WATER_TEMPERATURE);
            case DRAIN, OFF, RAISE, LOWER, CURE, BREAK -> List.of(WEIGHT, GRAIN_TEMPERATURE);
            case HEAP, FLOOR, STIR -> List.of(GRAIN_TEMPERATURE);
            case LOOK, CHECK -> List.of(GRAIN_TEMPERATURE, SMELL);
            case TURN, SPRINKLE -> List.of(GRAIN_TEMPERATURE, ACROSPIRE);
            case DEROOT -> List.of(WEIGHT);
            case ROAST -> List.of(WEIGHT, COLOUR);
            case WITHER, PACK, STEW, LOAD -> List.of(WEIGHT, GRAIN_TEMPERATURE, ACROSPIRE);
        };
    }
}
