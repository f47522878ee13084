package piecewright.process.kiln;

import java.util.Objects;
import piecewright.process.GrainMass;
import piecewright.process.Ledgers;
import piecewright.process.PieceState;
import piecewright.process.Stage;
import piecewright.process.kiln.RoastParameters.Layer;

/**
 * Grain on a tray in an oven at one set temperature, followed with a lag: dT/dt = (set - T) / lag, not above the wet
 * cap while wet. Judgement: moisture falls at the thin-layer rate of the grain's own temperature towards the roast's
 * floor, as if the oven's air were dry and plentiful. Dry matter burns off as colour forms and takes its water along.
 */
public final class TrayRoast implements Stage {
    private static final int PARTS_PER_STEP = 10;

    private final DryingBed bed;
    private final HeatChemistry chemistry;
    private final RoastParameters roast;
    private final double setC;
    private final Layer layer;

    /**
     * @param setC oven temperature, °C, [0, 230]
     * @param substrateRatio S before any couch, more than 0
     */
    public TrayRoast(KilnParameters parameters, double setC, Layer layer, double substrateRatio) {
        Objects.requireNonNull(parameters);
        if (!(setC >= 0 && setC <= 230)) throw new IllegalArgumentException("setC must be in [0, 230]: " + setC);
        this.bed = new DryingBed(parameters.drying());
        this.chemistry = new HeatChemistry(parameters, substrateRatio);
        this.roast = parameters.roast();
        this.setC = setC;
        this.layer = Objects.requireNonNull(layer);
    }

    /** Runge-Kutta in tenths of the step: a roast moves by minutes. */
    @Override
    public PieceState step(PieceState start, double atHours, double stepHours) {
        HeatedGrain grain = equations(start);
        double[] now = HeatedGrain.vectorOf(start);
        double partHours = stepHours / PARTS_PER_STEP;
        for (int i = 0; i < PARTS_PER_STEP; i++) {
            double[] next = HeatedGrain.advanced(grain, now, atHours + i * partHours, partHours);
            if (isWet(next)) next[HeatedGrain.GRAIN_C] = capped(next[HeatedGrain.GRAIN_C], now[HeatedGrain.GRAIN_C]);
            now = next;
        }
        return burnt(start.kiln().colourEbc(), HeatedGrain.stateOf(start, now));
    }

    private PieceState burnt(double fromEbc, PieceState end) {
        GrainMass mass = end.mass();
        double lostFraction = roast.burnt().between(fromEbc, end.kiln().colourEbc());
        double lostKg = lostFraction * mass.dryMatterKg();
        double vapourKg = lostFraction * mass.waterKg();
        Ledgers ledgers = end.ledgers();
        Ledgers.Water water = ledgers.water();
        return end.withMass(new GrainMass(
                        mass.initialDryMatterKg(), mass.dryMatterKg() - lostKg, mass.waterKg() - vapourKg))
                .withLedgers(new Ledgers(
                        new Ledgers.Water(
                                water.absorbedKg(),
                                water.sprinkledKg(),
                                water.formedKg(),
                                water.evaporatedKg() + vapourKg,
                                water.removedKg()),
                        ledgers.dryMatter().roasted(lostKg),
                        ledgers.gas()));
    }

    HeatedGrain equations(PieceState piece) {
        double substrateRatio = chemistry.substrateRatio(piece.couch().indexHours());
        double floorRatio = layer.floorFraction() / (1 - layer.floorFraction());
        return (atHours, now, perHour) -> {
            double grainC = now[HeatedGrain.GRAIN_C];
            double above = Math.max(0, now[HeatedGrain.MOISTURE] - floorRatio);
            perHour[HeatedGrain.MOISTURE] = -bed.kernelPerHour(grainC) * above;
            double warming = (setC - grainC) / layer.lagHours();
            boolean held = isWet(now) && grainC >= roast.wetCapC();
            perHour[HeatedGrain.GRAIN_C] = held ? Math.min(0, warming) : warming;
            chemistry.rates(grainC, substrateRatio, now, perHour);
        };
    }

    private boolean isWet(double[] vector) {
        double ratio = vector[HeatedGrain.MOISTURE];
        return ratio / (1 + ratio) > roast.wetFraction();
    }

    /** Takes back what a part step overshot the cap by; grain that came in hotter is left to cool. */
    private double capped(double grainC, double beforeC) {
        return Math.min(grainC, Math.max(beforeC, roast.wetCapC()));
    }
}
