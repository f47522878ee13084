package piecewright.process.kiln;

import java.util.Objects;
import piecewright.process.PieceState;
import piecewright.process.Stage;

/**
 * Wet green malt held hot under a cover until it is liquid inside: no water leaves, temperature follows the oven with a
 * lag, enzymes wear, a little colour forms. How far it has liquefied is not part of the state: {@link #hoursToLiquid}.
 */
public final class CoveredStew implements Stage {
    /** Judgement: step of the search for the end of a stew, one minute. */
    private static final double COUNT_HOURS = 1.0 / 60;
    /** Judgement: a stew longer than this would sour, not liquefy. */
    private static final double LONGEST_HOURS = 24;

    private final HeatChemistry chemistry;
    private final RoastParameters.Stew stew;
    private final double setC;
    private final double lagHours;

    /**
     * @param setC oven temperature, °C, [0, 100]
     * @param lagHours thermal lag, hours, more than 0
     * @param substrateRatio S before any couch, more than 0
     */
    public CoveredStew(KilnParameters parameters, double setC, double lagHours, double substrateRatio) {
        Objects.requireNonNull(parameters);
        if (!(setC >= 0 && setC <= 100)) throw new IllegalArgumentException("setC must be in [0, 100]: " + setC);
        if (!(lagHours > 0)) throw new IllegalArgumentException("lagHours must be above 0: " + lagHours);
        this.chemistry = new HeatChemistry(parameters, substrateRatio);
        this.stew = parameters.roast().stew();
        this.setC = setC;
        this.lagHours = lagHours;
    }

    @Override
    public PieceState step(PieceState start, double atHours, double stepHours) {
        double[] end = HeatedGrain.advanced(equations(start), HeatedGrain.vectorOf(start), atHours, stepHours);
        return HeatedGrain.stateOf(start, end);
    }

    /** Share of a full stew done per hour at a grain temperature; 0 below the coolest that stews. */
    public double progressPerHour(double grainC) {
        if (grainC < stew.coolestC()) return 0;
        double countedC = Math.min(grainC, stew.hottestC());
        return Math.exp((countedC - stew.coolestC()) / stew.eFoldingK()) / stew.coolestHours();
    }

    /** Hours until grain that goes in at startC is liquid, infinite if that takes more than a day. */
    public double hoursToLiquid(double startC) {
        double done = 0;
        double hours = 0;
        while (done < 1 && hours < LONGEST_HOURS) {
            double middleC = setC + (startC - setC) * Math.exp(-(hours + COUNT_HOURS / 2) / lagHours);
            done += progressPerHour(middleC) * COUNT_HOURS;
            hours += COUNT_HOURS;
        }
        return done < 1 ? Double.POSITIVE_INFINITY : hours;
    }

    HeatedGrain equations(PieceState piece) {
        double substrateRatio = chemistry.substrateRatio(piece.couch().indexHours());
        return (atHours, now, perHour) -> {
            perHour[HeatedGrain.MOISTURE] = 0;
            perHour[HeatedGrain.GRAIN_C] = (setC - now[HeatedGrain.GRAIN_C]) / lagHours;
            chemistry.rates(now[HeatedGrain.GRAIN_C], substrateRatio, now, perHour);
        };
    }
}
