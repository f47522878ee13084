package piecewright.plan;

/** What the acts about a wet couch cost and what they may never do, as {@link Rules} does for the others. */
public final class HeapRules {
    /** Judgement: practice, cast within 8 to 10 h after the water is off; later the vessel has cooled it out. */
    public static final double LATEST_HEAP_HOURS = 10;
    /** Judgement: practice, a look every 4 to 6 h, the first after 8. */
    private static final double LOOK_PREFERRED_HOURS = 8;
    /** Judgement: practice, once it is so much warmer than its air it warms quickly. */
    private static final double WARMING_RISE_K = 3;
    /** Judgement: practice, a couch lies 20 to 30 h. */
    private static final double LIES_LATEST_HOURS = 30;

    private final Heaping heaping;
    private final double grainKg;

    public HeapRules(Heaping heaping, double grainKg) {
        this.heaping = heaping;
        this.grainKg = grainKg;
    }

    /** The rules of a setup that has a wet couch. */
    public static HeapRules of(Setup setup) {
        double raw = setup.dryMatterKg() * (1 + setup.lot().moistureRatio());
        return new HeapRules(setup.heaping().orElseThrow(), raw);
    }

    /** Whether a heap whose mean is that warm still is what the style allows. */
    public boolean coolEnough(double meanC) {
        return meanC <= heaping.warmestMeanC();
    }

    /** From heaping to spreading it. */
    public Slip liesSlip(double meanC) {
        double least = heaping.schedule().hours().lowHours();
        double hard =
                Math.max(least, Math.min(heaping.schedule().hours().highHours(), Practice.WET_COUCH.hardHours(meanC)));
        double soft = Math.max(least, Math.min(hard, Practice.WET_COUCH.softHours(meanC)));
        return new Slip(least, least, Math.min(LIES_LATEST_HOURS, soft), soft, hard);
    }

    /** No wet couch lies longer at any temperature, hours. */
    public double longestHours() {
        return Math.min(heaping.schedule().hours().highHours(), Practice.WET_COUCH.longestHours());
    }

    public double liesItsTime(double hours, double meanC) {
        return liesSlip(meanC).costMinutes(hours);
    }

    /** Between two looks: sooner the warmer it is, and sooner still the more there is of it once it warms by itself. */
    public Slip lookSlip(double meanC) {
        double soft = Practice.WET_COUCH_LOOK.softHours(meanC);
        double hard = Practice.WET_COUCH_LOOK.hardHours(meanC);
        if (heaping.expected().riseK() >= WARMING_RISE_K) {
            Limits warming = Practice.warmHeapLook(grainKg);
            soft = Math.min(soft, warming.softHours(meanC));
            hard = Math.min(hard, warming.hardHours(meanC));
        }
        return new Slip(0, 0, Math.min(LOOK_PREFERRED_HOURS, soft), soft, hard);
    }

    /** No gap between looks is longer, hours. */
    public double longestLookHours() {
        return lookSlip(-10).hardHours();
    }
}
