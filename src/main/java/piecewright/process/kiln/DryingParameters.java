package piecewright.process.kiln;

import java.util.Objects;

/**
 * How fast kernels give up water to air that carries it away.
 *
 * @param kernelRatio κ, this malt's kernels against the barley of the rate law, more than 0
 * @param frequencyPerHour rate constant at endless temperature, per hour, more than 0
 * @param activationK activation energy over the gas constant, K, 0 or more
 * @param wettestFraction relative humidity at which air leaves wet grain, (0, 1)
 * @param bound how the last water holds on
 */
public record DryingParameters(
        double kernelRatio, double frequencyPerHour, double activationK, double wettestFraction, Bound bound) {
    /**
     * Judgement: fitted so that thin layers of malt take as long as reported (540 to 840 min at 50 to 70 °C, Carvalho
     * et al. 2021, abstract); band 0.4 to 1.0.
     */
    public static final double KERNEL_RATIO = 0.7;
    /**
     * Judgement: 139.3 per second of O'Callaghan, Menzies and Bailey 1971, J. Agric. Eng. Res. 16, from memory; within
     * 30 % of Sasaki and Kanzaki 1972 at 45 to 70 °C.
     */
    public static final double FREQUENCY_PER_HOUR = 139.3 * 3600;
    /** Judgement: O'Callaghan, Menzies and Bailey 1971, from memory (36.8 kJ/mol). */
    public static final double ACTIVATION_K = 4426;
    /** Judgement: exhaust of a wet bed is as good as saturated. */
    public static final double WETTEST_FRACTION = 0.995;

    public DryingParameters {
        if (!(kernelRatio > 0)) throw new IllegalArgumentException("kernelRatio must be above 0: " + kernelRatio);
        if (!(frequencyPerHour > 0)) {
            throw new IllegalArgumentException("frequencyPerHour must be above 0: " + frequencyPerHour);
        }
        if (!(activationK >= 0)) throw new IllegalArgumentException("activationK must be 0 or more: " + activationK);
        if (!(wettestFraction > 0 && wettestFraction < 1)) {
            throw new IllegalArgumentException("wettestFraction must be in (0, 1): " + wettestFraction);
        }
        Objects.requireNonNull(bound);
    }

    public static DryingParameters defaults() {
        return new DryingParameters(KERNEL_RATIO, FREQUENCY_PER_HOUR, ACTIVATION_K, WETTEST_FRACTION, Bound.defaults());
    }

    public DryingParameters withKernelRatio(double changedRatio) {
        return new DryingParameters(changedRatio, frequencyPerHour, activationK, wettestFraction, bound);
    }

    /**
     * Below a moisture the kernels' rate falls as a power of the moisture over it.
     *
     * @param belowRatio that moisture, kg of water per kg of dry matter, more than 0
     * @param steepnessRatio the power, 0 or more; 0 leaves the rate alone
     */
    public record Bound(double belowRatio, double steepnessRatio) {
        /** Judgement: 5 % wet basis; the rate law is used unchanged above it. */
        public static final double BELOW_RATIO = 5.0 / 95;
        /**
         * Judgement: without it cures would end bone dry; with it they end near 3.5 %, between the published 5 %
         * (lager) and 2 % (ale) of Young, Beer, Encyclopaedia Britannica.
         */
        public static final double STEEPNESS_RATIO = 10;

        public Bound {
            if (!(belowRatio > 0)) throw new IllegalArgumentException("belowRatio must be above 0: " + belowRatio);
            if (!(steepnessRatio >= 0)) {
                throw new IllegalArgumentException("steepnessRatio must be 0 or more: " + steepnessRatio);
            }
        }

        static Bound defaults() {
            return new Bound(BELOW_RATIO, STEEPNESS_RATIO);
        }

        /** Share of the rate that is left at a dry-basis moisture. */
        double rateRatio(double dryBasisRatio) {
            return dryBasisRatio >= belowRatio ? 1 : Math.pow(Math.max(0, dryBasisRatio) / belowRatio, steepnessRatio);
        }
    }
}
