package piecewright.process.germination;

import piecewright.process.GrainMass;
import piecewright.process.GrowthState;
import piecewright.process.Metabolism;
import piecewright.process.PieceState;
import piecewright.process.Psychrometrics;
import piecewright.process.RungeKutta;
import piecewright.process.SteepState;
import piecewright.process.Surroundings;

/** A piece alive on an area or in a heap: warmth, water, breath, chit, growth and rootlets together, one step at a time. */
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
    private final Lying lying;

    /** What warms and cools it: K/h of so much dry matter and water, so much warmer than the air. */
    private interface Warming {
        double kPerHour(double heatWPerKg, double riseK, double dryKg, double waterKg);
    }

    /** How it lies: on what area, how openly, and what warms it. */
    private record Lying(double areaM2, double exposureRatio, Warming warming) {}

    /** A level bed that fills its area. */
    GrowingPiece(Metabolism metabolism, Bed bed, Surroundings surroundings, double areaM2, double exposureRatio) {
        this(metabolism, bed, surroundings, new Lying(areaM2, exposureRatio, (heatWPerKg, riseK, dryKg, waterKg) -> {
            double depthM = (waterKg + dryKg) / (bed.parameters().bulkKgPerM3() * areaM2);
            return bed.warmingKPerHour(heatWPerKg, riseK, depthM, dryKg / areaM2, waterKg / dryKg);
        }));
    }

    /** A heap. */
    GrowingPiece(Metabolism metabolism, Bed bed, Surroundings surroundings, Heap heap, double exposureRatio) {
        this(
                metabolism,
                bed,
                surroundings,
                new Lying(
                        heap.areaM2(),
                        exposureRatio,
                        (heatWPerKg, riseK, dryKg, waterKg) ->
                                Bed.warmingKPerHour(heatWPerKg * dryKg, heap.lossWPerK() * riseK, dryKg, waterKg)));
    }

    private GrowingPiece(Metabolism metabolism, Bed bed, Surroundings surroundings, Lying lying) {
        if (!(lying.areaM2() > 0)) throw new IllegalArgumentException("areaM2 must be above 0: " + lying.areaM2());
        this.metabolism = metabolism;
        this.bed = bed;
        this.surroundings = surroundings;
        this.lying = lying;
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
        double riseK = grainC - surroundings.airC(atHours);
        double laidDepthM = bed.laidDepthM(start, lying.areaM2());
        slope[GRAIN_C] = lying.warming().kPerHour(heatWPerKg, riseK, dryKg, waterKg);
        slope[EVAPORATED_KG] =
                dryKg * bed.waterLossPerHour(dryBasisRatio, deficitKPa, laidDepthM, lying.exposureRatio());
        slope[RESPIRED_KG] = dryKg * Metabolism.respiredPerHour(heatWPerKg);
        slope[CHIT] = metabolism.chitPerHour(grainC);
        boolean growing = now[CHIT] >= 1;
        slope[GROWTH] = growing ? metabolism.growthPerHour(grainC, moistureFraction) : 0;
        slope[ROOTLET_DAYS] = growing && Metabolism.growthMoistureRatio(moistureFraction) > 0
                ? metabolism.rootletDaysPerHour(grainC)
                : 0;
    }
}
