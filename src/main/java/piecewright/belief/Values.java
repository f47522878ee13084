package piecewright.belief;

import java.util.Arrays;
import java.util.List;

/** One value for each unknown. */
public final class Values {
    private final List<Unknown> unknowns;
    private final double[] values;

    /** values in the order of the unknowns, each in its trait's unit. */
    public Values(List<Unknown> unknowns, double[] values) {
        this.unknowns = unknowns;
        this.values = values;
    }

    public List<Unknown> unknowns() {
        return unknowns;
    }

    /** The value, or another where nothing is unknown about it. */
    public double of(Trait trait, String item, double otherwise) {
        for (int i = 0; i < values.length; i++) {
            Unknown unknown = unknowns.get(i);
            if (unknown.trait() == trait && unknown.item().equals(item)) return values[i];
        }
        return otherwise;
    }

    /** True when all unknowns of these traits and items have the same value in both. */
    public boolean sameIn(Values other, Iterable<Unknown> some) {
        for (Unknown unknown : some) {
            double mine = of(unknown.trait(), unknown.item(), 0);
            if (mine != other.of(unknown.trait(), unknown.item(), 0)) return false;
        }
        return true;
    }

    @Override
    public String toString() {
        return unknowns + " = " + Arrays.toString(values);
    }
}
