package piecewright.process;

import java.util.Objects;
import piecewright.grain.GrainKind;
import piecewright.grain.GrainLot;

/**
 * What the living corns of one lot do: chit, grow, breathe and warm themselves. Used by steep and floor alike; holds
 * from about 0 to 40 °C and 20 to 50 % moisture. Not the hot couch, which has a law of its own.
 */
public final class Metabolism {
    /** Judgement: share of corns taken to germinate where no test was made. */
    public static final double UNTESTED_GERMINATING_FRACTION = 0.97;
    /** Source: calorimetric heat of burning glucose, 2803 kJ/mol over 180.16 g/mol; kJ per kg respired. */
    public static final double KJ_PER_KG_RESPIRED = 15600;
    /** Source: stoichiometry of C6H12O6 + 6 O2, 192.0/180.2. */
    public static final double OXYGEN_IN_RATIO = 1.07;
    /** Source: the same, 264.1/180.2. */
    public static final double CARBON_DIOXIDE_OUT_RATIO = 1.47;
    /** Source: the same, 108.1/180.2. */
    public static final double WATER_FORMED_RATIO = 0.60;
    /** Judgement: foot of the chitting rate, fitted to germination data of 3 to 25 °C (Onofri et al. 2018: −1.6). */
    private static final double CHIT_BASE_C = -1.5;
    /** Judgement: as fast at 30 °C as anywhere; the same data, where 19 % germinate at 35 and none at 40 °C. */
    private static final double CHIT_FASTEST_C = 30;
    /** Judgement: the same data: nothing germinates any more. */
    private static final double CHIT_CEILING_C = 40;
    /** Judgement: foot of growth; not separable from the thermal sum over 12 to 20 °C. */
    private static final double GROWTH_BASE_C = 2;
    /** Judgement: best 20 to 24 °C for modern barleys (Müller et al. 2014, abstract). */
    private static final double GROWTH_OPTIMUM_C = 24;
    /** Judgement: end of the level top of the growth rate. */
    private static final double GROWTH_LEVEL_UNTIL_C = 28;
    /** Judgement: ceiling of development, after published wheat phenology (0, 26, 37 °C). */
    private static final double GROWTH_CEILING_C = 37;
    /** Judgement: growth stops at 28 to 32 % moisture; general texts and memory. */
    private static final double GROWTH_STOPS_FRACTION = 0.30;
    /** Judgement: so that 44 % moisture counts as 1. */
    private static final double GROWTH_SPAN_FRACTION = 0.14;
    /** Judgement: no gain above about 46 %. */
    private static final double GROWTH_CAP_RATIO = 1.15;
    /** Judgement: breathing fades out towards 20 % moisture. */
    private static final double HEAT_STOPS_FRACTION = 0.20;
    /** Judgement: so that 44 % moisture counts as 1. */
    private static final double HEAT_SPAN_FRACTION = 0.24;
    /** Judgement: no gain above about 46 %. */
    private static final double HEAT_CAP_RATIO = 1.1;
    /** Judgement: activity at chit as a share of full activity. */
    private static final double HEAT_AT_CHIT_RATIO = 0.4;
    /** Judgement: growth at which activity is full. */
    private static final double HEAT_FULL_AT_RATIO = 0.5;
    /** Judgement: plants breathe fastest at 35 to 40 °C (plant physiology text). */
    private static final double HEAT_OPTIMUM_C = 38;
    /** Judgement: and stop at 45 to 55 °C; keeps an untended deep bed finite. */
    private static final double HEAT_CEILING_C = 55;
    /** Judgement: the rootlet rule was made for up to 25 °C. */
    private static final double ROOTLET_WARMEST_C = 25;

    /** Judgement: hulled oats need six to eight days where barley needs five; optima 16 to 17 °C, 8 d (Muñoz-Insa 2011). */
    private static final double OATS_GROWTH_RATIO = 0.7;

    private final double germinatingFraction;
    private final double growthRateRatio;
    private final MetabolismParameters parameters;
    private final double heatLogPerK;
    private final double rootletLogPerK;

    /**
     * @param germinatingFraction share of corns alive and awake, [0, 1]
     * @param growthRateRatio the lot's growth multiplier ρ, above 0
     */
    public Metabolism(double germinatingFraction, double growthRateRatio, MetabolismParameters parameters) {
        if (!(germinatingFraction >= 0 && germinatingFraction <= 1)) {
            throw new IllegalArgumentException("germinatingFraction must be in [0, 1]: " + germinatingFraction);
        }
        if (!(growthRateRatio > 0)) {
            throw new IllegalArgumentException("growthRateRatio must be above 0: " + growthRateRatio);
        }
        this.germinatingFraction = germinatingFraction;
        this.growthRateRatio = growthRateRatio;
        this.parameters = Objects.requireNonNull(parameters);
        this.heatLogPerK = Math.log(parameters.heatQ10Ratio()) / 10;
        this.rootletLogPerK = Math.log(parameters.rootletQ10Ratio()) / 10;
    }

