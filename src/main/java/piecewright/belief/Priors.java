package piecewright.belief;

import java.util.List;
import piecewright.belief.Belief.Single;
import piecewright.colour.ColourBand;
import piecewright.colour.EnzymeBand;
import piecewright.grain.GrainLot;
import piecewright.house.Heater;
import piecewright.house.House;
import piecewright.house.InsulatedBox;
import piecewright.process.Metabolism;
import piecewright.process.MetabolismParameters;
import piecewright.process.couch.CouchParameters;
import piecewright.process.kiln.DryingParameters;
import piecewright.process.kiln.KilnParameters;
import piecewright.process.steep.SteepModel;
import piecewright.process.steep.SteepParameters;

/** What is believed of a lot or a piece of kit before it has been used. */
public final class Priors {
    /** Judgement: spread of the uptake rate from lot to lot; eight published lots had .33. */
    public static final double STEEP_RATE_SD = 0.30;
    /** Judgement: .08 around 1.10; published weighings and a remembered table differ by more. */
    public static final double SATURATION_SD = 0.08;
    /** Judgement: .03 around .13; the same data. */
    public static final double BURST_SD = 0.03;
    /** Judgement: a fifth more or less days of growth from lot to lot. */
    public static final double GROWTH_RATE_SD = 0.20;
    /** Judgement: 1.5 to 2.6 W/kg are possible around 2.0. */
    public static final double RESPIRATION_SD = 0.20;
    /** Judgement: κ between .4 and 1.0 around .7. */
    public static final double KERNEL_RATE_SD = 0.35;
    /** Judgement: covers, draughts and humidity of a room change what a bed loses by half and more. */
    public static final double FLOOR_DRYING_SD = 0.50;
    /** Judgement: heat of the couch from batch to batch. */
    public static final double COUCH_HEAT_SD = 0.35;
    /** Judgement: a box that was never tested. */
    public static final double BOX_LOSS_SD = 0.40;
    /** Judgement: a box after a cooling test with warm water. */
    public static final double TESTED_BOX_LOSS_SD = 0.10;
    /** Judgement: a kiln whose air was never weighed out. */
    public static final double AIR_FLOW_SD = 0.35;
    /** Judgement: after two weighings; vents and fans are not set twice alike. */
    public static final double MEASURED_AIR_FLOW_SD = 0.10;
    /** Judgement: eight kilned colours in ten lie within a factor of 1.3. */
    public static final double COLOUR_RATE_SD = Math.log(ColourBand.KILNED_RATIO) / Interval.TENTH_SD;
    /** Judgement: temperature at which a pile's heat is cut: 0.4 K of 50.9 °C; the same fit, well told by the peak. */
    public static final double COUCH_CUT_SD = 0.008;
    /** Judgement: how fast its own heat kills the source of heat; the same fit, to a factor of 1.22. */
    public static final double COUCH_DECAY_SD = 0.20;
    /** Judgement: raw moisture, a point of twelve where guessed. */
    public static final double RAW_MOISTURE_SD = 0.083;
    /** Judgement: warmth to chit, whose level is from practice. */
    public static final double CHIT_RATE_SD = 0.12;
    /** Judgement: how well a bed holds its warmth; fitted to three remembered rises. */
    public static final double BED_LOSS_SD = 0.25;
    /** Judgement: film on drained grain, 0.03 to 0.08 with the manner of draining. */
    public static final double FILM_SD = 0.30;
    /** Judgement: a loss that was weighed on a sample. */
    public static final double WEIGHED_LOSS_SD = 0.2;
    /** Judgement: a loss that was guessed. */
    public static final double GUESSED_LOSS_SD = 0.5;
    /** Judgement: remembered steep losses of 0.5 to 1.5 %. */
    public static final double LEACHING_SD = 0.4;
    /** Judgement: remembered losses of 2.5 to 4 %. */
    public static final double ROOTLETS_SD = 0.25;
    /** Judgement: malting grain that nobody tested grows at 90 to 99 %. */
    public static final double UNTESTED_GROWING_SD = 0.03;
    /** Judgement: eight rates of enzyme loss in ten lie within {@link EnzymeBand}'s factor. */
    public static final double ENZYME_LOSS_SD = Math.log(EnzymeBand.RATE_RATIO) / Interval.TENTH_SD;
    /** Judgement: no dial is truer than this. */
    private static final double TRUEST_DIAL_K = 0.5;
    /** Judgement: no moisture of raw grain is known better, share of wet weight. */
    private static final double SUREST_MOISTURE_FRACTION = 0.001;

