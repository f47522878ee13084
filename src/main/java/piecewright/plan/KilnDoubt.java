package piecewright.plan;

import piecewright.house.Heater.HotAir;
import piecewright.process.kiln.KilnParameters;

/**
 * The slow kiln by which gates are planned: its moisture is what nine kilns in ten are at or below. Air flow and kernel
 * rate are both lowered by so much that together they make the slowest tenth.
 */
public final class KilnDoubt {
    /** Judgement: standard deviation of the logarithm of a home kiln's air flow, never measured. */
    public static final double UNMEASURED_LN_RATIO = 0.35;
    /** Judgement: the same after two weighings. */
    public static final double MEASURED_LN_RATIO = 0.10;
    /** Judgement: standard deviation of the logarithm of the kernels' rate. */
    public static final double KERNEL_LN_RATIO = 0.35;
    /** Source: 90th percentile of the normal distribution, 1.2816, shared evenly between two independent causes. */
    private static final double SHARED_DEVIATIONS_RATIO = 1.2816 / Math.sqrt(2);

    private KilnDoubt() {}

    /** Air flow of the slow kiln, m³/h. */
    public static double slowFlowM3PerHour(HotAir air) {
        double deviation = air.flowMeasured() ? MEASURED_LN_RATIO : UNMEASURED_LN_RATIO;
        return air.airFlowM3PerHour() * Math.exp(-SHARED_DEVIATIONS_RATIO * deviation);
    }

    /** The slow kiln's air. */
    public static HotAir slow(HotAir air) {
        return air.withAirFlowM3PerHour(slowFlowM3PerHour(air));
    }

    /** Parameters of the slow kiln. */
    public static KilnParameters slow(KilnParameters parameters) {
        double ratio = parameters.drying().kernelRatio() * Math.exp(-SHARED_DEVIATIONS_RATIO * KERNEL_LN_RATIO);
        return parameters.withDrying(parameters.drying().withKernelRatio(ratio));
    }
}
