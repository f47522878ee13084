package piecewright.belief;

import piecewright.house.Heater.HotAir;
import piecewright.process.kiln.DryingParameters;
import piecewright.process.kiln.KilnParameters;

/**
 * The kiln by which gates are planned: its malt is as wet as that of the slowest tenth of what is believed. Drying takes
 * as much longer as air and kernels together are slower, so the logarithms of both are moved to the most probable place
 * where their sum is in its lowest tenth; how sure each is and whether they were told apart decides how far each goes.
 *
 * @param flowRatio the slow kiln's air flow as a multiple of the expected, (0, 1] unless they are strongly opposed
 * @param kernelRatio likewise how readily its kernels give up water
 */
public record SlowKiln(double flowRatio, double kernelRatio) {
    /** The slow kiln among those believed in, for one heater and one lot. */
    public static SlowKiln of(Belief belief, Unknown flow, Unknown kernels) {
        double flowSd = belief.axisSd(flow);
        double kernelSd = belief.axisSd(kernels);
        double shared = belief.correlation(flow, kernels) * flowSd * kernelSd;
        double sumSd = Math.sqrt(flowSd * flowSd + 2 * shared + kernelSd * kernelSd);
        double deviations = Interval.TENTH_SD / sumSd;
        return new SlowKiln(
                Math.exp(-deviations * (flowSd * flowSd + shared)),
                Math.exp(-deviations * (kernelSd * kernelSd + shared)));
    }

    /** Air flow of the slow kiln, m³/h. */
    public double flowM3PerHour(HotAir air) {
        return air.airFlowM3PerHour() * flowRatio;
    }

    /** The slow kiln's air. */
    public HotAir slow(HotAir air) {
        return air.withAirFlowM3PerHour(flowM3PerHour(air));
    }

    /** Parameters of the slow kiln. */
    public KilnParameters slow(KilnParameters parameters) {
        DryingParameters drying = parameters.drying();
        return parameters.withDrying(drying.withKernelRatio(drying.kernelRatio() * kernelRatio));
    }
}