    private Priors() {}

    /** The lot as its file states it. */
    public static Belief lot(GrainLot lot) {
        SteepModel stated = SteepModel.of(lot, SteepParameters.defaults());
        SteepParameters.Uptake uptake = stated.parameters().uptake();
        double growth = Metabolism.of(lot, MetabolismParameters.defaults()).growthRateRatio();
        String name = lot.name();
        double rawFraction = lot.moisture().moisture().wetBasisFraction();
        double rawSd = Math.max(SUREST_MOISTURE_FRACTION, lot.moisture().sdFraction());
        return Belief.independent(List.of(
                single(Trait.STEEP_RATE, name, stated.rateRatio(), STEEP_RATE_SD),
                single(Trait.SATURATION, name, uptake.saturationRatio(), SATURATION_SD),
                single(Trait.BURST, name, uptake.burstRatio(), BURST_SD),
                single(Trait.GROWTH_RATE, name, growth, GROWTH_RATE_SD),
                single(Trait.RESPIRATION, name, 1, RESPIRATION_SD),
                single(Trait.KERNEL_RATE, name, DryingParameters.KERNEL_RATIO, KERNEL_RATE_SD),
                single(Trait.RAW_MOISTURE, name, rawFraction, rawSd)));
    }

    /** A lot and a house as their files state them. */
    public static Belief of(GrainLot lot, House house) {
        return lot(lot).and(house(house));
    }

    /** Everything a house may teach, as its file states it. */
    public static Belief house(House house) {
        Belief belief = Belief.nothing();
        for (String place : house.kit().trays().stream()
                .map(trays -> trays.place())
                .distinct()
                .toList()) {
            belief = belief.andNew(floor(place));
        }
        for (Heater heater : house.kit().heaters()) belief = belief.andNew(heater(heater));
        for (InsulatedBox box : house.kit().boxes()) belief = belief.andNew(box(box));
        return belief;
    }

    /** Trays or floor of one place. */
    public static Belief floor(String place) {
        return Belief.independent(List.of(single(Trait.FLOOR_DRYING, place, 1, FLOOR_DRYING_SD)));
    }

    /** A heater as the house file states it. */
    public static Belief heater(Heater heater) {
        String name = heater.name();
        double flowSd = heater.air().flowMeasured() ? MEASURED_AIR_FLOW_SD : AIR_FLOW_SD;
        double dialSd = Math.max(TRUEST_DIAL_K, heater.control().thermostatErrorK());
        return Belief.independent(List.of(
                single(Trait.AIR_FLOW, name, heater.air().airFlowM3PerHour(), flowSd),
                single(Trait.DIAL_OFFSET, name, 0, dialSd),
                single(
                        Trait.COLOUR_RATE,
                        name,
                        KilnParameters.defaults().colour().rateRatio(),
                        COLOUR_RATE_SD)));
    }

    /** A box for couching as the house file states it. */
    public static Belief box(InsulatedBox box) {
        double lossSd = box.lossWPerK().isPresent() ? TESTED_BOX_LOSS_SD : BOX_LOSS_SD;
        double lossWPerK = box.lossWPerK().orElse(CouchParameters.Box.LOSS_W_PER_K);
        return Belief.independent(List.of(
                single(Trait.BOX_LOSS, box.name(), lossWPerK, lossSd),
                single(Trait.COUCH_HEAT, box.name(), 1, COUCH_HEAT_SD)));
    }

    private static Single single(Trait trait, String item, double value, double axisSd) {
        return new Single(new Unknown(trait, item), value, axisSd);
    }
}
