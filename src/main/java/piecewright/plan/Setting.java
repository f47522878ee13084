package piecewright.plan;

import java.util.Optional;
import java.util.OptionalDouble;

/**
 * What the act sets or uses.
 *
 * @param place where, or the kit item by name
 * @param setC temperature to set (air-on) or of the water to fill in, °C
 * @param waterL water to fill in or sprinkle, litres
 * @param depthCm bed depth to spread to, cm
 * @param limitC grain no warmer than this, °C: act at once if it is
 * @param gateFraction moisture (wet basis) at or below which alone the act may happen; weigh first
 */
public record Setting(
        Optional<String> place,
        OptionalDouble setC,
        OptionalDouble waterL,
        OptionalDouble depthCm,
        OptionalDouble gateFraction,
        OptionalDouble limitC) {
    public static Setting at(String place) {
        OptionalDouble none = OptionalDouble.empty();
        return new Setting(Optional.of(place), none, none, none, none, none);
    }

    public Setting withSetC(double changedC) {
        return new Setting(place, OptionalDouble.of(changedC), waterL, depthCm, gateFraction, limitC);
    }

    public Setting withWaterL(double changedL) {
        return new Setting(place, setC, OptionalDouble.of(changedL), depthCm, gateFraction, limitC);
    }

    public Setting withDepthCm(double changedCm) {
        return new Setting(place, setC, waterL, OptionalDouble.of(changedCm), gateFraction, limitC);
    }

    public Setting withGateFraction(double changedFraction) {
        return new Setting(place, setC, waterL, depthCm, OptionalDouble.of(changedFraction), limitC);
    }

    public Setting withLimitC(double changedC) {
        return new Setting(place, setC, waterL, depthCm, gateFraction, OptionalDouble.of(changedC));
    }
}
