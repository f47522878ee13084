package piecewright.plan.search;

import piecewright.process.Metabolism;
import piecewright.process.Surroundings;
import piecewright.process.steep.SteepModel;

/** Rates of one lot in the steep and its air, with all that hangs on temperature tabulated. */
final class SteepRates {
    /** Judgement: any moisture would do; the table is made at this one and divided by it. */
    private static final double USUAL_FRACTION = 0.44;

    private final SteepModel steep;
    private final Metabolism metabolism;
    private final Surroundings air;
    private final ByTemperature theta;
    private final ByTemperature respiredPerHour;

    SteepRates(SteepModel steep, Metabolism metabolism, Surroundings air) {
        this.steep = steep;
        this.metabolism = metabolism;
        this.air = air;
        this.theta = new ByTemperature(steep::theta);
        double usualRatio = Metabolism.heatMoistureRatio(USUAL_FRACTION);
        this.respiredPerHour =
                new ByTemperature(grainC -> metabolism.steepRespiredPerHour(grainC, USUAL_FRACTION) / usualRatio);
    }

    SteepModel steep() {
        return steep;
    }

    Metabolism metabolism() {
        return metabolism;
    }

    Surroundings air() {
        return air;
    }

    double theta(double grainC) {
        return theta.at(grainC);
    }

    /** Dry matter respired in the steep per hour, share of the dry matter present. */
    double respiredPerHour(double grainC, double moistureFraction) {
        return respiredPerHour.at(grainC) * Metabolism.heatMoistureRatio(moistureFraction);
    }
}
