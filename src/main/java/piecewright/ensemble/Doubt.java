package piecewright.ensemble;

import piecewright.belief.Priors;
import piecewright.process.steep.SteepParameters;

/**
 * Something about lot or kit that is known only roughly. Each is a multiplier whose logarithm is normal; its
 * spread while nothing was measured is that of {@link Priors}, the only table.
 */
public enum Doubt {
    /** Judgement: how fast the lot drinks; lots differ up to 2.4-fold. */
    STEEP_RATE(Priors.STEEP_RATE_SD),
    /** Judgement: air a home kiln blows, never measured. */
    AIR_FLOW(Priors.AIR_FLOW_SD),
    /** Judgement: how fast kernels give up water; the rate law is from memory. */
    KERNEL(Priors.KERNEL_RATE_SD),
    /** Judgement: how fast the lot grows. */
    GROWTH(Priors.GROWTH_RATE_SD),
    /** Judgement: what all a corn can hold: 1.10 give or take 0.08. */
    SATURATION(Priors.SATURATION_SD / SteepParameters.Uptake.SATURATION_RATIO),
    /** Judgement: what husk and embryo take up at once: 0.13 give or take 0.03. */
    BURST(Priors.BURST_SD / SteepParameters.Uptake.BURST_RATIO),
    /** Judgement: colour of kilned malt: four in five within a factor of 1.3; fitted. Other malts by their own band. */
    COLOUR(Priors.COLOUR_RATE_SD),
    /** Judgement: how fast heat destroys enzymes; constructed on remembered anchors, not measured kinetics. */
    ENZYMES(Priors.ENZYME_LOSS_SD),
    /** Judgement: heat of a hot couch from batch to batch; fitted to two heating curves of one practice. */
    COUCH_HEAT(Priors.COUCH_HEAT_SD),
    /** Judgement: what an insulated box loses, never tested with warm water. */
    BOX_LOSS(Priors.BOX_LOSS_SD),
    /** Judgement: temperature at which a pile's heat is cut: 0.4 K of 50.9 °C; the same fit, well told by the peak. */
    COUCH_CUT(Priors.COUCH_CUT_SD),
    /** Judgement: how fast its own heat kills the source of heat; the same fit, to a factor of 1.22. */
    COUCH_DECAY(Priors.COUCH_DECAY_SD),
    /** Judgement: raw moisture, a point of twelve where guessed. */
    RAW_MOISTURE(Priors.RAW_MOISTURE_SD),
    /** Judgement: warmth to chit, whose level is from practice. */
    CHIT(Priors.CHIT_RATE_SD),
    /** Judgement: heat of respiration, known to 0.3 of itself; 1.5 to 2.6 W/kg are possible. */
    RESPIRATION(Priors.RESPIRATION_SD),
    /** Judgement: how well a bed holds its warmth; fitted to three remembered rises. */
    BED_LOSS(Priors.BED_LOSS_SD),
    /** Judgement: drying of a still bed; fitted to one practice run with an assumed humidity. */
    FLOOR_DRYING(Priors.FLOOR_DRYING_SD),
    /** Judgement: film on drained grain, 0.03 to 0.08 with the manner of draining. */
    FILM(Priors.FILM_SD),
    /** Judgement: floaters and screenings where guessed. */
    FLOATERS(Priors.GUESSED_LOSS_SD),
    /** Judgement: rootlets, remembered losses of 2.5 to 4 %. */
    ROOTLETS(Priors.ROOTLETS_SD),
    /** Judgement: leaching, remembered losses of 0.5 to 1.5 %. */
    LEACHING(Priors.LEACHING_SD),
    /** Judgement: share of corns that grow, where nobody counted. */
    GERMINATION(Priors.UNTESTED_GROWING_SD);

    private final double usualSd;

    Doubt(double usualSd) {
        this.usualSd = usualSd;
    }

    /** Standard deviation of the logarithm while nothing was measured. */
    public double usualSd() {
        return usualSd;
    }
}
