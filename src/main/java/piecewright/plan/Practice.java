package piecewright.plan;

/**
 * How long things may last: the tolerances of the craft, by temperature. None is published as a measured window; each
 * is common practice or an estimate between sourced ends. Where practice gives one pair for a band of temperatures, the
 * pair stands at the band's middle and the limits run linearly between.
 */
public final class Practice {
    /** Judgement: end of the first immersion, dry grain; practice, ends sourced, grid estimated. Over 24 °C: never. */
    public static final Limits FIRST_IMMERSION = Limits.of(
            row(10, 24, 40), row(11.5, 16, 30), row(14.5, 12, 20), row(18, 9, 14), row(22, 6, 9), row(24, 5, 7));
    /** Judgement: end of a later immersion before chitting; estimated. */
    public static final Limits LATER_IMMERSION = Limits.of(
            row(10, 16, 24), row(11.5, 12, 18), row(14.5, 10, 14), row(18, 8, 11), row(22, 5, 7), row(24, 4, 6));
    /**
     * Judgement: one immersion of barley as usually given, and the longest that is usual: practice, 12 to 14 h at 8 to
     * 10 °C, 10 to 12 at 11 to 13, 8 to 10 at 14 to 16, 6 to 8 at 17 to 19, 4 to 6 at 20 to 22; over 23 °C 4 h at most.
     */
    public static final Limits USUAL_SOAK =
            Limits.of(row(9, 12, 14), row(12, 10, 12), row(15, 8, 10), row(18, 6, 8), row(21, 4, 6), row(24, 3, 4));
    /** Judgement: chitted grain under water; a slip, never beyond hard. */
    public static final Limits CHITTED_UNDER_WATER = Limits.of(row(16, 4, 8), row(18, 2, 4));
    /** Judgement: air rest of grain left in the vessel. */
    public static final Limits AIR_REST = Limits.of(row(12, 24, 30), row(14, 18, 24), row(18, 14, 18), row(20, 10, 14));
    /** Judgement: air rest spread thin and stirred, as a water-sensitive lot needs: soft half as long again. */
    public static final Limits SPREAD_AIR_REST =
            Limits.of(row(12, 36, 36), row(14, 24, 24), row(18, 21, 24), row(20, 15, 24), row(22, 15, 24));
    /**
     * Judgement: grain wet enough that waits for its chit, spread thin and stirred; practice, drained 30 h and more in
     * the cold, a day in mild weather.
     */
    public static final Limits LAST_REST =
            Limits.of(row(8, 40, 84), row(12, 30, 54), row(14, 24, 42), row(18, 18, 30), row(20, 15, 24));
    /** Judgement: how long casting may wait once the steep is ripe: a night and no more, or it mats. */
    public static final Limits CASTING = Limits.of(row(10, 6, 18), row(15, 4, 14), row(20, 3, 10));
    /** Judgement: first look at a wet couch and those after it by its warmth; practice, ends sourced, grid estimated. */
    public static final Limits WET_COUCH_LOOK = Limits.of(row(10, 12, 18), row(15, 8, 12), row(20, 5, 8));
    /** Judgement: how long a wet couch may lie; practice, 20 to 30 h, 12 to 48 h by temperature. */
    public static final Limits WET_COUCH = Limits.of(row(10, 36, 48), row(15, 30, 36), row(20, 20, 24));
    /** Judgement: gap between turnings, bed up to 5 cm. */
    private static final Limits TURN_TO_5_CM = Limits.of(row(16, 14, 24), row(20, 12, 16), row(24, 8, 10));
    /** Judgement: gap between turnings, bed of 5 to 10 cm. */
    private static final Limits TURN_TO_10_CM =
            Limits.of(row(13, 14, 20), row(16, 11, 14), row(20, 8, 10), row(24, 6, 8));
    /** Judgement: gap between turnings, bed of 10 to 20 cm. */
    private static final Limits TURN_TO_20_CM = Limits.of(row(13, 12, 14), row(16, 8, 10), row(20, 6, 8));
    /** Judgement: gap between turnings, heaps over 20 cm. */
    private static final Limits TURN_HEAP = Limits.of(row(13, 8, 10), row(16, 6, 8));
    /** Judgement: waiting as a wither before the kiln, thin and turned. */
    public static final Limits WITHER = Limits.of(row(14, 48, 72), row(16, 24, 36), row(19, 12, 16), row(22, 4, 8));
    /**
     * Judgement: how far the end of a roast may slip either way by oven temperature: practice, 140 to 150 °C five
     * minutes, ten at most; 177 °C two and four; below that estimated.
     */
    public static final Limits ROAST_END =
            Limits.of(row(107, 0.25, 0.5), row(145, 5.0 / 60, 10.0 / 60), row(177, 2.0 / 60, 4.0 / 60));

    /** Judgement: withering to pack a couch, thin and airy: 28 h at 23 °C are practice; the other figures estimated. */
    public static final Limits COUCH_WITHER =
            Limits.of(row(14, 48, 72), row(16, 42, 60), row(19, 34, 48), row(23, 28, 36));

    private Practice() {}

    /** Gap between turnings by bed depth, cm, more than 0. */
    public static Limits turning(double depthCm) {
        if (depthCm <= 5) return TURN_TO_5_CM;
        if (depthCm <= 10) return TURN_TO_10_CM;
        if (depthCm <= 20) return TURN_TO_20_CM;
        return TURN_HEAP;
    }

    /** Preferred hours between turnings by bed depth. Judgement: 8 to 12 h thin, 6 to 8 h deep; here the upper end. */
    public static double preferredTurnHours(double depthCm) {
        if (depthCm <= 5) return 12;
        if (depthCm <= 10) return 10;
        return depthCm <= 20 ? 8 : 6;
    }

    /** Judgement: looks at a wet couch once it is 3 K over its air, by kg of raw grain: so soon, under 3 kg. */
    private static final double[] SMALL_HEAP_KG_HOURS = {3, 10, 14};
    /** Judgement: and from 6 kg on. */
    private static final double[] LARGE_HEAP_KG_HOURS = {6, 6, 8};

    /** How soft and hard looks at a warming wet couch of so much raw grain are due after the last, hours. */
    public static Limits warmHeapLook(double grainKg) {
        double share = Math.max(0, Math.min(1, (grainKg - SMALL_HEAP_KG_HOURS[0]) / 3));
        double soft = SMALL_HEAP_KG_HOURS[1] + share * (LARGE_HEAP_KG_HOURS[1] - SMALL_HEAP_KG_HOURS[1]);
        double hard = SMALL_HEAP_KG_HOURS[2] + share * (LARGE_HEAP_KG_HOURS[2] - SMALL_HEAP_KG_HOURS[2]);
        return Limits.of(row(15, soft, hard));
    }

    private static double[] row(double temperatureC, double softHours, double hardHours) {
        return new double[] {temperatureC, softHours, hardHours};
    }
}
