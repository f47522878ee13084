package piecewright.plan.search;

import piecewright.process.Metabolism;
import piecewright.process.Surroundings;
import piecewright.process.steep.SteepModel;

/** One immersion walked forward: scratch space of the search, mutable, used by one thread. */
final class SoakWalk {
    private static final int WATER_C = 0;
    private static final int CHIT = 1;
    private static final int EQUIVALENT_HOURS = 2;
    private static final int SOAK_HOURS = 3;
    private static final int DEGREE_HOURS = 4;
    private static final int CHITTED_HOURS = 5;

    private final Strides walk;
    private final SteepRates rates;
    private final SteepModel steep;
    private final Metabolism metabolism;
    private final Surroundings air;
    private final double keptPerStep;
    private final Grain start;
    private final int immersion;

    SoakWalk(Setting setting, int immersion, Grain start, double atMinute) {
        this.walk =
                new Strides(this::step, Strides.USUAL_HOURS, atMinute, setting.startC(), start.chitRatio(), 0, 0, 0, 0);
        this.rates = setting.rates();
        this.steep = rates.steep();
        this.metabolism = rates.metabolism();
        this.air = rates.air();
        this.keptPerStep = Math.exp(-Strides.USUAL_HOURS / setting.relaxHours());
        this.start = start;
        this.immersion = immersion;
    }

    /** Where it stands: startC water or grain at first, °C; relaxHours the time constant towards the air, hours. */
    record Setting(SteepRates rates, double startC, double relaxHours) {}

    private void step(double[] values, double middleHours) {
        double airC = air.airC(middleHours);
        double nextC = airC + (values[WATER_C] - airC) * keptPerStep;
        double meanC = (values[WATER_C] + nextC) / 2;
        double soaked = rates.theta(meanC) * Strides.USUAL_HOURS;
        double chit = values[CHIT];
        double nextChit = chit + metabolism.chitPerHour(meanC) * Strides.USUAL_HOURS;
        values[SOAK_HOURS] += soaked;
        values[EQUIVALENT_HOURS] += soaked * steep.chitGain(chit);
        values[CHITTED_HOURS] += Strides.hoursAbove(SteepModel.CHITTED_AT_RATIO, chit, nextChit);
        values[CHIT] = nextChit;
        values[DEGREE_HOURS] += meanC * Strides.USUAL_HOURS;
        values[WATER_C] = nextC;
    }

    void to(double untilMinutes) {
        walk.to(untilMinutes);
    }

    double hours() {
        return walk.hours();
    }

    double meanC() {
        return walk.hours() > 0 ? walk.value(DEGREE_HOURS) / walk.hours() : walk.value(WATER_C);
    }

    /** Hours under water since the corns had chitted. */
    double chittedHours() {
        return walk.value(CHITTED_HOURS);
    }

    /** The drained grain now. */
    Grain grain() {
        double core = steep.coreAfterSoak(start.coreRatio(), walk.value(EQUIVALENT_HOURS));
        double water = core + steep.filledOuterRatio();
        double soaked = start.soakHours() + walk.value(SOAK_HOURS);
        double leached =
                steep.leachedFraction(soaked, immersion) - steep.leachedFraction(start.soakHours(), immersion - 1);
        double dry = start.dryFraction() - leached;
        return new Grain(water, core, water, soaked, walk.value(CHIT), start.growthRatio(), dry, walk.value(WATER_C));
    }
}
