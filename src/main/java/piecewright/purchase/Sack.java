package piecewright.purchase;

import java.math.BigDecimal;
import java.util.Optional;

/** A size it is sold in, kg, [0.5, 1000], and its price in whatever money. */
public record Sack(double sizeKg, Optional<BigDecimal> price) {
    public Sack {
        if (!(sizeKg >= 0.5 && sizeKg <= 1000)) {
            throw new IllegalArgumentException("sizeKg must be in [0.5, 1000]: " + sizeKg);
        }
        if (price.isPresent() && price.get().signum() < 0) {
            throw new IllegalArgumentException("price must be 0 or more: " + price.get());
        }
    }
}
