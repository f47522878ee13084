package piecewright.process.kiln;

import java.util.Objects;
import java.util.OptionalDouble;
import piecewright.process.Psychrometrics;

/**
 * A bed of grain with warm air through it, as one body: R = A (1 - exp(-K / A)), where A is the water the air can carry
 * and K what the kernels can give. Fitted to a bed of 15 layers within 5 % of its hours; moisture is the mean of a
 * turned bed, and an unturned deep bed is far from its mean. Heat to warm the grain is left out. Who asks often about
 * one air should keep {@link #in}.
 */
public final class DryingBed {
    private final DryingParameters parameters;

    public DryingBed(DryingParameters parameters) {
        this.parameters = Objects.requireNonNull(parameters);
    }

    /** This bed while that air goes through it; what depends on the air alone is worked out once. */
    public BedInAir in(AirOn air) {
        return in(air, heat(air.airOnC()));
    }

    /** The same where what the air-on's temperature decides is known already. */
    BedInAir in(AirOn air, BedInAir.Heat heat) {
        return new BedInAir(parameters, air, heat);
    }

    /** What an air-on's temperature decides. */
    BedInAir.Heat heat(double airOnC) {
        return new BedInAir.Heat(airOnC, kernelPerHour(airOnC), Psychrometrics.saturationPressurePa(airOnC));
    }

    /**
     * Water leaving, kg per kg of dry matter and hour; 0 at or below equilibrium with the air-on.
     *
     * @param dryBasisRatio mean moisture, kg of water per kg of dry matter, 0 or more
     * @param dryMatterKg dry matter in the bed, kg, more than 0
     */
    public double dryingPerHour(double dryBasisRatio, double dryMatterKg, AirOn air) {
        return in(air).dryingPerHour(dryBasisRatio, dryMatterKg);
    }

    /** The same with the temperatures and the exhaust; arguments as in {@link #dryingPerHour}. */
    public BedStep step(double dryBasisRatio, double dryMatterKg, AirOn air) {
        return in(air).step(dryBasisRatio, dryMatterKg);
    }

    /** Moisture below which this air dries no further, kg of water per kg of dry matter. */
    public double driestRatio(AirOn air) {
        return in(air).driestRatio();
    }

    /** Rate constant of a thin layer, per hour: what is above equilibrium falls so fast until the last, bound water. */
    public double kernelPerHour(double airC) {
        double absoluteK = airC + Psychrometrics.ZERO_CELSIUS_K;
        return parameters.kernelRatio()
                * parameters.frequencyPerHour()
                * Math.exp(-parameters.activationK() / absoluteK);
    }

    /**
     * Hours in unchanging air from one moisture to a lower one; empty when this air never dries so far. Below 3 % the
     * last water holds on and the hours grow beyond any use, still as a number.
     *
     * @param fromRatio kg of water per kg of dry matter at the start
     * @param toRatio at the end, at most fromRatio
     */
    public OptionalDouble hoursToDry(double fromRatio, double toRatio, double dryMatterKg, AirOn air) {
        if (!(toRatio <= fromRatio)) {
            throw new IllegalArgumentException("toRatio must be at most fromRatio: " + toRatio + ", " + fromRatio);
        }
        BedInAir bed = in(air);
        double driestRatio = bed.driestRatio();
        if (toRatio <= driestRatio) return OptionalDouble.empty();
        double lowLn = Math.log(toRatio - driestRatio);
        double spanLn = Math.log(fromRatio - driestRatio) - lowLn;
        int panels = 128;
        double sum = 0;
        for (int i = 0; i <= panels; i++) {
            double above = Math.exp(lowLn + spanLn * i / panels);
            double weight = i == 0 || i == panels ? 1 : i % 2 == 1 ? 4 : 2;
            sum += weight * above / bed.dryingPerHour(driestRatio + above, dryMatterKg);
        }
        double hours = sum * spanLn / panels / 3;
        return Double.isFinite(hours) ? OptionalDouble.of(hours) : OptionalDouble.empty();
    }
}
