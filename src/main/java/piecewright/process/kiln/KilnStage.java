package piecewright.process.kiln;

import java.util.Objects;
import piecewright.house.Heater.HotAir;
import piecewright.process.PieceState;
import piecewright.process.Stage;
import piecewright.process.Surroundings;

/**
 * Drying or curing in one heater at one set temperature. The air-on is taken as reached ({@link HeaterLimit} says
 * whether it can be); the grain's temperature is the mean of the {@link DryingBed}, at once, so warming-up is left out.
 * Dry matter does not change. A couch before the kiln multiplies the substrate by what its index says.
 */
public final class KilnStage implements Stage {
    /** Parts of a step in which bound water is followed: its rate falls steeply with moisture. */
    private static final int BOUND_PARTS = 4;

    private final DryingBed bed;
    private final HeatChemistry chemistry;
    private final RoastParameters roast;
    private final double airOnC;
    private final HotAir heater;
    private final Surroundings room;

    /**
     * @param airOnC set temperature, °C, [0, 150]; in a warmer room the air-on is the room's
     * @param substrateRatio S of the style before any couch, more than 0
     */
    public KilnStage(
            KilnParameters parameters, double airOnC, HotAir heater, Surroundings room, double substrateRatio) {
        this.bed = new DryingBed(parameters.drying());
        this.chemistry = new HeatChemistry(parameters, substrateRatio);
        this.roast = parameters.roast();
        if (!(airOnC >= 0 && airOnC <= 150)) {
            throw new IllegalArgumentException("airOnC must be in [0, 150]: " + airOnC);
        }
        this.airOnC = airOnC;
        this.heater = Objects.requireNonNull(heater);
        this.room = Objects.requireNonNull(room);
    }

    @Override
    public PieceState step(PieceState start, double atHours, double stepHours) {
        HeatedGrain grain = equations(start);
        double[] now = HeatedGrain.vectorOf(start);
        int parts = bed.isBound(now[HeatedGrain.MOISTURE]) ? BOUND_PARTS : 1;
        double partHours = stepHours / parts;
        for (int i = 0; i < parts; i++) now = HeatedGrain.advanced(grain, now, atHours + i * partHours, partHours);
        AirOn air = airAt(atHours + stepHours);
        now[HeatedGrain.GRAIN_C] = bedAt(now[HeatedGrain.MOISTURE], start.mass().dryMatterKg(), air)
                .meanGrainC();
        return HeatedGrain.stateOf(start, now);
    }

    /** The air-on at that hour. */
    public AirOn airAt(double atHours) {
        return AirOn.of(airOnC, heater.airFlowM3PerHour(), room.airC(atHours), room.humidityFraction());
    }

    /** The bed of that state at that hour: drying rate, temperatures, exhaust. */
    public BedStep bedAt(PieceState state, double atHours) {
        return bedAt(state.mass().dryBasisRatio(), state.mass().dryMatterKg(), airAt(atHours));
    }

    /** The equations for a piece whose dry matter and couch do not change. Temperature is not one of its states. */
    HeatedGrain equations(PieceState piece) {
        double dryMatterKg = piece.mass().dryMatterKg();
        double substrateRatio = chemistry.substrateRatio(piece.couch().indexHours());
        return (atHours, now, perHour) -> {
            BedStep step = bedAt(now[HeatedGrain.MOISTURE], dryMatterKg, airAt(atHours));
            perHour[HeatedGrain.MOISTURE] = -step.dryingPerHour();
            perHour[HeatedGrain.GRAIN_C] = 0;
            chemistry.rates(step.meanGrainC(), substrateRatio, now, perHour);
        };
    }

    /** The bed, its mean held to the cap of wet kernels. */
    private BedStep bedAt(double dryBasisRatio, double dryMatterKg, AirOn air) {
        BedStep step = bed.step(dryBasisRatio, dryMatterKg, air);
        boolean wet = dryBasisRatio / (1 + dryBasisRatio) > roast.wetFraction();
        if (!wet || step.meanGrainC() <= roast.wetCapC()) return step;
        return new BedStep(step.dryingPerHour(), roast.wetCapC(), step.topC(), step.exhaustHumidityRatio());
    }
}
