package piecewright.belief;

/** Something about a lot or a piece of kit that differs from one to the next and that observations tell. */
public enum Trait {
    /** m, multiplier of the reference uptake rate. */
    STEEP_RATE("steepRateRatio", Owner.LOT, Scale.LOGARITHMIC, 0.4, 3),
    /** Xe, kg of water per kg of dry matter at saturation. */
    SATURATION("saturationRatio", Owner.LOT, Scale.LINEAR, 0.8, 1.4),
    /** B, kg/kg taken up at once. */
    BURST("burstRatio", Owner.LOT, Scale.LINEAR, 0.05, 0.2),
    /** ρ, multiplier of the reference growth rate. */
    GROWTH_RATE("growthRateRatio", Owner.LOT, Scale.LOGARITHMIC, 0.4, 2.5),
    /** Multiplier of the heat of respiration, and of the dry matter it costs. */
    RESPIRATION("respirationRatio", Owner.LOT, Scale.LOGARITHMIC, 0.3, 3),
    /** κ, how readily kernels give up water. */
    KERNEL_RATE("kernelRatio", Owner.LOT, Scale.LOGARITHMIC, 0.2, 2),
    /** Moisture of the raw grain as it was steeped, share of wet weight. */
    RAW_MOISTURE("rawMoistureFraction", Owner.LOT, Scale.LINEAR, 0.04, 0.25),
    /** Multiplier of the water a bed loses on the floor. */
    FLOOR_DRYING("floorDryingRatio", Owner.KIT, Scale.LOGARITHMIC, 0.1, 10),
    /** h, multiplier of the couch's heat. */
    COUCH_HEAT("couchHeatRatio", Owner.KIT, Scale.LOGARITHMIC, 0.3, 3),
    /** UA of the box with 4.5 kg of raw grain in it, W/K. */
    BOX_LOSS("lossWPerK", Owner.KIT, Scale.LOGARITHMIC, 0.02, 20),
    /** Fresh air through the bed, m³/h. */
    AIR_FLOW("airFlowM3PerHour", Owner.KIT, Scale.LOGARITHMIC, 0.1, 10_000),
    /** How much hotter the air is than the dial says, K. */
    DIAL_OFFSET("dialOffsetK", Owner.KIT, Scale.LINEAR, -40, 40),
    /** Multiplier of the rate at which heat colours malt. */
    COLOUR_RATE("colourRateRatio", Owner.KIT, Scale.LOGARITHMIC, 0.1, 10);

    private final String key;
    private final Owner owner;
    private final Scale scale;
    private final Range believed;

    /** With what a trait stays when the batch is over. */
    public enum Owner {
        LOT,
        KIT
    }

    private enum Scale {
        LOGARITHMIC,
        LINEAR
    }

    private record Range(double lowRatio, double highRatio) {}

    Trait(String key, Owner owner, Scale scale, double low, double high) {
        this.key = key;
        this.owner = owner;
        this.scale = scale;
        this.believed = new Range(low, high);
    }

    /** The word used in files; its suffix is the unit. */
    public String key() {
        return key;
    }

    public Owner owner() {
        return owner;
    }

    /** Where the value lies on the axis that spreads are normal on: its logarithm, or itself. */
    public double position(double value) {
        return scale == Scale.LOGARITHMIC ? Math.log(value) : value;
    }

    /** The value at a position, held to what is believed possible. */
    public double value(double position) {
        double value = scale == Scale.LOGARITHMIC ? Math.exp(position) : position;
        return Math.max(believed.lowRatio(), Math.min(believed.highRatio(), value));
    }

    /** The least value believed possible. */
    public double lowest() {
        return believed.lowRatio();
    }

    /** The greatest value believed possible. */
    public double highest() {
        return believed.highRatio();
    }

    /** True where standard deviations are of the logarithm. */
    public boolean isLogarithmic() {
        return scale == Scale.LOGARITHMIC;
    }
}
