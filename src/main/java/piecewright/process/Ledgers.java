package piecewright.process;

import java.util.Objects;

/** Everything that came in or went out since steep-in, kg; all figures grow with time. */
public record Ledgers(Water water, DryMatter dryMatter, Gas gas) {
    public Ledgers {
        Objects.requireNonNull(water);
        Objects.requireNonNull(dryMatter);
        Objects.requireNonNull(gas);
    }

    public static Ledgers empty() {
        return new Ledgers(new Water(0, 0, 0, 0, 0), new DryMatter(0, 0, 0, 0, 0), new Gas(0, 0));
    }

    public Ledgers withWater(Water changed) {
        return new Ledgers(changed, dryMatter, gas);
    }

    public Ledgers withDryMatter(DryMatter changed) {
        return new Ledgers(water, changed, gas);
    }

    public Ledgers withGas(Gas changed) {
        return new Ledgers(water, dryMatter, changed);
    }

    /** Water: drunk in the steep, sprinkled, formed by respiration; gone as vapour, gone with rootlets and crumbs. */
    public record Water(
            double absorbedKg, double sprinkledKg, double formedKg, double evaporatedKg, double removedKg) {}

    /** Dry matter gone: leached, respired, in rootlets, in handling, burnt off in a roast. Floaters leave before. */
    public record DryMatter(
            double leachedKg, double respiredKg, double rootletsKg, double handlingKg, double roastedKg) {
        /** The same with so much more burnt off. */
        public DryMatter roasted(double moreKg) {
            return new DryMatter(leachedKg, respiredKg, rootletsKg, handlingKg, roastedKg + moreKg);
        }
    }

    /** Gas: oxygen taken in, carbon dioxide given off. */
    public record Gas(double oxygenInKg, double carbonDioxideOutKg) {}
}