    /** The corns of a lot: germination as tested, growth rate as learned, or defaults. */
    public static Metabolism of(GrainLot lot, MetabolismParameters parameters) {
        return new Metabolism(
                germinatingFraction(lot),
                lot.learned().growthRateRatio().orElse(usualGrowthRatio(lot.kind())),
                parameters);
    }

    /** Share of a lot that grows: what grew in the dishes, less the broken corns, which no dish was laid with. */
    public static double germinatingFraction(GrainLot lot) {
        return lot.seen().wholeFraction() * lot.germinativeEnergyFraction().orElse(UNTESTED_GERMINATING_FRACTION);
    }

    /** Growth of a kind of grain as a multiple of barley's. */
    public static double usualGrowthRatio(GrainKind kind) {
        return kind == GrainKind.OATS ? OATS_GROWTH_RATIO : 1;
    }

    /** The same lot with another share of corns alive and other parameters. */
    public Metabolism with(double changedFraction, MetabolismParameters changed) {
        return new Metabolism(changedFraction, growthRateRatio, changed);
    }

    public MetabolismParameters parameters() {
        return parameters;
    }

    public double germinatingFraction() {
        return germinatingFraction;
    }

    /** The lot's growth multiplier ρ. */
    public double growthRateRatio() {
        return growthRateRatio;
    }

    /** Gain of chitting progress χ per hour: linear in warmth to 30 °C, falling to 0 at 40 °C. */
    public double chitPerHour(double grainC) {
        double warmthK = grainC <= CHIT_FASTEST_C
                ? grainC - CHIT_BASE_C
                : (CHIT_FASTEST_C - CHIT_BASE_C) * (CHIT_CEILING_C - grainC) / (CHIT_CEILING_C - CHIT_FASTEST_C);
        return Math.max(0, warmthK) / parameters.chitSumKelvinHours();
    }

    /** Share of the germinating corns that show a chit; 1/2 at χ = 1. */
    public double chittedFraction(double chitRatio) {
        return LogNormal.shareBelow(chitRatio, parameters.chitSpreadRatio());
    }

    /** χ at which such a share of the germinating corns shows a chit, share in (0, 1). */
    public double chitRatio(double chittedFraction) {
        double low = -4;
        double high = 4;
        for (int i = 0; i < 40; i++) {
            double middle = (low + high) / 2;
            if (LogNormal.normalShareBelow(middle) < chittedFraction) low = middle;
            else high = middle;
        }
        return Math.exp(low * parameters.chitSpreadRatio());
    }

    /** Gain of growth P per hour in air after chit, moisture as share of wet weight. */
    public double growthPerHour(double grainC, double moistureFraction) {
        return growthRateRatio
                * growthMoistureRatio(moistureFraction)
                * effectiveWarmthK(grainC)
                / (24 * parameters.growthSumKelvinDays());
    }

    /** fg: growth at a moisture as a share of growth at 44 %, [0, 1.15]. */
    public static double growthMoistureRatio(double moistureFraction) {
        return clip((moistureFraction - GROWTH_STOPS_FRACTION) / GROWTH_SPAN_FRACTION, GROWTH_CAP_RATIO);
    }

    /** e: warmth that counts for growth, K: from 2 °C to 24, level to 28, down to none at 37 °C. */
    public static double effectiveWarmthK(double grainC) {
        double topK = GROWTH_OPTIMUM_C - GROWTH_BASE_C;
        if (grainC <= GROWTH_LEVEL_UNTIL_C) return Math.max(0, Math.min(topK, grainC - GROWTH_BASE_C));
        return Math.max(0, topK * (GROWTH_CEILING_C - grainC) / (GROWTH_CEILING_C - GROWTH_LEVEL_UNTIL_C));
    }

    /** Heat of respiration on the floor, W per kg of dry matter present, dead corns included. */
    public double heatWPerKgDry(double grainC, double moistureFraction, double growthRatio) {
        return activityRatio(growthRatio) * fullHeatWPerKgDry(grainC, moistureFraction);
    }

