package piecewright.plan;

import piecewright.style.HotCouchSchedule;

/** What the acts about a hot couch cost and what they may never do, as {@link Rules} does for the others. */
public final class CouchRules {
    /** Judgement: each percentage point of packing moisture away from the style's. */
    private static final double MOISTURE_COST_MINUTES_PER_POINT = 5;
    /** Judgement: twice or none of the index the style wants; it decides the colour. */
    private static final double INDEX_COST_MINUTES = 120;
    /** Judgement: practice, a look is taken every 4 to 6 h; the pile checks its own heat, so 10 h do no harm. */
    private static final double CHECK_SOFT_HOURS = 10;
    /** Judgement: practice, from 45 °C on a look every 4 h: now it makes its colour, and may want spreading. */
    private static final double HOT_LOOK_HOURS = 4;
    /** Judgement: moisture of the wilted pile that the earliest hour is told of, wet basis. */
    private static final double WILTED_FRACTION = 0.275;
    /** Judgement: moisture of the wet one. */
    private static final double WET_FRACTION = 0.40;
    /** Judgement: one wilted pile in twenty passes 45 °C within 15 h by the fitted model and its doubts. */
    private static final double WILTED_HOT_HOURS = 15;
    /** Judgement: and one wet pile in twenty within 11 h. */
    private static final double WET_HOT_HOURS = 11;
    /** Judgement: the broken couch is spread and steaming; on the kiln within the hour is best. */
    private static final double LOAD_LATEST_HOURS = 1;
    /** Judgement: two hours cool the outside only. */
    private static final double LOAD_SOFT_HOURS = 2;
    /** Judgement: dead, warm and wet, it sours within a day and dries unevenly long before. */
    public static final double LOAD_HARD_HOURS = 4;
    /** Judgement: what is unpacked, spread and weighed needs twenty minutes before it can be loaded. */
    public static final double LOAD_SHORTEST_HOURS = 20 / 60.0;

    private static final Slip LOADING =
            new Slip(LOAD_SHORTEST_HOURS, LOAD_SHORTEST_HOURS, LOAD_LATEST_HOURS, LOAD_SOFT_HOURS, LOAD_HARD_HOURS);

    private final HotCouchSchedule schedule;

    public CouchRules(HotCouchSchedule schedule) {
        this.schedule = schedule;
    }

    public double packsAtMoisture(double moistureFraction) {
        if (!schedule.packing().contains(moistureFraction)) return Double.POSITIVE_INFINITY;
        return MOISTURE_COST_MINUTES_PER_POINT * 100 * Math.abs(moistureFraction - schedule.packingFraction());
    }

    /** Breaking the couch at this index; never outside the style's. */
    public double breaksAtIndex(double indexHours) {
        boolean style = indexHours >= schedule.acceptableIndex().lowHours()
                && indexHours <= schedule.acceptableIndex().highHours();
        if (!style) return Double.POSITIVE_INFINITY;
        return INDEX_COST_MINUTES * Math.abs(indexHours - schedule.indexHours()) / schedule.indexHours();
    }

    /** Whether a pile that hot still is what the style allows. */
    public boolean coolEnough(double pileC) {
        return pileC <= schedule.spreadAboveC();
    }

    /**
     * Gap between two looks at the pile.
     *
     * @param packedHours hours since it was packed as the gap ends
     */
    public Slip checkSlip(double packedHours) {
        double hard = schedule.checks().highHours();
        double latest = Math.min(schedule.checks().lowHours(), hard);
        if (packedHours > mayBeHotHours()) latest = Math.min(latest, HOT_LOOK_HOURS);
        return new Slip(0, 0, latest, Math.min(hard, Math.max(latest, CHECK_SOFT_HOURS)), hard);
    }

    /** The earliest a pile packed as the style asks may pass 45 °C, hours. */
    public double mayBeHotHours() {
        double share = (schedule.packingFraction() - WILTED_FRACTION) / (WET_FRACTION - WILTED_FRACTION);
        return WILTED_HOT_HOURS + Math.max(0, Math.min(1, share)) * (WET_HOT_HOURS - WILTED_HOT_HOURS);
    }

    /** From breaking the couch to loading the kiln. */
    public static Slip loadSlip() {
        return LOADING;
    }
}
