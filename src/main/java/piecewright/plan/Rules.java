package piecewright.plan;

import piecewright.style.MaltStyle;

/**
 * What a plan costs and what it may never do: one method per rule. A rule returns cost-minutes, 0 or more; infinite
 * means never. To change how plans come out, change a rule here; to see what an act paid, ask for its rules one by one.
 */
public final class Rules {
    /** Judgement: a longer piece is a nuisance, but a mild one: a day costs as much as six minutes of work. */
    private static final double DAY_COST_MINUTES = 6;
    /** Judgement: each day of rest lost below what the style prefers. */
    private static final double LOST_REST_COST_MINUTES_PER_DAY = 15;
    /** Judgement: each day the malt lies ready longer than anybody asked. */
    private static final double IDLE_COST_MINUTES_PER_DAY = 10;
    /** Judgement: each percentage point of steep-out moisture away from the style's target. */
    private static final double MOISTURE_COST_MINUTES_PER_POINT = 20;
    /** Judgement: within half a point of the target nobody can tell the difference. */
    private static final double MOISTURE_FREE_FRACTION = 0.005;
    /** Judgement: nor within a twentieth of acrospire. */
    private static final double GROWTH_FREE_FRACTION = 0.05;
    /** Judgement: each tenth of acrospire away from the style's target. */
    private static final double GROWTH_COST_MINUTES_PER_TENTH = 20;
    /** Judgement: practice, a first immersion of 6 to 8 h is best. */
    private static final double FIRST_SOAK_EARLY_HOURS = 6;
    /** Judgement: practice, the same. */
    private static final double FIRST_SOAK_LATEST_HOURS = 8;
    /** Judgement: practice, a first immersion under 4 h is no soak. */
    public static final double FIRST_SOAK_SHORTEST_HOURS = 4;
    /** Judgement: practice, later immersions of up to 8 h. */
    private static final double LATER_SOAK_LATEST_HOURS = 8;
    /** Judgement: a dip of half an hour fills the husk again. */
    public static final double LATER_SOAK_SHORTEST_HOURS = 0.5;
    /** Judgement: practice, no steeping in water above 24 °C. */
    private static final double WARMEST_WATER_C = 24;
    /** Judgement: half an hour to drain before casting. */
    public static final double LAST_REST_SHORTEST_HOURS = 0.5;
    /** Judgement: practice, air rests of 8 to 12 h. */
    private static final double REST_EARLY_HOURS = 8;
    /** Judgement: practice, the same. */
    private static final double REST_LATEST_HOURS = 12;
    /** Judgement: practice, no rest under an hour. */
    public static final double REST_SHORTEST_HOURS = 1;
    /** Judgement: practice, rests 4 h longer for a water-sensitive lot (10 to 25 points). */
    private static final double SENSITIVE_EXTRA_HOURS = 4;
    /** Judgement: practice, 8 h longer for a very water-sensitive lot. */
    private static final double VERY_SENSITIVE_EXTRA_HOURS = 8;
    /** Judgement: very water-sensitive above 25 points; class limit from memory. */
    private static final double VERY_SENSITIVE_FRACTION = 0.25;
    /** Judgement: practice, cast when four corns in five have chitted. */
    private static final double CAST_CHITTED_FRACTION = 0.80;
    /** Judgement: grain grown further than this mats in the vessel. */
    public static final double CAST_GROWTH_RATIO = 0.12;
    /** Judgement: withered no drier than this: below it growth is over and the kiln is the better dryer. */
    public static final double WITHER_DRIEST_FRACTION = 0.30;
    /** Judgement: practice, a wither of 12 to 24 h. */
    private static final double WITHER_EARLY_HOURS = 12;
    /** Judgement: practice, the same. */
    private static final double WITHER_LATEST_HOURS = 24;
    /** Judgement: no wither under 6 h is worth spreading for. */
    public static final double WITHER_SHORTEST_HOURS = 6;
    /** Judgement: once a rung is open the malt may wait 12 h on the lower one without harm. */
    private static final double KILN_WAIT_SOFT_HOURS = 12;
    /** Judgement: and a day at most. */
    private static final double KILN_WAIT_HARD_HOURS = 24;

