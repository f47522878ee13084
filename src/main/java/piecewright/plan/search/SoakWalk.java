package piecewright.plan.search;

import piecewright.process.Metabolism;
import piecewright.process.Surroundings;
import piecewright.process.steep.SteepModel;

/** One immersion walked forward in half hours: scratch space of the search, mutable, used by one thread. */
final class SoakWalk {
    /** Judgement: half an hour; tests hold the quick forms to the reference stages. */
    private static final double STEP_MINUTES = 30;

    private final SteepRates rates;
    private final SteepModel steep;
    private final Metabolism metabolism;
    private final Surroundings air;
    private final double relaxHours;
    private final double keptPerStep;
    private final Grain start;
    private final int immersion;
    private double nowMinutes;
    private double waterC;
    private double chitRatio;
    private double equivalentHours;
    private double soakHours;
    private double hours;
    private double degreeHours;
    private double chittedHours;

    SoakWalk(Setting setting, int immersion, Grain start, double atMinute) {
        this.rates = setting.rates();
        this.steep = rates.steep();
        this.metabolism = rates.metabolism();
        this.air = rates.air();
        this.relaxHours = setting.relaxHours();
        this.keptPerStep = Math.exp(-STEP_MINUTES / 60 / relaxHours);
        this.start = start;
        this.immersion = immersion;
        this.nowMinutes = atMinute;
        this.waterC = setting.startC();
        this.chitRatio = start.chitRatio();
    }

    /** Where it stands: startC water or grain at first, °C; relaxHours the time constant towards the air, hours. */
    record Setting(SteepRates rates, double startC, double relaxHours) {}

    void to(double untilMinute) {
        while (untilMinute - nowMinutes > 1e-6) {
            double stepMinutes = Math.min(STEP_MINUTES, untilMinute - nowMinutes);
            double stepHours = stepMinutes / 60;
            double airC = air.airC((nowMinutes + stepMinutes / 2) / 60);
            double kept = stepMinutes == STEP_MINUTES ? keptPerStep : Math.exp(-stepHours / relaxHours);
            double nextC = airC + (waterC - airC) * kept;
            double meanC = (waterC + nextC) / 2;
            double soaked = rates.theta(meanC) * stepHours;
            soakHours += soaked;
            equivalentHours += soaked * steep.chitGain(chitRatio);
            if (SteepModel.chitted(chitRatio)) chittedHours += stepHours;
            chitRatio += metabolism.chitPerHour(meanC) * stepHours;
            degreeHours += meanC * stepHours;
            hours += stepHours;
            waterC = nextC;
            nowMinutes += stepMinutes;
        }
    }

    double hours() {
        return hours;
    }

    double meanC() {
        return hours > 0 ? degreeHours / hours : waterC;
    }

    /** Hours under water since the corns had chitted. */
    double chittedHours() {
        return chittedHours;
    }

    /** The drained grain now. */
    Grain grain() {
        double core = steep.coreAfterSoak(start.coreRatio(), equivalentHours);
        double water = core + steep.filledOuterRatio();
        double soaked = start.soakHours() + soakHours;
        double leached =
                steep.leachedFraction(soaked, immersion) - steep.leachedFraction(start.soakHours(), immersion - 1);
        double dry = start.dryFraction() - leached;
        return new Grain(water, core, water, soaked, chitRatio, start.growthRatio(), dry, waterC);
    }
}
