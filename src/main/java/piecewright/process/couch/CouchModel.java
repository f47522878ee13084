package piecewright.process.couch;

import java.util.Objects;
import piecewright.house.InsulatedBox;
import piecewright.process.CouchState;
import piecewright.process.GrainMass;
import piecewright.process.Ledgers;
import piecewright.process.Metabolism;
import piecewright.process.PieceState;
import piecewright.process.Psychrometrics;
import piecewright.quantity.Moisture;

/** The equations of the hot couch in one box: heat, loss, vapour, death of the heat source, couch index. */
public final class CouchModel {
    /** Judgement: raw grain weighs its dry matter over this: 12 % moisture. The box law counts in raw grain. */
    public static final double RAW_DRY_FRACTION = 0.88;
    /** Judgement: dry matter left when a piece of unknown history is packed. */
    public static final double DRY_LEFT_FRACTION = 0.945;
    /** Source: latent heat of water near 30 °C, kJ/kg. */
    public static final double LATENT_KJ_PER_KG = 2430;
    /** Judgement: heat capacity of dry grain, kJ/kgK. */
    private static final double DRY_KJ_PER_KG_K = 1.30;
    /** Source: heat capacity of liquid water, kJ/kgK. */
    private static final double WATER_KJ_PER_KG_K = 4.19;
    /** Judgement: moisture at which heat has half its wet value; two points only stand behind it. */
    private static final double MOISTURE_MIDDLE_FRACTION = 0.258;
    /** Judgement: width of that rise. */
    private static final double MOISTURE_WIDTH_FRACTION = 0.045;
    /** Judgement: moisture the heat is quoted at. */
    private static final double REFERENCE_MOISTURE_FRACTION = 0.40;
    /** Judgement: raw grain the box's loss is quoted at, kg. */
    private static final double REFERENCE_BARLEY_KG = 4.5;
    /** Judgement: share of the loss that does not depend on the size of the pile. */
    private static final double FIXED_LOSS_FRACTION = 0.75;
    /** Judgement: vapour pressure of the room the box breathes, kPa. */
    private static final double ROOM_VAPOUR_K_PA = 1.1;
    /** Judgement: coolest that counts for the couch index. */
    private static final double INDEX_FROM_C = 30;
    /** Judgement: hottest that counts for the couch index. */
    private static final double INDEX_UNTIL_C = 54;
    /** Judgement: temperature at which an hour counts as one. */
    private static final double INDEX_REFERENCE_C = 48;
    /** Judgement: moisture at which the couch index stops. */
    private static final double INDEX_STOPS_FRACTION = 0.20;
    /** Judgement: so that 40 % moisture counts as 1. */
    private static final double INDEX_SPAN_FRACTION = 0.20;
    /** Judgement: no gain beyond 42 % moisture. */
    private static final double INDEX_CAP_RATIO = 1.1;
    /** Judgement: temperatures beyond are not believed. */
    private static final double COLDEST_C = -5;
    /** Judgement: temperatures beyond are not believed. */
    private static final double HOTTEST_C = 80;

    private final CouchParameters parameters;
    private final double germinatingFraction;
    private final double heatLogPerK;
    private final double vapourAt50KPa;

    /** germinatingFraction: share of corns alive, [0, 1]. */
    public CouchModel(CouchParameters parameters, double germinatingFraction) {
        if (!(germinatingFraction >= 0 && germinatingFraction <= 1)) {
            throw new IllegalArgumentException("germinatingFraction must be in [0, 1]: " + germinatingFraction);
        }
        this.parameters = Objects.requireNonNull(parameters);
        this.germinatingFraction = germinatingFraction;
        this.heatLogPerK = Math.log(parameters.heat().q10Ratio()) / 10;
        this.vapourAt50KPa = Psychrometrics.saturationPressurePa(50) / 1000 - ROOM_VAPOUR_K_PA;
    }

    /** For one box, with its own loss where a water test measured it. */
    public static CouchModel of(InsulatedBox box, CouchParameters parameters, double germinatingFraction) {
        double lossWPerK = box.lossWPerK().orElse(parameters.box().lossWPerK());
        return new CouchModel(parameters.withBox(parameters.box().withLossWPerK(lossWPerK)), germinatingFraction);
    }

    public CouchParameters parameters() {
        return parameters;
    }

    /** f: heat at a moisture as a multiple of the heat at 40 %. */
    public static double moistureRatio(double moistureFraction) {
        return moistureCurve(moistureFraction) / moistureCurve(REFERENCE_MOISTURE_FRACTION);
    }

