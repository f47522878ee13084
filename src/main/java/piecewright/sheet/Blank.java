package piecewright.sheet;

import java.util.List;
import piecewright.plan.ActKind;

/** What is left blank at an act for the person to fill in, beside the time. */
enum Blank {
    WEIGHT,
    GRAIN_TEMPERATURE,
    ACROSPIRE,
    WATER_TEMPERATURE;

    static List<Blank> of(ActKind kind) {
        return switch (kind) {
            case SOAK -> List.of(WATER_TEMPERATURE);
            case DRAIN, OFF -> List.of(WEIGHT, GRAIN_TEMPERATURE);
            case HEAP, LOOK, FLOOR, STIR -> List.of(GRAIN_TEMPERATURE);
            case TURN, SPRINKLE -> List.of(GRAIN_TEMPERATURE, ACROSPIRE);
            case DEROOT -> List.of(WEIGHT);
            case RAISE, CURE -> List.of(WEIGHT, GRAIN_TEMPERATURE);
            default -> List.of(WEIGHT, GRAIN_TEMPERATURE, ACROSPIRE);
        };
    }
}
