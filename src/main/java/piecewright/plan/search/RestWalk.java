package piecewright.plan.search;

import piecewright.process.Metabolism;
import piecewright.process.Surroundings;
import piecewright.process.steep.SteepModel;

/** One air rest walked forward: scratch space of the search, mutable, used by one thread. */
final class RestWalk {
    private static final int GRAIN_C = 0;
    private static final int CORE = 1;
    private static final int OUTER = 2;
    private static final int CHIT = 3;
    private static final int GROWTH = 4;
    private static final int DRY = 5;
    private static final int DEGREE_HOURS = 6;
    private static final int RIPE_HOURS = 7;

    private final Strides walk;
    private final SteepRates rates;
    private final SteepModel steep;
    private final Metabolism metabolism;
    private final Surroundings air;
    private final double keptPerStep;
    private final double soakHours;
    private final double ripeChitRatio;

    /** @param ripeChitRatio χ at which the piece is ripe to cast */
    RestWalk(SoakWalk.Setting setting, Grain start, double atMinute, double ripeChitRatio) {
        this.walk = new Strides(
                this::step,
                Strides.USUAL_HOURS,
                atMinute,
                start.grainC(),
                start.coreRatio(),
                start.waterRatio() - start.coreRatio(),
                start.chitRatio(),
                start.growthRatio(),
                start.dryFraction(),
                0,
                0);
        this.ripeChitRatio = ripeChitRatio;
        this.rates = setting.rates();
        this.steep = rates.steep();
        this.metabolism = rates.metabolism();
        this.air = rates.air();
        this.keptPerStep = Math.exp(-Strides.USUAL_HOURS / setting.relaxHours());
        this.soakHours = start.soakHours();
    }

    private void step(double[] values, double middleHours) {
        double airC = air.airC(middleHours);
        double nextC = airC + (values[GRAIN_C] - airC) * keptPerStep;
        double meanC = (values[GRAIN_C] + nextC) / 2;
        double core = values[CORE];
        double outer = values[OUTER];
        double chit = values[CHIT];
        double equivalentPerHour = rates.theta(meanC) * steep.chitGain(chit);
        double half = steep.restPerHour(core, outer, equivalentPerHour) * Strides.USUAL_HOURS / 2;
        double drunk = Math.min(
                outer,
                Strides.USUAL_HOURS * steep.restPerHour(core + half, Math.max(0, outer - half), equivalentPerHour));
        double dry = values[DRY];
        double moisture = (core + outer) / (core + outer + dry);
        double nextChit = chit + metabolism.chitPerHour(meanC) * Strides.USUAL_HOURS;
        values[CORE] = core + drunk;
        values[OUTER] = outer - drunk;
        if (chit >= 1) values[GROWTH] += metabolism.growthPerHour(meanC, moisture) * Strides.USUAL_HOURS;
        values[DRY] = dry - dry * rates.respiredPerHour(meanC, moisture) * Strides.USUAL_HOURS;
        values[RIPE_HOURS] += Strides.hoursAbove(ripeChitRatio, chit, nextChit);
        values[CHIT] = nextChit;
        values[DEGREE_HOURS] += meanC * Strides.USUAL_HOURS;
        values[GRAIN_C] = nextC;
    }

    void to(double untilMinutes) {
        walk.to(untilMinutes);
    }

    double hours() {
        return walk.hours();
    }

    double meanC() {
        return walk.hours() > 0 ? walk.value(DEGREE_HOURS) / walk.hours() : walk.value(GRAIN_C);
    }

    /** Hours of this rest since the piece was ripe. */
    double ripeHours() {
        return walk.value(RIPE_HOURS);
    }

    double chitRatio() {
        return walk.value(CHIT);
    }

    double growthRatio() {
        return walk.value(GROWTH);
    }

    Grain grain() {
        double core = walk.value(CORE);
        double water = core + walk.value(OUTER);
        return new Grain(
                water,
                core,
                water,
                soakHours,
                walk.value(CHIT),
                walk.value(GROWTH),
                walk.value(DRY),
                walk.value(GRAIN_C));
    }
}
