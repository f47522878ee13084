package piecewright.grain;

import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;

/**
 * What was seen of a lot beside its dishes.
 *
 * @param viability corns found alive by stain or peroxide, if tested
 * @param brokenFraction broken and peeled corns, share of the weight, [0, 1]
 * @param ergotGPerKg weight of ergot bodies, g per kg of grain, 0 or more
 */
public record LotObservations(
        Optional<Viability> viability, OptionalDouble brokenFraction, OptionalDouble ergotGPerKg, Set<Sign> signs) {
    public LotObservations {
        Objects.requireNonNull(viability);
        signs = Set.copyOf(signs);
        if (brokenFraction.isPresent() && !(brokenFraction.getAsDouble() >= 0 && brokenFraction.getAsDouble() <= 1)) {
            throw new IllegalArgumentException("brokenFraction must be in [0, 1]: " + brokenFraction.getAsDouble());
        }
        if (ergotGPerKg.isPresent() && !(ergotGPerKg.getAsDouble() >= 0 && ergotGPerKg.getAsDouble() <= 1000)) {
            throw new IllegalArgumentException("ergotGPerKg must be in [0, 1000]: " + ergotGPerKg.getAsDouble());
        }
    }

    /**
     * Share of the corns that are whole. Judgement: dishes are laid with whole corns, so that broken ones come on top of
     * those that do not grow there.
     */
    public double wholeFraction() {
        return 1 - brokenFraction.orElse(0);
    }

    /** Nothing was looked for. */
    public static LotObservations none() {
        return new LotObservations(Optional.empty(), OptionalDouble.empty(), OptionalDouble.empty(), Set.of());
    }

    /**
     * How the seed is to be taken: dyed grain as treated whatever was said of it, seed-grade grain as treated unless
     * somebody knows that it is not.
     */
    public Treatment safely(Treatment stated) {
        boolean suspect = signs.contains(Sign.DYED) || signs.contains(Sign.SEED_GRADE) && stated == Treatment.UNKNOWN;
        return suspect ? Treatment.TREATED : stated;
    }

    /** What eye and nose found. */
    public enum Sign {
        DYED("dyed"),
        SEED_GRADE("seed-grade"),
        MUSTY("musty"),
        MOULDY("mouldy"),
        PINK("pink");

        private final String key;

        Sign(String key) {
            this.key = key;
        }

        /** The word used in files. */
        public String key() {
            return key;
        }
    }

    /** Corns tested for life, 1 or more, and how many live. */
    public record Viability(int corns, int alive) {
        public Viability {
            if (corns < 1) throw new IllegalArgumentException("corns must be 1 or more: " + corns);
            if (alive < 0 || alive > corns) throw new IllegalArgumentException("alive must be in 0..corns: " + alive);
        }
    }
}
