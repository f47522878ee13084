package piecewright.ensemble;

import java.util.SplittableRandom;
import java.util.random.RandomGenerator;

/** One way things may be: a multiplier for each doubt, the weather's error, errors of water and dials, luck in weighing. */
public final class Member {
    /** Days of weather told apart; the last holds on. */
    static final int WEATHER_DAYS = 20;
    /** Judgement: errors of a weather forecast fade over three days: correlation exp(-1/3) from day to day. */
    private static final double DAY_CORRELATION_RATIO = Math.exp(-1.0 / 3);
    /** Judgement: water from the tap, against what the house file says. */
    private static final double WATER_SD_K = 1;

    private static final int ORDINARY = Doubt.values().length;
    private static final int DRYER = ORDINARY;
    private static final int CURER = ORDINARY + 1;
    private static final int STEWER = ORDINARY + 2;
    private static final int ROASTER = ORDINARY + 3;
    private static final int WATER = ORDINARY + 4;
    private static final int WEATHER = ORDINARY + 5;
    /** Standard normals one member is made of. */
    static final int DIMENSIONS = WEATHER + WEATHER_DAYS;

    private final double[] normals;
    private final double[] ratios;
    private final double[] weather;
    private final long noiseSeed;

    /**
     * @param normals independent standard normals, {@link #DIMENSIONS} of them; copied
     * @param noiseSeed luck of each weighing and count
     */
    Member(Belief belief, double[] normals, long noiseSeed) {
        this.normals = normals.clone();
        this.ratios = belief.ratios(normals);
        this.noiseSeed = noiseSeed;
        this.weather = new double[WEATHER_DAYS];
        double fresh = Math.sqrt(1 - DAY_CORRELATION_RATIO * DAY_CORRELATION_RATIO);
        for (int day = 0; day < WEATHER_DAYS; day++) {
            double drawn = normals[WEATHER + day];
            weather[day] = day == 0 ? drawn : DAY_CORRELATION_RATIO * weather[day - 1] + fresh * drawn;
        }
    }

    /** The multiplier of one doubt. */
    public double ratio(Doubt doubt) {
        return ratios[doubt.ordinal()];
    }

    /** The weather's error on a day of the piece, in its own standard deviations. */
    double weather(int day) {
        return weather[Math.max(0, Math.min(WEATHER_DAYS - 1, day))];
    }

    /** How much hotter the drying heater is than its dial, in standard deviations. */
    double dryer() {
        return normals[DRYER];
    }

    /** The same of the curing heater. */
    double curer() {
        return normals[CURER];
    }

    /** The same of the oven that stews. */
    double stewer() {
        return normals[STEWER];
    }

    /** The same of the oven that roasts. */
    double roaster() {
        return normals[ROASTER];
    }

    /** How much warmer the water comes than told, K. */
    double waterK() {
        return WATER_SD_K * normals[WATER];
    }

    /** Luck of weighings and counts, the same each time it is asked for. */
    RandomGenerator luck() {
        return new SplittableRandom(noiseSeed);
    }
}
