package piecewright.plan;

import piecewright.assess.SensitivityClass;
import piecewright.house.Heater;
import piecewright.style.MaltStyle;
import piecewright.style.SoakLengths;

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
    /** Judgement: each percentage point that the first soak falls short of wetting the corns. */
    private static final double MOISTURE_COST_MINUTES_PER_POINT = 20;
    /** Judgement: half a point of moisture nobody can tell. */
    public static final double UNTOLD_MOISTURE_FRACTION = 0.005;
    /** Judgement: nor a twentieth of acrospire. */
    public static final double UNTOLD_GROWTH_RATIO = 0.05;
    /** Judgement: steep-out moisture is within a point of its aim; weighed before the last dip it falls within 0.6. */
    private static final Miss STEEP_OUT = new Miss(0.01, 0.006);
    /** Judgement: colour is within a quarter of the middle; four kilned malts in five come within 1.3 of their plan. */
    private static final Miss COLOURED = new Miss(0.22, 0.2);
    /** Judgement: acrospires are within 0.15 of their aim; counted every day they end within 0.07 of where planned. */
    private static final Miss GROWN = new Miss(0.15, 0.07);
    /** Judgement: practice, a first immersion under 4 h is no soak. */
    public static final double FIRST_SOAK_SHORTEST_HOURS = 4;
    /** Source: Studies in Barley and Malt XXII, 1964, J. Inst. Brew. 70:145: a first steep should reach 32 %, drained. */
    private static final double FIRST_SOAK_WETS_FRACTION = 0.32;
    /** Judgement: a dip of half an hour fills the husk again. */
    public static final double LATER_SOAK_SHORTEST_HOURS = 0.5;
    /**
     * Judgement: practice, a soak much too long costs up to a day of growth and its evenness, which nothing later mends;
     * each hour over the usual weighs as much as ten minutes of work, so that several hours outweigh another act.
     */
    private static final double OVERLONG_SOAK_COST_MINUTES_PER_HOUR = 10;
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
    /** Judgement: practice, cast when four corns in five have chitted; a count of a hundred may be four too many. */
    private static final double CAST_CHITTED_FRACTION = 0.84;
    /** Judgement: grain grown further than this mats in the vessel. */
    public static final double CAST_GROWTH_RATIO = 0.15;
    /** Judgement: withered no drier than this: below it growth is over and the kiln is the better dryer. */
    public static final double WITHER_DRIEST_FRACTION = 0.30;
    /** Judgement: couch and cooling after it take no more moisture than this off, wet basis. */
    public static final double COUCH_DRIES_FRACTION = 0.06;
    /** Judgement: practice, a wither of 12 to 24 h. */
    private static final double WITHER_EARLY_HOURS = 12;
    /** Judgement: practice, the same. */
    private static final double WITHER_LATEST_HOURS = 24;
    /** Judgement: a bed this much over the style's warmest spoils: mould, uneven growth, matted roots. */
    public static final double BED_SPOILS_OVER_K = 4;
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

    /** Judgement: dry malt, closed up, waits three days for its roast without a thought. */
    private static final double ROAST_LATEST_HOURS = 72;
    /** Judgement: and a week at most, before it has drawn damp. */
    private static final double ROAST_HARD_HOURS = 7 * 24;
    /** Judgement: an act that stands in somebody's calendar is not moved to save less than a quarter of an hour of work. */
    public static final double MOVED_ACT_COST_MINUTES = 15;

    private final MaltStyle style;
    private final double waterSensitiveFraction;
    private final double growthMarginFraction;
    private final boolean underWay;
    private final boolean couched;
    private final double driestFraction;

    public Rules(MaltStyle style, double waterSensitiveFraction) {
        this(style, waterSensitiveFraction, 0, false);
    }

    /**
     * @param growthMarginFraction how far inside the style's acrospire growth must end, 0 or more
     * @param underWay whether it is of a piece that was begun
     */
    public Rules(MaltStyle style, double waterSensitiveFraction, double growthMarginFraction, boolean underWay) {
        this.underWay = underWay;
        this.growthMarginFraction = growthMarginFraction;
        this.couched = style.couches().hot().isPresent();
        this.driestFraction =
                style.couches().hot().map(hot -> hot.packing().lowFraction()).orElse(WITHER_DRIEST_FRACTION);
        this.style = style;
        this.waterSensitiveFraction = waterSensitiveFraction;
    }

    /** Whether somebody must stay near while a heater is set to this: it may not be left, or not left so hot. */
    public static boolean needsSomebody(Heater.HeatControl control, double setC) {
        return !control.holdsSetPoint() || (setC > ATTENDED_ABOVE_C && !control.safeUnattended());
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
        return immersionSlip(immersion, waterC).costMinutes(hours) + lastsUnusuallyLong(immersion, hours, waterC);
    }

    /** What it costs at least in water that is nowhere colder: the warmer, the cheaper short ones and the dearer long ones. */
    public double immersionCostsAtLeast(int immersion, double hours, double coldestC) {
        if (hours >= immersionSlip(immersion, coldestC).earlyHours()) {
            return immersionEndsInTime(immersion, hours, coldestC);
        }
        return hours < shortestImmersionHours(immersion) ? Double.POSITIVE_INFINITY : 0;
    }

    /** The first immersion wets the corns enough to breathe and begin to grow in the rest after it. */
    public double firstSoakWetsEnough(double moistureFraction) {
        return MOISTURE_COST_MINUTES_PER_POINT * 100 * Math.max(0, FIRST_SOAK_WETS_FRACTION - moistureFraction);
    }

    /** No immersion is shorter at any temperature, hours. */
    public double shortestImmersionHours(int immersion) {
        return immersionSlip(immersion, WARMEST_WATER_C).shortestHours();
    }

    /** An immersion longer than is usual in such water sets the corns back, unevenly; it is still no harm. */
    private double lastsUnusuallyLong(int immersion, double hours, double waterC) {
        return OVERLONG_SOAK_COST_MINUTES_PER_HOUR * Math.max(0, hours - longestUsualSoakHours(immersion, waterC));
    }

    /** The longest immersion that is usual in water of that temperature, hours. */
    public double longestUsualSoakHours(int immersion, double waterC) {
        return soakRatio(immersion) * Practice.USUAL_SOAK.hardHours(waterC);
    }

    private double soakRatio(int immersion) {
        SoakLengths soaks = style.steep().soaks();
        return immersion == 1 ? soaks.firstRatio() : soaks.laterRatio();
    }

    public Slip immersionSlip(int immersion, double waterC) {
        boolean first = immersion == 1;
        SoakLengths soaks = style.steep().soaks();
        Limits limits = first ? Practice.FIRST_IMMERSION : Practice.LATER_IMMERSION;
        double share = soakRatio(immersion);
        double soft = share * limits.softHours(waterC);
        double latest = Math.min(share * Practice.USUAL_SOAK.softHours(waterC), soft);
        double early = Math.min((first ? soaks.first() : soaks.later()).lowHours(), latest);
        double shortest = Math.min(first ? FIRST_SOAK_SHORTEST_HOURS : LATER_SOAK_SHORTEST_HOURS, early);
        return new Slip(shortest, early, latest, soft, share * limits.hardHours(waterC));
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
        double extra = SensitivityClass.of(waterSensitiveFraction).longerRestHours();
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

    /** The rest before casting may be short; one too long in the vessel costs what any such rest does. */
    public double lastRestLasts(double hours, double grainC) {
        return lastRestSlip(grainC).costMinutes(hours);
    }

    /** The rest before casting; wet enough, grain under way waits for its chit rather than be soaked once more. */
    public Slip lastRestSlip(double grainC) {
        Slip rest = restSlip(grainC);
        if (!underWay) return new Slip(0, 0, rest.latestHours(), rest.softHours(), rest.hardHours());
        double soft = Math.max(rest.softHours(), Practice.LAST_REST.softHours(grainC));
        double hard = Math.max(rest.hardHours(), Practice.LAST_REST.hardHours(grainC));
        return new Slip(0, 0, rest.latestHours(), soft, hard);
    }

    /** No rest before casting is longer at any temperature. */
    public double longestLastRestHours() {
        return underWay ? Math.max(longestRestHours(), Practice.LAST_REST.longestHours()) : longestRestHours();
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
        return STEEP_OUT.costMinutes(Math.abs(moistureFraction - style.steep().targetFraction()));
    }

    /** Growth as it ends: at loading, or before it at packing the couch. */
    public double growthAtTheEnd(double growthRatio) {
        var acceptable = style.growth().acceptable();
        if (growthRatio < acceptable.lowFraction() + growthMarginFraction
                || growthRatio > acceptable.highFraction() - growthMarginFraction) {
            return Double.POSITIVE_INFINITY;
        }
        return GROWN.costMinutes(Math.abs(growthRatio - style.growth().acrospireFraction()));
    }

    public double withersItsTime(double hours, double grainC) {
        return witherSlip(grainC).costMinutes(hours);
    }

    public Slip witherSlip(double grainC) {
        double longest = style.growth().wither().highHours();
        double hard =
                Math.max(WITHER_SHORTEST_HOURS, Math.min(longest, witherLimits().hardHours(grainC)));
        double soft = Math.min(hard, witherLimits().softHours(grainC));
        soft = Math.max(soft, WITHER_SHORTEST_HOURS);
        double latest = couched ? soft : Math.min(WITHER_LATEST_HOURS, soft);
        return new Slip(WITHER_SHORTEST_HOURS, Math.min(WITHER_EARLY_HOURS, latest), latest, soft, hard);
    }

    /** No wither lasts longer at any temperature. */
    public double longestWitherHours() {
        return Math.min(style.growth().wither().highHours(), witherLimits().longestHours());
    }

    private Limits witherLimits() {
        return couched ? Practice.COUCH_WITHER : Practice.WITHER;
    }

    /** Withering ends at this moisture at the latest, wet basis. */
    public double driestFraction() {
        return driestFraction;
    }

    /** No piece is loaded drier, wet basis: a couch gives off about as much water as it makes. */
    public double driestLoadFraction() {
        return driestFraction() - (couched ? COUCH_DRIES_FRACTION : 0);
    }

    public double waitsInTheKiln(double hoursSinceOpen) {
        return KILN_WAIT.costMinutes(hoursSinceOpen);
    }

    public double curesItsTime(double hours) {
        return cureSlip().costMinutes(hours);
    }

    /**
     * Colour as the cure leaves it, EBC, where the cure makes it.
     *
     * @param mostEbc what its longest usual cure makes: nobody aims darker
     */
    public double colourAtTheEnd(double colourEbc, double mostEbc) {
        double aimEbc = Math.min(mostEbc, style.finish().colour().middleEbc());
        return COLOURED.costMinutes(Math.abs(Math.log(colourEbc / aimEbc)));
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

    /** From the start of de-rooting or of one roast, which keeps somebody so many minutes, to the next roast. */
    public Slip roastSlip(int busyMinutes) {
        double shortest = busyMinutes / 60.0;
        double latest = Math.max(shortest, ROAST_LATEST_HOURS);
        return new Slip(shortest, shortest, latest, latest, ROAST_HARD_HOURS);
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
