package piecewright.learn;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import piecewright.belief.Trait;
import piecewright.belief.Unknown;
import piecewright.belief.Values;
import piecewright.house.Heater;
import piecewright.house.Heater.HotAir;
import piecewright.plan.Heaping;
import piecewright.plan.Outfit;
import piecewright.plan.RoastBlock;
import piecewright.plan.Setup;
import piecewright.plan.StewBlock;
import piecewright.process.Metabolism;
import piecewright.process.MetabolismParameters;
import piecewright.process.PieceState;
import piecewright.process.Stage;
import piecewright.process.Surroundings;
import piecewright.process.germination.Cover;
import piecewright.process.germination.FloorBed;
import piecewright.process.germination.GrowthParameters;
import piecewright.process.germination.WetHeap;
import piecewright.process.germination.WitherBed;
import piecewright.process.kiln.KilnParameters;
import piecewright.process.kiln.KilnStage;
import piecewright.process.steep.AirRest;
import piecewright.process.steep.Bath;
import piecewright.process.steep.Immersion;
import piecewright.process.steep.Standing;
import piecewright.process.steep.SteepModel;
import piecewright.process.steep.SteepParameters;
import piecewright.quantity.Moisture;

/** The stages of one piece in one kit, for any values of what is unknown about them. */
final class FittedStages {
    private static final List<Trait> STEEPING =
            List.of(Trait.STEEP_RATE, Trait.SATURATION, Trait.BURST, Trait.RESPIRATION);
    private static final List<Trait> RESTING =
            List.of(Trait.STEEP_RATE, Trait.SATURATION, Trait.BURST, Trait.RESPIRATION, Trait.GROWTH_RATE);
    private static final List<Trait> GROWING = List.of(Trait.GROWTH_RATE, Trait.RESPIRATION);
    private static final List<Trait> HEATING = List.of(Trait.AIR_FLOW, Trait.DIAL_OFFSET, Trait.COLOUR_RATE);

    private final Setup setup;
    private final String lot;

    FittedStages(Setup setup, String lot) {
        this.setup = setup;
        this.lot = lot;
    }

    Setup setup() {
        return setup;
    }

    /** The piece before its first act. */
    Rerun.Raw raw(double startC) {
        Moisture stated = Moisture.ofDryBasisRatio(setup.lot().moistureRatio());
        double grainKg = setup.dryMatterKg() / (1 - stated.wetBasisFraction());
        double startEbc = setup.style().kiln().colourBase().startEbc();
        double startChit = setup.models().steep().startChitRatio();
        return new Rerun.Raw(
                values -> PieceState.rawGrain(
                        grainKg,
                        new Moisture(values.of(Trait.RAW_MOISTURE, lot, stated.wetBasisFraction())),
                        startChit,
                        startEbc,
                        startC),
                Set.of(new Unknown(Trait.RAW_MOISTURE, lot)));
    }

    Stage immersion(Values values, int number) {
        Bath bath = new Bath(setup.fillC(), setup.outfit().soaking().waterL(number));
        return new Immersion(steep(values), metabolism(values), setup.air().steep(), Standing.BUCKET, bath);
    }

    Set<Unknown> immersionMoves() {
        return ofLot(STEEPING);
    }

    Stage rest(Values values) {
        return new AirRest(steep(values), metabolism(values), setup.air().steep(), setup.restStanding());
    }

    Set<Unknown> restMoves() {
        return ofLot(RESTING);
    }

    Stage floor(Values values) {
        Outfit.Growing growing = setup.outfit().growing();
        return new FloorBed(
                metabolism(values), growth(values), setup.air().floor(), growing.areaM2(), Cover.DAMP_CLOTH);
    }

    Stage heap(Values values, Heaping heaping) {
        return new WetHeap(metabolism(values), growth(values), heaping.air(), heaping.heap());
    }

    Stage wither(Values values) {
        double areaM2 = setup.outfit().withering().areaM2();
        return new WitherBed(metabolism(values), growth(values), setup.air().wither(), areaM2);
    }

    /** Spread thin after a hot couch: it dries as for a wither and grows no more. */
    Stage cooling(Values values) {
        Stage bed = wither(values);
        return (start, atHours, stepHours) ->
                bed.step(start, atHours, stepHours).withGrowth(start.growth());
    }

    /** The hot couch of this piece; empty for a style that has none. */
    Optional<FittedCouch> couch() {
        return setup.couching()
                .map(couching -> new FittedCouch(
                        couching.model().parameters(),
                        setup.lot().energyFraction(),
                        couching.box().name()));
    }

    Set<Unknown> floorMoves() {
        Unknown drying =
                new Unknown(Trait.FLOOR_DRYING, setup.outfit().growing().place());
        return Stream.concat(ofLot(GROWING).stream(), Stream.of(drying)).collect(Collectors.toUnmodifiableSet());
    }

