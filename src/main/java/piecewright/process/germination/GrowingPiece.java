package piecewright.process.germination;

import piecewright.process.GrainMass;
import piecewright.process.GrowthState;
import piecewright.process.Metabolism;
import piecewright.process.PieceState;
import piecewright.process.Psychrometrics;
import piecewright.process.RungeKutta;
import piecewright.process.SteepState;
import piecewright.process.Surroundings;

/** A piece alive on an area: warmth, water, breath, chit, growth and rootlets together, one step at a time. */
final class GrowingPiece {
    private static final int GRAIN_C = 0;
    private static final int EVAPORATED_KG = 1;
    private static final int RESPIRED_KG = 2;
    private static final int CHIT = 3;
    private static final int GROWTH = 4;
    private static final int ROOTLET_DAYS = 5;

    private final Metabolism metabolism;
    private final Bed bed;
    private final Surroundings surroundings;
    private final double areaM2;
    private final double exposureRatio;

    GrowingPiece(Metabolism metabolism, Bed bed, Surroundings surroundings, double areaM2, double exposureRatio) {
        if (!(areaM2 > 0)) throw new IllegalArgumentException("areaM2 must be above 0: " + areaM2);
        this.metabolism = metabolism;
        this.bed = bed;
        this.surroundings = surroundings;
        this.areaM2 = areaM2;
        this.exposureRatio = exposureRatio;
    }

    PieceState step(PieceState start, double atHours, double stepHours) {
        double deficitKPa = Psychrometrics.vapourPressureDeficitKPa(
                surroundings.airC(atHours + stepHours / 2), surroundings.humidityFraction());
        GrowthState growth = start.growth();
        SteepState steep = start.steep();
        double[] y = {start.grainC(), 0, 0, steep.chitRatio(), growth.growthRatio(), growth.rootletDays()};
        double[] end = RungeKutta.step(
                y, atHours, stepHours, (hours, now, slope) -> slope(start.mass(), hours, deficitKPa, now, slope));
        PieceState aired = Metabolism.bookEvaporation(start, end[EVAPORATED_KG]);
        return Metabolism.bookRespiration(aired, end[RESPIRED_KG])
                .withSteep(new SteepState(
                        steep.coreRatio(), steep.outerRatio(), steep.soakHours(), steep.waterChanges(), end[CHIT]))
                .withGrowth(new GrowthState(end[GROWTH], end[ROOTLET_DAYS]))
                .withGrainC(end[GRAIN_C]);
    }

    private void slope(GrainMass start, double atHours, double deficitKPa, double[] now, double[] slope) {
        double dryKg = start.dryMatterKg() - now[RESPIRED_KG];
        double waterKg = start.waterKg() - now[EVAPORATED_KG] + Metabolism.WATER_FORMED_RATIO * now[RESPIRED_KG];
        double grainC = now[GRAIN_C];
        double dryBasisRatio = waterKg / dryKg;
        double moistureFraction = waterKg / (waterKg + dryKg);
        double heatWPerKg = metabolism.heatWPerKgDry(grainC, moistureFraction, now[GROWTH]);
        double depthM = (waterKg + dryKg) / (bed.parameters().bulkKgPerM3() * areaM2);
        double riseK = grainC - surroundings.airC(atHours);
        double laidDepthM = bed.laidDepthM(start, areaM2);
        slope[GRAIN_C] = bed.warmingKPerHour(heatWPerKg, riseK, depthM, dryKg / areaM2, dryBasisRatio);
        slope[EVAPORATED_KG] = dryKg * bed.waterLossPerHour(dryBasisRatio, deficitKPa, laidDepthM, exposureRatio);
        slope[RESPIRED_KG] = dryKg * Metabolism.respiredPerHour(heatWPerKg);
        slope[CHIT] = metabolism.chitPerHour(grainC);
        boolean growing = now[CHIT] >= 1;
        slope[GROWTH] = growing ? metabolism.growthPerHour(grainC, moistureFraction) : 0;
        slope[ROOTLET_DAYS] = growing && Metabolism.growthMoistureRatio(moistureFraction) > 0
                ? metabolism.rootletDaysPerHour(grainC)
                : 0;
    }
}