    public static final Slip KILN_WAIT =
            new Slip(0, 0, KILN_WAIT_SOFT_HOURS, KILN_WAIT_SOFT_HOURS, KILN_WAIT_HARD_HOURS);
    /** Judgement: practice, over 60 °C nobody may leave an improvised heater. */
    public static final double ATTENDED_ABOVE_C = 60;
    /** Judgement: practice, cure slips by an hour softly, two at most, at 85 °C or less. */
    private static final double CURE_SOFT_HOURS = 1;
    /** Judgement: practice, slips half as long above 87 °C. */
    private static final double HOT_CURE_C = 87;
    /** Judgement: practice, and a third as long above 97 °C. */
    private static final double HOTTER_CURE_C = 97;
    /** Judgement: practice, de-root within a day while brittle. */
    private static final double DEROOT_LATEST_HOURS = 24;
    /** Judgement: practice, three days at most. */
    public static final double DEROOT_HARD_HOURS = 72;
    /** Judgement: the malt cools half an hour first. */
    public static final double DEROOT_SHORTEST_HOURS = 0.5;

    /** Judgement: an act that stands in somebody's calendar is not moved to save less than a quarter of an hour of work. */
    public static final double MOVED_ACT_COST_MINUTES = 15;

    private final MaltStyle style;
    private final double waterSensitiveFraction;

    public Rules(MaltStyle style, double waterSensitiveFraction) {
        this.style = style;
        this.waterSensitiveFraction = waterSensitiveFraction;
    }

    /** No immersion lasts longer at any temperature. */
    public static double longestImmersionHours(int immersion) {
        return (immersion == 1 ? Practice.FIRST_IMMERSION : Practice.LATER_IMMERSION).longestHours();
    }

    /** What it costs to put an act elsewhere than where somebody expects it, however far. */
    public static double movesAnAct(double byMinutes) {
        return byMinutes > 0 ? MOVED_ACT_COST_MINUTES : 0;
    }

    public double timePasses(double minutes) {
        return DAY_COST_MINUTES * minutes / (24 * 60);
    }

    public double immersionEndsInTime(int immersion, double hours, double waterC) {
        if (waterC > WARMEST_WATER_C) return Double.POSITIVE_INFINITY;
        return immersionSlip(immersion, waterC).costMinutes(hours);
    }

    public Slip immersionSlip(int immersion, double waterC) {
        if (immersion == 1) {
            double soft = Practice.FIRST_IMMERSION.softHours(waterC);
            double latest = Math.min(FIRST_SOAK_LATEST_HOURS, soft);
            double early = Math.min(FIRST_SOAK_EARLY_HOURS, latest);
            double shortest = Math.min(FIRST_SOAK_SHORTEST_HOURS, early);
            return new Slip(shortest, early, latest, soft, Practice.FIRST_IMMERSION.hardHours(waterC));
        }
        double soft = Practice.LATER_IMMERSION.softHours(waterC);
        return new Slip(
                LATER_SOAK_SHORTEST_HOURS,
                LATER_SOAK_SHORTEST_HOURS,
                Math.min(LATER_SOAK_LATEST_HOURS, soft),
                soft,
                Practice.LATER_IMMERSION.hardHours(waterC));
    }

    public double chittedGrainNeedsAir(double chittedHours, double waterC) {
        double soft = Practice.CHITTED_UNDER_WATER.softHours(waterC);
        return new Slip(0, 0, soft / 2, soft, Practice.CHITTED_UNDER_WATER.hardHours(waterC)).costMinutes(chittedHours);
    }

    public double restLastsItsTime(double hours, double grainC) {
        return restSlip(grainC).costMinutes(hours);
    }

    public Slip restSlip(double grainC) {
        boolean spread = waterSensitiveFraction >= Setup.SENSITIVE_FRACTION;
        double extra = waterSensitiveFraction > VERY_SENSITIVE_FRACTION
                ? VERY_SENSITIVE_EXTRA_HOURS
                : spread ? SENSITIVE_EXTRA_HOURS : 0;
        var limits = spread ? Practice.SPREAD_AIR_REST : Practice.AIR_REST;
        double soft = limits.softHours(grainC);
        double latest = Math.min(REST_LATEST_HOURS + extra, soft);
        return new Slip(
                REST_SHORTEST_HOURS,
                Math.min(REST_EARLY_HOURS + extra, latest),
                latest,
                soft,
                limits.hardHours(grainC));
    }

