package piecewright.plan.search;

import piecewright.plan.Setup;
import piecewright.process.GrainMass;
import piecewright.process.Metabolism;
import piecewright.process.Psychrometrics;
import piecewright.process.Surroundings;
import piecewright.process.germination.Bed;

/**
 * A bed on the floor or withering, walked forward in half hours: scratch space of the search, mutable, used by one
 * thread. Turnings are smeared out (the mean temperature they leave), sprinkling holds the moisture the style keeps.
 */
final class BedWalk {
    /** Judgement: half an hour; tests hold the quick forms to the reference stages. */
    private static final double STEP_MINUTES = 30;

    private final Metabolism metabolism;
    private final Bed bed;
    private final Surroundings air;
    private final double areaM2;
    private final double dryMatterKg;
    private final double exposureRatio;
    private final double keepRatio;
    private final double turnHours;
    private double nowMinutes;
    private Grain grain;
    private double warmestC;
    private double hours;
    private double degreeHours;

    /**
     * @param exposureRatio how openly it lies: 1 bare and thin, less under a cloth
     * @param keepMoistureFraction moisture that sprinkling holds, wet basis; 0 for none
     * @param turnHours usual hours between turnings
     */
    record Setting(
            Setup setup,
            Surroundings air,
            double areaM2,
            double exposureRatio,
            double keepMoistureFraction,
            double turnHours) {}

    BedWalk(Setting setting, Grain start, double atMinute) {
        this.metabolism = setting.setup().models().metabolism();
        this.bed = new Bed(setting.setup().models().growth());
        this.air = setting.air();
        this.areaM2 = setting.areaM2();
        this.dryMatterKg = setting.setup().dryMatterKg();
        this.exposureRatio = setting.exposureRatio();
        double keep = setting.keepMoistureFraction();
        this.keepRatio = keep / (1 - keep);
        this.turnHours = setting.turnHours();
        this.grain = start;
        this.nowMinutes = atMinute;
        this.warmestC = start.grainC();
    }

    void to(double untilMinute) {
        while (untilMinute - nowMinutes > 1e-6) {
            double stepMinutes = Math.min(STEP_MINUTES, untilMinute - nowMinutes);
            step(stepMinutes / 60);
            nowMinutes += stepMinutes;
        }
    }

    private void step(double stepHours) {
        double airC = air.airC((nowMinutes + stepHours * 30) / 60);
        double moisture = grain.moistureFraction();
        double heatW = metabolism.heatWPerKgDry(grain.grainC(), moisture, grain.growthRatio());
        GrainMass mass = mass();
        double nextC = warmed(mass, airC, heatW, stepHours);
        double meanC = (grain.grainC() + nextC) / 2;
        double dryFraction = grain.dryFraction();
        double respired = dryFraction * Metabolism.respiredPerHour(heatW) * stepHours;
        double vpdKPa = Psychrometrics.vapourPressureDeficitKPa(airC, air.humidityFraction());
        double laidM = bed.laidDepthM(mass, areaM2);
        double lost = dryFraction
                * stepHours
                * bed.waterLossPerHour(grain.waterRatio() / dryFraction, vpdKPa, laidM, exposureRatio);
        double dry = dryFraction - respired;
        double kept = Math.min(grain.waterRatio(), keepRatio * dry);
        double water = Math.max(kept, grain.waterRatio() - lost + Metabolism.WATER_FORMED_RATIO * respired);
        boolean growing = grain.chitRatio() >= 1;
        double growth = grain.growthRatio() + (growing ? metabolism.growthPerHour(meanC, moisture) * stepHours : 0);
        double chit = grain.chitRatio() + metabolism.chitPerHour(meanC) * stepHours;
        grain = new Grain(water, grain.coreRatio(), water, grain.soakHours(), chit, growth, dry, nextC);
        warmestC = Math.max(warmestC, nextC);
        degreeHours += meanC * stepHours;
        hours += stepHours;
    }

    /** Temperature a step later, turnings smeared out over their usual gap. */
    private double warmed(GrainMass mass, double airC, double heatWPerKg, double stepHours) {
        double depthM = bed.depthM(mass, areaM2);
        double dryKgPerM2 = mass.dryMatterKg() / areaM2;
        double perHour = bed.warmingKPerHour(0, 1, depthM, dryKgPerM2, mass.dryBasisRatio());
        double tauHours = -1 / perHour;
        double turned = 1 - 0.5 * tauHours / turnHours * (1 - Math.exp(-turnHours / tauHours));
        double steadyC = airC + turned * bed.steadyRiseK(heatWPerKg, depthM, dryKgPerM2);
        return steadyC + (grain.grainC() - steadyC) * Math.exp(-stepHours / tauHours);
    }

    private GrainMass mass() {
        return new GrainMass(dryMatterKg, dryMatterKg * grain.dryFraction(), dryMatterKg * grain.waterRatio());
    }

    double hours() {
        return hours;
    }

    double meanC() {
        return hours > 0 ? degreeHours / hours : grain.grainC();
    }

    double warmestC() {
        return warmestC;
    }

    Grain grain() {
        return grain;
    }
}
