package piecewright.grain;

import java.util.OptionalDouble;

/**
 * How fast this lot drinks and grows, where known; each empty until learned from weighings or counts.
 *
 * @param steepRateRatio multiplier m of the reference water uptake rate, [0.4, 3]
 * @param saturationRatio Xe, kg water per kg dry matter at saturation, [0.8, 1.4]
 * @param burstRatio B, kg/kg taken up at once by husk and embryo, [0.05, 0.2]
 * @param growthRateRatio multiplier ρ of the reference growth rate, [0.4, 2.5]
 * @param respirationRatio multiplier of the heat of respiration, [0.3, 3]
 * @param kernelRatio κ, how readily kernels dry, [0.2, 2]
 */
public record LotTraits(
        OptionalDouble steepRateRatio,
        OptionalDouble saturationRatio,
        OptionalDouble burstRatio,
        OptionalDouble growthRateRatio,
        OptionalDouble respirationRatio,
        OptionalDouble kernelRatio) {
    public LotTraits {
        inRange("steepRateRatio", steepRateRatio, 0.4, 3);
        inRange("saturationRatio", saturationRatio, 0.8, 1.4);
        inRange("burstRatio", burstRatio, 0.05, 0.2);
        inRange("growthRateRatio", growthRateRatio, 0.4, 2.5);
        inRange("respirationRatio", respirationRatio, 0.3, 3);
        inRange("kernelRatio", kernelRatio, 0.2, 2);
    }

    /** What a person may state of a lot; respiration and drying are only ever learned. */
    public LotTraits(
            OptionalDouble steepRateRatio,
            OptionalDouble saturationRatio,
            OptionalDouble burstRatio,
            OptionalDouble growthRateRatio) {
        this(
                steepRateRatio,
                saturationRatio,
                burstRatio,
                growthRateRatio,
                OptionalDouble.empty(),
                OptionalDouble.empty());
    }

    /** Nothing learned yet. */
    public static LotTraits unknown() {
        OptionalDouble none = OptionalDouble.empty();
        return new LotTraits(none, none, none, none);
    }

    /** The same with another steep rate. */
    public LotTraits withSteepRateRatio(double changedRatio) {
        return new LotTraits(OptionalDouble.of(changedRatio), saturationRatio, burstRatio, growthRateRatio);
    }

    private static void inRange(String name, OptionalDouble value, double low, double high) {
        if (value.isPresent() && !(value.getAsDouble() >= low && value.getAsDouble() <= high)) {
            throw new IllegalArgumentException(
                    name + " must be in [" + low + ", " + high + "]: " + value.getAsDouble());
        }
    }
}