    /**
     * Drying or curing.
     *
     * @param heater the dryer or the curer
     * @param dialC what its dial says
     * @param air the heater's air as its vents stand
     */
    Stage kiln(Values values, Heater heater, double dialC, HotAir air) {
        double airOnC = dialC + values.of(Trait.DIAL_OFFSET, heater.name(), 0);
        double heldC = Math.max(0, Math.min(150, airOnC));
        double substrate = setup.style().kiln().colourBase().substrateRatio();
        return new KilnStage(
                kilnParameters(values, heater), heldC, blown(values, heater, air), room(heater), substrate);
    }

    Set<Unknown> kilnMoves(Heater heater) {
        Unknown kernels = new Unknown(Trait.KERNEL_RATE, lot);
        Stream<Unknown> ofHeater = HEATING.stream().map(trait -> new Unknown(trait, heater.name()));
        return Stream.concat(ofHeater, Stream.of(kernels)).collect(Collectors.toUnmodifiableSet());
    }

    /** The stew of this piece; empty for a style that has none. */
    Optional<Stew> stew() {
        return setup.outfit().ovens().stewing().map(stewing -> new Stew(stewing.oven()));
    }

    /** The roast of this piece; empty for a style that has none. */
    Optional<Roast> roast() {
        return setup.outfit().ovens().roasting().map(roasting -> new Roast(roasting.oven()));
    }

    /** An oven is as hot as asked: only how fast it colours is unknown. */
    Set<Unknown> ovenMoves(Heater oven) {
        return Set.of(new Unknown(Trait.COLOUR_RATE, oven.name()));
    }

    /** A stew in that oven. */
    final class Stew {
        private final Heater oven;

        private Stew(Heater oven) {
            this.oven = oven;
        }

        Heater oven() {
            return oven;
        }

        PieceState stewed(Values values, PieceState green) {
            return StewBlock.of(colouring(values, oven)).orElseThrow().stewed(green);
        }
    }

    /** A roast in that oven. */
    final class Roast {
        private final Heater oven;

        private Roast(Heater oven) {
            this.oven = oven;
        }

        Heater oven() {
            return oven;
        }

        PieceState roasted(Values values, PieceState malt, int loads, double roomC) {
            RoastBlock block = RoastBlock.of(colouring(values, oven)).orElseThrow();
            return block.after(malt, Math.min(loads, block.loads()), roomC);
        }
    }

    /** The same setup where everything colours as fast as that heater does. */
    private Setup colouring(Values values, Heater heater) {
        return setup.withKiln(kilnParameters(values, heater));
    }

    /** The room a heater stands in. */
    Surroundings room(Heater heater) {
        boolean dries = heater.equals(setup.outfit().drying().dryer());
        return dries ? setup.air().dryer() : setup.air().curer();
    }

    /** The heater of the kit by its name; empty for one this piece does not use. */
    Optional<Heater> heater(String name) {
        Outfit.Drying drying = setup.outfit().drying();
        return Stream.of(drying.dryer(), drying.curer())
                .filter(heater -> heater.name().equals(name))
                .findFirst();
    }

    private Set<Unknown> ofLot(List<Trait> traits) {
        return traits.stream().map(trait -> new Unknown(trait, lot)).collect(Collectors.toUnmodifiableSet());
    }

    private SteepModel steep(Values values) {
        SteepModel stated = setup.models().steep();
        SteepParameters.Uptake uptake = stated.parameters().uptake();
        double burst = values.of(Trait.BURST, lot, uptake.burstRatio());
        double saturation = values.of(Trait.SATURATION, lot, uptake.saturationRatio());
        return new SteepModel(
                values.of(Trait.STEEP_RATE, lot, stated.rateRatio()),
                stated.startChitRatio(),
                stated.parameters()
                        .withUptake(uptake.withSaturationRatio(saturation).withBurstRatio(burst)));
    }

    private Metabolism metabolism(Values values) {
        Metabolism stated = setup.models().metabolism();
        MetabolismParameters parameters = stated.parameters();
        double heat = parameters.heatAt20WPerKg() * values.of(Trait.RESPIRATION, lot, 1);
        double growth = values.of(Trait.GROWTH_RATE, lot, stated.growthRateRatio());
        return new Metabolism(stated.germinatingFraction(), growth, parameters.withHeatAt20WPerKg(heat));
    }

    private GrowthParameters growth(Values values) {
        GrowthParameters stated = setup.models().growth();
        double drying = values.of(Trait.FLOOR_DRYING, setup.outfit().growing().place(), 1);
        return stated.withWitherPerHourKPa(stated.witherPerHourKPa() * drying);
    }

    private KilnParameters kilnParameters(Values values, Heater heater) {
        KilnParameters stated = setup.models().kiln();
        double kernels = values.of(Trait.KERNEL_RATE, lot, stated.drying().kernelRatio());
        double colour =
                values.of(Trait.COLOUR_RATE, heater.name(), stated.colour().rateRatio());
        return stated.withDrying(stated.drying().withKernelRatio(kernels))
                .withColour(stated.colour().withRateRatio(colour));
    }

    private static HotAir blown(Values values, Heater heater, HotAir air) {
        double stated = heater.air().airFlowM3PerHour();
        double flow = values.of(Trait.AIR_FLOW, heater.name(), stated);
        return air.withAirFlowM3PerHour(air.airFlowM3PerHour() * flow / stated);
    }
}
