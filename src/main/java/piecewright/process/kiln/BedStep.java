package piecewright.process.kiln;

/**
 * What a drying bed does at one moment.
 *
 * @param dryingPerHour water leaving, kg per kg of dry matter and hour, 0 or more
 * @param meanGrainC mean temperature of the grain, °C
 * @param topC temperature of the grain where the air leaves, °C; where it enters the grain is at the air-on
 * @param exhaustHumidityRatio kg of vapour per kg of dry air leaving
 */
public record BedStep(double dryingPerHour, double meanGrainC, double topC, double exhaustHumidityRatio) {
    BedStep withMeanGrainC(double changedC) {
        return new BedStep(dryingPerHour, changedC, topC, exhaustHumidityRatio);
    }
}
