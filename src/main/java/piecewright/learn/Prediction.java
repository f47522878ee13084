package piecewright.learn;

import java.util.function.Function;
import piecewright.belief.Values;

/** Says what would have been observed if the unknowns had given values; pure. */
public interface Prediction {
    Seen at(Values values);

    /** Observations foretold for some values. */
    interface Seen {
        /** One figure for each observation, in their order and units. */
        double[] figures();

        /** The same for other values; free to reuse what does not depend on the difference. */
        Seen with(Values other);
    }

    /** A prediction that starts afresh each time. */
    static Prediction of(Function<Values, double[]> figures) {
        return new Prediction() {
            @Override
            public Seen at(Values values) {
                double[] seen = figures.apply(values);
                Prediction again = this;
                return new Seen() {
                    @Override
                    public double[] figures() {
                        return seen;
                    }

                    @Override
                    public Seen with(Values other) {
                        return again.at(other);
                    }
                };
            }
        };
    }
}
