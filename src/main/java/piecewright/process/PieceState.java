package piecewright.process;

import java.util.Objects;
import piecewright.quantity.Moisture;

/**
 * The whole state of a piece: what happens next depends on nothing else.
 *
 * @param grainC temperature of grain (mean of bed or pile), °C
 */
public record PieceState(
        GrainMass mass,
        Ledgers ledgers,
        SteepState steep,
        GrowthState growth,
        CouchState couch,
        KilnState kiln,
        double grainC) {
    public PieceState {
        Objects.requireNonNull(mass);
        Objects.requireNonNull(ledgers);
        Objects.requireNonNull(steep);
        Objects.requireNonNull(growth);
        Objects.requireNonNull(couch);
        Objects.requireNonNull(kiln);
    }

    /**
     * Raw grain about to be steeped.
     *
     * @param grainKg weight after floaters were skimmed, kg
     * @param startEbc colour of the green malt this will become, EBC
     * @param chitRatio χ at the first wetting: 0, or negative for a water-sensitive lot
     */
    public static PieceState rawGrain(
            double grainKg, Moisture moisture, double chitRatio, double startEbc, double grainC) {
        double dryKg = grainKg * (1 - moisture.wetBasisFraction());
        return new PieceState(
                new GrainMass(dryKg, dryKg, grainKg - dryKg),
                Ledgers.empty(),
                new SteepState(moisture.dryBasisRatio(), 0, 0, 0, chitRatio),
                new GrowthState(0, 0),
                CouchState.none(),
                new KilnState(startEbc, 1, 1),
                grainC);
    }

    public PieceState withMass(GrainMass changed) {
        return new PieceState(changed, ledgers, steep, growth, couch, kiln, grainC);
    }

    public PieceState withLedgers(Ledgers changed) {
        return new PieceState(mass, changed, steep, growth, couch, kiln, grainC);
    }

    public PieceState withSteep(SteepState changed) {
        return new PieceState(mass, ledgers, changed, growth, couch, kiln, grainC);
    }

    public PieceState withGrowth(GrowthState changed) {
        return new PieceState(mass, ledgers, steep, changed, couch, kiln, grainC);
    }

    public PieceState withCouch(CouchState changed) {
        return new PieceState(mass, ledgers, steep, growth, changed, kiln, grainC);
    }

    public PieceState withKiln(KilnState changed) {
        return new PieceState(mass, ledgers, steep, growth, couch, changed, grainC);
    }

    public PieceState withGrainC(double changedC) {
        return new PieceState(mass, ledgers, steep, growth, couch, kiln, changedC);
    }
}