    /** q: heat, W per kg of dry matter; capacityRatio is R. */
    public double heatWPerKgDry(double pileC, double moistureFraction, double capacityRatio) {
        double believedC = believed(pileC);
        CouchParameters.Heat heat = parameters.heat();
        double fall = Math.exp(Math.max(-40, Math.min(40, (believedC - heat.cutC()) / heat.cutWidthK())));
        return germinatingFraction
                * heat.lotRatio()
                * heat.at20WPerKg()
                * moistureRatio(moistureFraction)
                * capacityRatio
                * Math.exp(heatLogPerK * (believedC - 20))
                / (1 + fall);
    }

    /** Share of the capacity lost per hour. */
    public double decayPerHour(double pileC) {
        double decades = (believed(pileC) - 50) / parameters.decay().decadeK();
        return parameters.decay().at50PerHour() * Math.exp(decades * Math.log(10));
    }

    /** E: heat carried off as vapour, W. */
    public double evaporationW(double pileC) {
        double overKPa = Psychrometrics.saturationPressurePa(believed(pileC)) / 1000 - ROOM_VAPOUR_K_PA;
        return Math.max(0, parameters.box().evaporationAt50W() * overKPa / vapourAt50KPa);
    }

    /** Heat lost per kelvin over the room by a pile of that much raw grain, W/K. */
    public double lossWPerK(double barleyKg) {
        return parameters.box().lossWPerK()
                * (FIXED_LOSS_FRACTION + (1 - FIXED_LOSS_FRACTION) * barleyKg / REFERENCE_BARLEY_KG);
    }

    /** Heat content of pile and liner, kJ/K. */
    public double capacityKJPerK(double dryMatterKg, double waterKg) {
        return DRY_KJ_PER_KG_K * dryMatterKg
                + WATER_KJ_PER_KG_K * waterKg
                + parameters.box().linerKJPerK();
    }

    /** Couch index gained per hour. */
    public static double indexPerHour(double pileC, double moistureFraction) {
        if (pileC < INDEX_FROM_C || pileC > INDEX_UNTIL_C) return 0;
        double wet = (moistureFraction - INDEX_STOPS_FRACTION) / INDEX_SPAN_FRACTION;
        return Math.exp((pileC - INDEX_REFERENCE_C) / 10 * Math.log(2)) * Math.max(0, Math.min(INDEX_CAP_RATIO, wet));
    }

    /** Raw grain the piece began as, kg at 12 % moisture. */
    public static double barleyKg(GrainMass mass) {
        return mass.initialDryMatterKg() / RAW_DRY_FRACTION;
    }

    /**
     * Green malt of unknown history about to be packed: what usually is left of so much raw grain, full grown.
     *
     * @param barleyKg raw grain it was, kg at 12 % moisture, above 0
     */
    public static PieceState packed(double barleyKg, Moisture moisture, double pileC) {
        PieceState raw = PieceState.rawGrain(barleyKg, new Moisture(1 - RAW_DRY_FRACTION), 0, 0, pileC);
        double initialKg = raw.mass().initialDryMatterKg();
        PieceState grown = Metabolism.bookRespiration(raw, initialKg * (1 - DRY_LEFT_FRACTION));
        double dryKg = grown.mass().dryMatterKg();
        double waterKg = dryKg * moisture.dryBasisRatio();
        Ledgers.Water water = grown.ledgers().water();
        Ledgers.Water soaked = new Ledgers.Water(waterKg - grown.mass().waterKg(), 0, water.formedKg(), 0, 0);
        return grown.withMass(new GrainMass(initialKg, dryKg, waterKg))
                .withLedgers(grown.ledgers().withWater(soaked))
                .withCouch(CouchState.none());
    }

    /**
     * UA of a box from a cooling test with warm water under the same cloths, W/K.
     *
     * @param waterKg water in the box, kg, above 0
     * @param fromC first reading, above untilC
     * @param untilC last reading, above airC
     * @param hours between the readings, above 0
     */
    public double waterTestLossWPerK(double waterKg, double fromC, double untilC, double airC, double hours) {
        if (!(fromC > untilC && untilC > airC && hours > 0 && waterKg > 0)) {
            throw new IllegalArgumentException("need fromC > untilC > airC, hours and waterKg above 0: " + fromC + ", "
                    + untilC + ", " + airC + ", " + hours + ", " + waterKg);
        }
        return capacityKJPerK(0, waterKg) * Math.log((fromC - airC) / (untilC - airC)) / (3.6 * hours);
    }

    private static double moistureCurve(double moistureFraction) {
        return 1 / (1 + Math.exp(-(moistureFraction - MOISTURE_MIDDLE_FRACTION) / MOISTURE_WIDTH_FRACTION));
    }

    private static double believed(double pileC) {
        return Math.max(COLDEST_C, Math.min(HOTTEST_C, pileC));
    }
}
