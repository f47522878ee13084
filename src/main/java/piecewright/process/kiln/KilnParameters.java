package piecewright.process.kiln;

import java.util.Objects;

/** Everything about heat that calibration or a person may move; not the heater, which is kit. */
public record KilnParameters(
        DryingParameters drying,
        ColourParameters colour,
        EnzymeParameters enzymes,
        PrecursorParameters precursor,
        RoastParameters roast) {
    public KilnParameters {
        Objects.requireNonNull(drying);
        Objects.requireNonNull(colour);
        Objects.requireNonNull(enzymes);
        Objects.requireNonNull(precursor);
        Objects.requireNonNull(roast);
    }

    public static KilnParameters defaults() {
        return new KilnParameters(
                DryingParameters.defaults(),
                ColourParameters.defaults(),
                EnzymeParameters.defaults(),
                PrecursorParameters.defaults(),
                RoastParameters.defaults());
    }

    public KilnParameters withDrying(DryingParameters changed) {
        return new KilnParameters(changed, colour, enzymes, precursor, roast);
    }

    public KilnParameters withColour(ColourParameters changed) {
        return new KilnParameters(drying, changed, enzymes, precursor, roast);
    }

    public KilnParameters withEnzymes(EnzymeParameters changed) {
        return new KilnParameters(drying, colour, changed, precursor, roast);
    }
}
