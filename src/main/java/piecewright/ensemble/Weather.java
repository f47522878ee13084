package piecewright.ensemble;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import piecewright.plan.Blueprint;
import piecewright.plan.Setup;
import piecewright.process.Surroundings;

/**
 * How wrong the air's figures may be: 1 K for today, growing over a week by up to 2 K more, in proportion to how far
 * the place swings from night to day. Days are correlated, places err together.
 */
final class Weather {
    /** Judgement: air told for today is right to 1 K. */
    private static final double TODAY_SD_K = 1;
    /** Judgement: a week ahead the open air is right to 3 K, no worse later. */
    private static final double LATER_SD_K = 3;
    /** Judgement: the week. */
    private static final double LATER_DAYS = 7;
    /** Judgement: a place that swings this far from night to day follows the weather outside; a fridge does not. */
    private static final double OPEN_SWING_K = 6;

    private final int startDay;
    private final int days;
    private final double aheadDays;
    /** The same for all members: how wrong the air of each of the plan's places may be, by day. */
    private final Map<Surroundings, double[]> sdByDayK;

    Weather(Blueprint blueprint, Instant asOf) {
        this.startDay = (int) (blueprint.hours(blueprint.plan().startsAt()) / 24);
        this.days = startDay + 1 + Member.WEATHER_DAYS;
        this.aheadDays = Duration.between(asOf, blueprint.origin()).toMinutes() / (24.0 * 60);
        this.sdByDayK = new IdentityHashMap<>();
        for (Surroundings place : places(blueprint.setup())) sdByDayK.computeIfAbsent(place, this::sdByDayK);
    }

    private static List<Surroundings> places(Setup setup) {
        Setup.Air air = setup.air();
        List<Surroundings> places =
                new ArrayList<>(List.of(air.steep(), air.floor(), air.wither(), air.dryer(), air.curer()));
        setup.couching().ifPresent(couching -> places.add(couching.air()));
        setup.heaping().ifPresent(heaping -> places.add(heaping.air()));
        return places;
    }

    /** The air of a place as one member has it. */
    Surroundings of(Surroundings told, Member member) {
        double[] known = sdByDayK.get(told);
        double[] sdK = known == null ? sdByDayK(told) : known;
        double[] riseByDayK = new double[days];
        for (int day = 0; day < days; day++) riseByDayK[day] = sdK[day] * member.weather(day - startDay);
        return told.warmer(riseByDayK);
    }

    private double[] sdByDayK(Surroundings told) {
        double open = Math.min(1, meanSwingK(told) / OPEN_SWING_K);
        double[] sdK = new double[days];
        for (int day = 0; day < days; day++) {
            double share = Math.max(0, Math.min(1, (aheadDays + day) / LATER_DAYS));
            sdK[day] = TODAY_SD_K + (LATER_SD_K - TODAY_SD_K) * share * open;
        }
        return sdK;
    }

    /** Mean of daily highs over daily lows in the first week, K. */
    private double meanSwingK(Surroundings told) {
        double sumK = 0;
        int week = 7;
        for (int day = startDay; day < startDay + week; day++) {
            double lowC = Double.POSITIVE_INFINITY;
            double highC = Double.NEGATIVE_INFINITY;
            for (int hour = 0; hour < 24; hour += 2) {
                double airC = told.airC(24.0 * day + hour);
                lowC = Math.min(lowC, airC);
                highC = Math.max(highC, airC);
            }
            sumK += highC - lowC;
        }
        return sumK / week;
    }
}
