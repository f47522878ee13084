package piecewright.learn;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import piecewright.house.Scale;
import piecewright.journal.AcrospireCount;
import piecewright.learn.Comparison.Outcome;
import piecewright.quantity.Moisture;

/** What came of a batch, each figure with the error it was found with. */
public final class Outcomes {
    /** Names of the figures, as they are compared. */
    public static final String YIELD = "yield";

    public static final String STEEP_OUT = "steep-out";
    public static final String ACROSPIRE = "acrospire";
    public static final String COLOUR = "colour";

    /** Judgement: dry matter a steep washes out, share; the same in both batches, so only its spread would matter. */
    private static final double LEACHED_FRACTION = 0.01;

    private final Instant at;
    private final Scale scale;
    private final List<Outcome> outcomes = new ArrayList<>();

    public Outcomes(Instant at, Scale scale) {
        this.at = at;
        this.scale = scale;
    }

    public List<Outcome> all() {
        return List.copyOf(outcomes);
    }

    /** Malt of so much grain. */
    public Outcomes yield(double maltKg, double grainKg) {
        double sdKg = Math.hypot(ReadingErrors.handledKg(scale, maltKg), ReadingErrors.handledKg(scale, grainKg) / 2);
        return with(YIELD, Figure.WEIGHT, maltKg / grainKg, sdKg / grainKg);
    }

    /** Weight as the piece was cast, of so much dry matter steeped. */
    public Outcomes steepOut(OptionalDouble castKg, double dryKg) {
        if (castKg.isEmpty() || castKg.getAsDouble() <= dryKg) return this;
        double fraction = 1 - dryKg * (1 - LEACHED_FRACTION) / castKg.getAsDouble();
        return with(
                STEEP_OUT, Figure.MOISTURE, new Moisture(fraction).wetBasisFraction(), ReadingErrors.DRAINED_FRACTION);
    }

    public Outcomes acrospire(AcrospireCount count) {
        double mean = count.meanFraction();
        double sd = Math.max(0.02, count.sdFraction() / Math.sqrt(count.of()));
        return with(ACROSPIRE, Figure.ACROSPIRE, mean, sd);
    }

    public Outcomes colour(double colourEbc) {
        return colourEbc > 0 ? with(COLOUR, Figure.COLOUR, colourEbc, ReadingErrors.COLOUR_SD) : this;
    }

    private Outcomes with(String name, Figure figure, double value, double sd) {
        outcomes.add(new Outcome(name, new Observation(name, at, figure, value, sd)));
        return this;
    }
}