    /** Breathing at a growth as a share of full activity, from 0.4 at chit to 1. */
    public static double activityRatio(double growthRatio) {
        return HEAT_AT_CHIT_RATIO + (1 - HEAT_AT_CHIT_RATIO) * clip(growthRatio / HEAT_FULL_AT_RATIO, 1);
    }

    /** Dry matter respired on the floor per hour, as a fraction of the dry matter present. */
    public double respiredPerHour(double grainC, double moistureFraction, double growthRatio) {
        return respiredPerHour(heatWPerKgDry(grainC, moistureFraction, growthRatio));
    }

    /** Dry matter respired in the steep per hour, as a fraction of the dry matter present. */
    public double steepRespiredPerHour(double grainC, double moistureFraction) {
        return parameters.steepShareRatio() * respiredPerHour(fullHeatWPerKgDry(grainC, moistureFraction));
    }

    /** Dry matter gone per hour behind a heat of respiration, fraction of the dry matter that gives the heat. */
    public static double respiredPerHour(double heatWPerKgDry) {
        return heatWPerKgDry * 3.6 / KJ_PER_KG_RESPIRED;
    }

    /** Days of rootlet growth, as if at 15 °C, per hour; for grain that still grows. */
    public double rootletDaysPerHour(double grainC) {
        return Math.exp(rootletLogPerK * (Math.min(grainC, ROOTLET_WARMEST_C) - 15)) / 24;
    }

    /**
     * The state after some dry matter was breathed away: less dry matter, more water, gas exchanged.
     *
     * @param dryMatterRespiredKg 0 or more, less than the dry matter present
     */
    public static PieceState bookRespiration(PieceState state, double dryMatterRespiredKg) {
        GrainMass mass = state.mass();
        Ledgers ledgers = state.ledgers();
        Ledgers.Water water = ledgers.water();
        Ledgers.DryMatter dry = ledgers.dryMatter();
        Ledgers.Gas gas = ledgers.gas();
        double formedKg = WATER_FORMED_RATIO * dryMatterRespiredKg;
        GrainMass after = new GrainMass(
                mass.initialDryMatterKg(), mass.dryMatterKg() - dryMatterRespiredKg, mass.waterKg() + formedKg);
        Ledgers booked = new Ledgers(
                new Ledgers.Water(
                        water.absorbedKg(),
                        water.sprinkledKg(),
                        water.formedKg() + formedKg,
                        water.evaporatedKg(),
                        water.removedKg()),
                new Ledgers.DryMatter(
                        dry.leachedKg(),
                        dry.respiredKg() + dryMatterRespiredKg,
                        dry.rootletsKg(),
                        dry.handlingKg(),
                        dry.roastedKg()),
                new Ledgers.Gas(
                        gas.oxygenInKg() + OXYGEN_IN_RATIO * dryMatterRespiredKg,
                        gas.carbonDioxideOutKg() + CARBON_DIOXIDE_OUT_RATIO * dryMatterRespiredKg));
        return state.withMass(after).withLedgers(booked);
    }

    /** The state after water left as vapour, kg, 0 or more; never more than there is. */
    public static PieceState bookEvaporation(PieceState state, double evaporatedKg) {
        GrainMass mass = state.mass();
        Ledgers.Water water = state.ledgers().water();
        double goneKg = Math.min(evaporatedKg, mass.waterKg());
        return state.withMass(new GrainMass(mass.initialDryMatterKg(), mass.dryMatterKg(), mass.waterKg() - goneKg))
                .withLedgers(state.ledgers()
                        .withWater(new Ledgers.Water(
                                water.absorbedKg(),
                                water.sprinkledKg(),
                                water.formedKg(),
                                water.evaporatedKg() + goneKg,
                                water.removedKg())));
    }

    /** fh: heat of respiration at a moisture as a share of that at 44 %, [0, 1.1]. */
    public static double heatMoistureRatio(double moistureFraction) {
        return clip((moistureFraction - HEAT_STOPS_FRACTION) / HEAT_SPAN_FRACTION, HEAT_CAP_RATIO);
    }

    /** Heat at full activity, W per kg of dry matter. */
    private double fullHeatWPerKgDry(double grainC, double moistureFraction) {
        double fadeRatio = clip((HEAT_CEILING_C - grainC) / (HEAT_CEILING_C - HEAT_OPTIMUM_C), 1);
        return germinatingFraction
                * parameters.heatAt20WPerKg()
                * heatMoistureRatio(moistureFraction)
                * fadeRatio
                * Math.exp(heatLogPerK * (Math.min(grainC, HEAT_OPTIMUM_C) - 20));
    }

    private static double clip(double value, double high) {
        return Math.max(0, Math.min(high, value));
    }
}
