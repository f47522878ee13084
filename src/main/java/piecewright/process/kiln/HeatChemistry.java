package piecewright.process.kiln;

/** What heat makes and unmakes in grain of one substrate: colour, enzymes, precursor. */
final class HeatChemistry {
    private final ColourKinetics colour;
    private final EnzymeSurvival enzymes;
    private final DmsPrecursor precursor;
    private final double styleRatio;

    HeatChemistry(KilnParameters parameters, double styleRatio) {
        if (!(styleRatio > 0)) throw new IllegalArgumentException("substrateRatio must be above 0: " + styleRatio);
        this.colour = new ColourKinetics(parameters.colour());
        this.enzymes = new EnzymeSurvival(parameters.enzymes());
        this.precursor = new DmsPrecursor(parameters.precursor());
        this.styleRatio = styleRatio;
    }

    /** Substrate S of grain with that couch index. */
    double substrateRatio(double couchIndexHours) {
        return colour.couchedSubstrateRatio(styleRatio, couchIndexHours);
    }

    /** Writes the rates of the three at a grain temperature; moisture and colour are read from the vector. */
    void rates(double grainC, double substrateRatio, double[] now, double[] perHour) {
        double moisture = now[HeatedGrain.MOISTURE];
        double wetBasisFraction = moisture / (1 + moisture);
        perHour[HeatedGrain.COLOUR] =
                colour.formationEbcPerHour(now[HeatedGrain.COLOUR], grainC, wetBasisFraction, substrateRatio);
        perHour[HeatedGrain.LN_DIASTATIC] = -enzymes.lossPerHour(grainC, wetBasisFraction);
        perHour[HeatedGrain.LN_SMM] = -precursor.lossPerHour(grainC);
    }
}
