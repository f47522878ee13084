package piecewright.process.kiln;

import piecewright.process.GrainMass;
import piecewright.process.KilnState;
import piecewright.process.Ledgers;
import piecewright.process.PieceState;

/**
 * The coupled equations of grain under heat, and one classical Runge-Kutta step of them. The vector is dry-basis
 * moisture, grain temperature in °C, colour in EBC, and the logarithms of surviving enzyme and precursor.
 */
interface HeatedGrain {
    int MOISTURE = 0;
    int GRAIN_C = 1;
    int COLOUR = 2;
    int LN_DIASTATIC = 3;
    int LN_SMM = 4;
    int SIZE = 5;

    /** Writes the change per hour of each component. */
    void rates(double atHours, double[] now, double[] perHour);

    static double[] vectorOf(PieceState state) {
        KilnState kiln = state.kiln();
        return new double[] {
            state.mass().dryBasisRatio(),
            state.grainC(),
            kiln.colourEbc(),
            Math.log(kiln.diastaticFraction()),
            Math.log(kiln.smmFraction())
        };
    }

    /** The state with the vector's figures in it; water lost goes to the ledger as vapour. */
    static PieceState stateOf(PieceState before, double[] vector) {
        GrainMass mass = before.mass();
        double waterKg = Math.min(mass.waterKg(), vector[MOISTURE] * mass.dryMatterKg());
        Ledgers.Water water = before.ledgers().water();
        Ledgers.Water after = new Ledgers.Water(
                water.absorbedKg(),
                water.sprinkledKg(),
                water.formedKg(),
                water.evaporatedKg() + mass.waterKg() - waterKg,
                water.removedKg());
        return before.withMass(new GrainMass(mass.initialDryMatterKg(), mass.dryMatterKg(), waterKg))
                .withLedgers(before.ledgers().withWater(after))
                .withGrainC(vector[GRAIN_C])
                .withKiln(new KilnState(vector[COLOUR], Math.exp(vector[LN_DIASTATIC]), Math.exp(vector[LN_SMM])));
    }

    /** The vector one step later. */
    static double[] advanced(HeatedGrain grain, double[] start, double atHours, double stepHours) {
        double[] first = new double[SIZE];
        double[] second = new double[SIZE];
        double[] third = new double[SIZE];
        double[] fourth = new double[SIZE];
        double half = stepHours / 2;
        grain.rates(atHours, start, first);
        grain.rates(atHours + half, along(start, first, half), second);
        grain.rates(atHours + half, along(start, second, half), third);
        grain.rates(atHours + stepHours, along(start, third, stepHours), fourth);
        double[] end = start.clone();
        for (int i = 0; i < SIZE; i++) {
            end[i] += stepHours / 6 * (first[i] + 2 * second[i] + 2 * third[i] + fourth[i]);
        }
        return end;
    }

    private static double[] along(double[] start, double[] perHour, double hours) {
        double[] there = new double[SIZE];
        for (int i = 0; i < SIZE; i++) there[i] = start[i] + hours * perHour[i];
        return there;
    }
}
