package piecewright.plan.search;

import piecewright.plan.Setup;
import piecewright.process.Metabolism;
import piecewright.process.Psychrometrics;
import piecewright.process.Surroundings;
import piecewright.process.germination.Bed;

/** One bed of a piece and its air, with all that hangs on temperature tabulated. */
final class BedRates {
    /** Judgement: any moisture would do; the table is made at this one and divided by it. */
    private static final double USUAL_FRACTION = 0.44;

    private final Setup setup;
    private final Lying lying;
    private final Bed bed;
    private final ByTemperature heatWPerKg;
    private final ByTemperature deficitKPa;

    /**
     * How a bed lies.
     *
     * @param exposureRatio how openly: 1 bare and thin, less under a cloth
     * @param keepMoistureFraction moisture that sprinkling holds, wet basis; 0 for none
     * @param turnHours usual hours between turnings
     */
    record Lying(
            Surroundings air, double areaM2, double exposureRatio, double keepMoistureFraction, double turnHours) {}

    BedRates(Setup setup, Lying lying) {
        this.setup = setup;
        this.lying = lying;
        this.bed = new Bed(setup.models().growth());
        Metabolism metabolism = setup.models().metabolism();
        double usualRatio = Metabolism.heatMoistureRatio(USUAL_FRACTION);
        this.heatWPerKg = new ByTemperature(grainC -> metabolism.heatWPerKgDry(grainC, USUAL_FRACTION, 1) / usualRatio);
        double humidity = lying.air().humidityFraction();
        this.deficitKPa = new ByTemperature(airC -> Psychrometrics.vapourPressureDeficitKPa(airC, humidity));
    }

    Lying lying() {
        return lying;
    }

    Bed bed() {
        return bed;
    }

    Metabolism metabolism() {
        return setup.models().metabolism();
    }

    double dryMatterKg() {
        return setup.dryMatterKg();
    }

    /** Heat of respiration, W per kg of dry matter present. */
    double heatWPerKg(double grainC, double moistureFraction, double growthRatio) {
        return heatWPerKg.at(grainC)
                * Metabolism.heatMoistureRatio(moistureFraction)
                * Metabolism.activityRatio(growthRatio);
    }

    /** Vapour pressure deficit of the air at a temperature, kPa. */
    double deficitKPa(double airC) {
        return deficitKPa.at(airC);
    }
}
