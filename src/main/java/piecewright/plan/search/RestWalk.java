package piecewright.plan.search;

import piecewright.process.Metabolism;
import piecewright.process.Surroundings;
import piecewright.process.steep.SteepModel;

/** One air rest walked forward in half hours: scratch space of the search, mutable, used by one thread. */
final class RestWalk {
    /** Judgement: half an hour; tests hold the quick forms to the reference stages. */
    private static final double STEP_MINUTES = 30;

    private final SteepRates rates;
    private final SteepModel steep;
    private final Metabolism metabolism;
    private final Surroundings air;
    private final double relaxHours;
    private final double keptPerStep;
    private final double soakHours;
    private double nowMinutes;
    private double grainC;
    private double coreRatio;
    private double outerRatio;
    private double chitRatio;
    private double growthRatio;
    private double dryFraction;
    private double hours;
    private double degreeHours;
    private double ripeHours;
    private final double ripeChitRatio;

    /** @param ripeChitRatio χ at which the piece is ripe to cast */
    RestWalk(SoakWalk.Setting setting, Grain start, double atMinute, double ripeChitRatio) {
        this.ripeChitRatio = ripeChitRatio;
        this.rates = setting.rates();
        this.steep = rates.steep();
        this.metabolism = rates.metabolism();
        this.air = rates.air();
        this.relaxHours = setting.relaxHours();
        this.keptPerStep = Math.exp(-STEP_MINUTES / 60 / relaxHours);
        this.soakHours = start.soakHours();
        this.nowMinutes = atMinute;
        this.grainC = start.grainC();
        this.coreRatio = start.coreRatio();
        this.outerRatio = start.waterRatio() - start.coreRatio();
        this.chitRatio = start.chitRatio();
        this.growthRatio = start.growthRatio();
        this.dryFraction = start.dryFraction();
    }

    void to(double untilMinute) {
        while (untilMinute - nowMinutes > 1e-6) {
            double stepMinutes = Math.min(STEP_MINUTES, untilMinute - nowMinutes);
            step(stepMinutes);
            nowMinutes += stepMinutes;
        }
    }

    private void step(double stepMinutes) {
        double stepHours = stepMinutes / 60;
        double airC = air.airC((nowMinutes + stepMinutes / 2) / 60);
        double kept = stepMinutes == STEP_MINUTES ? keptPerStep : Math.exp(-stepHours / relaxHours);
        double nextC = airC + (grainC - airC) * kept;
        double meanC = (grainC + nextC) / 2;
        double equivalentPerHour = rates.theta(meanC) * steep.chitGain(chitRatio);
        double half = steep.restPerHour(coreRatio, outerRatio, equivalentPerHour) * stepHours / 2;
        double drunk = Math.min(
                outerRatio,
                stepHours * steep.restPerHour(coreRatio + half, Math.max(0, outerRatio - half), equivalentPerHour));
        coreRatio += drunk;
        outerRatio -= drunk;
        double moisture = (coreRatio + outerRatio) / (coreRatio + outerRatio + dryFraction);
        if (chitRatio >= 1) growthRatio += metabolism.growthPerHour(meanC, moisture) * stepHours;
        dryFraction -= dryFraction * rates.respiredPerHour(meanC, moisture) * stepHours;
        if (chitRatio >= ripeChitRatio) ripeHours += stepHours;
        chitRatio += metabolism.chitPerHour(meanC) * stepHours;
        degreeHours += meanC * stepHours;
        hours += stepHours;
        grainC = nextC;
    }

    double hours() {
        return hours;
    }

    double meanC() {
        return hours > 0 ? degreeHours / hours : grainC;
    }

    /** Hours of this rest since the piece was ripe. */
    double ripeHours() {
        return ripeHours;
    }

    double chitRatio() {
        return chitRatio;
    }

    double growthRatio() {
        return growthRatio;
    }

    Grain grain() {
        double water = coreRatio + outerRatio;
        return new Grain(water, coreRatio, water, soakHours, chitRatio, growthRatio, dryFraction, grainC);
    }
}