    public double longestRestHours() {
        boolean spread = waterSensitiveFraction >= Setup.SENSITIVE_FRACTION;
        return (spread ? Practice.SPREAD_AIR_REST : Practice.AIR_REST).longestHours();
    }

    /** Whether enough corns have chitted to cast. */
    public boolean ripe(double chittedFraction) {
        return chittedFraction >= CAST_CHITTED_FRACTION;
    }

    public double castsSoonAfterRipe(double hoursRipe, double grainC) {
        double soft = Practice.CASTING.softHours(grainC);
        return new Slip(0, 0, soft / 2, soft, Practice.CASTING.hardHours(grainC)).costMinutes(hoursRipe);
    }

    public double steepOutMoisture(double moistureFraction) {
        if (!style.steep().acceptable().contains(moistureFraction)) return Double.POSITIVE_INFINITY;
        return MOISTURE_COST_MINUTES_PER_POINT
                * 100
                * Math.abs(moistureFraction - style.steep().targetFraction());
    }

    public double growthAtLoading(double growthRatio) {
        if (!style.growth().acceptable().contains(growthRatio)) return Double.POSITIVE_INFINITY;
        return GROWTH_COST_MINUTES_PER_TENTH
                * 10
                * Math.abs(growthRatio - style.growth().acrospireFraction());
    }

    public double withersItsTime(double hours, double grainC) {
        return witherSlip(grainC).costMinutes(hours);
    }

    public Slip witherSlip(double grainC) {
        double longest = style.growth().wither().highHours();
        double hard = Math.max(WITHER_SHORTEST_HOURS, Math.min(longest, Practice.WITHER.hardHours(grainC)));
        double soft = Math.min(hard, Practice.WITHER.softHours(grainC));
        soft = Math.max(soft, WITHER_SHORTEST_HOURS);
        double latest = Math.min(WITHER_LATEST_HOURS, soft);
        return new Slip(WITHER_SHORTEST_HOURS, Math.min(WITHER_EARLY_HOURS, latest), latest, soft, hard);
    }

    public double waitsInTheKiln(double hoursSinceOpen) {
        return KILN_WAIT.costMinutes(hoursSinceOpen);
    }

    public double curesItsTime(double hours) {
        return cureSlip().costMinutes(hours);
    }

    public Slip cureSlip() {
        double cureC = (style.kiln().cureC().lowC() + style.kiln().cureC().highC()) / 2;
        double slip = cureC > HOTTER_CURE_C
                ? CURE_SOFT_HOURS / 3
                : cureC > HOT_CURE_C ? CURE_SOFT_HOURS / 2 : CURE_SOFT_HOURS;
        double low = style.kiln().cureHours().lowHours();
        double high = style.kiln().cureHours().highHours();
        return new Slip(Math.max(0, low - slip), low, high, high + slip, high + 2 * slip);
    }

    public double derootsSoon(double hours) {
        return derootSlip().costMinutes(hours);
    }

    public Slip derootSlip() {
        return new Slip(
                DEROOT_SHORTEST_HOURS,
                DEROOT_SHORTEST_HOURS,
                DEROOT_LATEST_HOURS,
                DEROOT_LATEST_HOURS,
                DEROOT_HARD_HOURS);
    }

    /** Rest before the day the malt is wanted: never less than the style's; cost for less than it prefers or more. */
    public double restsBeforeReadyBy(double restDays) {
        double least = style.finish().restDays();
        double preferred = style.finish().preferredRestDays();
        if (restDays < least) return Double.POSITIVE_INFINITY;
        return restDays < preferred
                ? LOST_REST_COST_MINUTES_PER_DAY * (preferred - restDays)
                : IDLE_COST_MINUTES_PER_DAY * (restDays - preferred);
    }
}
