package piecewright.process.kiln;

import java.util.Objects;
import java.util.function.DoubleFunction;
import piecewright.house.Heater.HotAir;
import piecewright.process.GrainMass;
import piecewright.process.PieceState;
import piecewright.process.Stage;
import piecewright.process.Surroundings;

/**
 * Drying or curing in one heater at one set temperature. The air-on is taken as reached ({@link HeaterLimit} says
 * whether it can be); the grain's temperature is the mean of the {@link DryingBed}, at once, so warming-up is left out.
 * Dry matter does not change. A couch before the kiln multiplies the substrate by what its index says.
 */
public final class KilnStage implements Stage {
    /** Most parts of a step in which bound water is followed: its rate falls steeply with moisture. */
    private static final int BOUND_PARTS = 4;
    /** Judgement: parts this short against how the rate falls leave an error far below a thousandth of a point. */
    private static final double STIFF_RATIO = 0.35;

    private final DryingBed bed;
    private final HeatChemistry chemistry;
    private final RoastParameters roast;
    private final BedInAir.Heat set;
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
        this.set = bed.heat(airOnC);
        this.heater = Objects.requireNonNull(heater);
        this.room = Objects.requireNonNull(room);
    }

    @Override
    public PieceState step(PieceState start, double atHours, double stepHours) {
        Air air = new Air(atHours, stepHours);
        HeatedGrain grain = equations(start, air);
        double[] now = HeatedGrain.vectorOf(start);
        int parts = parts(air.atStart.stiffnessPerHour(now[HeatedGrain.MOISTURE]) * stepHours);
        double partHours = stepHours / parts;
        for (int i = 0; i < parts; i++) now = HeatedGrain.advanced(grain, now, atHours + i * partHours, partHours);
        BedStep end = air.atEnd.step(now[HeatedGrain.MOISTURE], start.mass().dryMatterKg());
        now[HeatedGrain.GRAIN_C] = cappedC(end.meanGrainC(), now[HeatedGrain.MOISTURE]);
        return HeatedGrain.stateOf(start, now);
    }

    private static int parts(double stiffness) {
        return Math.max(1, Math.min(BOUND_PARTS, (int) Math.ceil(stiffness / STIFF_RATIO)));
    }

    /** The air-on at that hour. */
    public AirOn airAt(double atHours) {
        return AirOn.of(set.airOnC(), heater.airFlowM3PerHour(), room.airC(atHours), room.humidityFraction());
    }

    private BedInAir in(AirOn air) {
        return bed.in(air, air.airOnC() == set.airOnC() ? set : bed.heat(air.airOnC()));
    }

    /** The bed of that state at that hour: drying rate, temperatures, exhaust. */
    public BedStep bedAt(PieceState state, double atHours) {
        GrainMass mass = state.mass();
        BedStep step = in(airAt(atHours)).step(mass.dryBasisRatio(), mass.dryMatterKg());
        return step.withMeanGrainC(cappedC(step.meanGrainC(), mass.dryBasisRatio()));
    }

    /** The equations for a piece whose dry matter and couch do not change. Temperature is not one of its states. */
    HeatedGrain equations(PieceState piece) {
        return equations(piece, atHours -> in(airAt(atHours)));
    }

    private HeatedGrain equations(PieceState piece, DoubleFunction<BedInAir> bedAt) {
        double dryMatterKg = piece.mass().dryMatterKg();
        double substrateRatio = chemistry.substrateRatio(piece.couch().indexHours());
        return (atHours, now, perHour) -> {
            BedStep step = bedAt.apply(atHours).step(now[HeatedGrain.MOISTURE], dryMatterKg);
            perHour[HeatedGrain.MOISTURE] = -step.dryingPerHour();
            perHour[HeatedGrain.GRAIN_C] = 0;
            double grainC = cappedC(step.meanGrainC(), now[HeatedGrain.MOISTURE]);
            chemistry.rates(grainC, substrateRatio, now, perHour);
        };
    }

    /** Mean grain temperature held to the cap of wet kernels. */
    private double cappedC(double meanGrainC, double dryBasisRatio) {
        boolean wet = dryBasisRatio / (1 + dryBasisRatio) > roast.wetFraction();
        return wet ? Math.min(meanGrainC, roast.wetCapC()) : meanGrainC;
    }

    /** The air of one step, worked out at its start, middle and end only: each stands for the times nearest to it. */
    private final class Air implements DoubleFunction<BedInAir> {
        private final double atHours;
        private final double stepHours;
        private final BedInAir atStart;
        private final BedInAir atMiddle;
        private final BedInAir atEnd;

        Air(double atHours, double stepHours) {
            this.atHours = atHours;
            this.stepHours = stepHours;
            this.atStart = in(airAt(atHours));
            this.atMiddle = like(atStart, atHours + stepHours / 2);
            this.atEnd = like(atMiddle, atHours + stepHours);
        }

        private BedInAir like(BedInAir before, double hours) {
            AirOn air = airAt(hours);
            return air.equals(before.air()) ? before : in(air);
        }

        @Override
        public BedInAir apply(double hours) {
            double share = (hours - atHours) / stepHours;
            if (share < 0.25) return atStart;
            return share < 0.75 ? atMiddle : atEnd;
        }
    }
}
