package piecewright.purchase;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Objects;

/**
 * The money of one list, as it was typed; never converted and never mixed.
 *
 * @param before what stands before the figure, such as "€"; may be empty
 * @param after what stands behind it, such as "EUR" or "kr"; may be empty, and is when before is not
 */
public record Currency(String before, String after) {
    public Currency {
        Objects.requireNonNull(before);
        Objects.requireNonNull(after);
        if (!before.isEmpty() && !after.isEmpty()) {
            throw new IllegalArgumentException("a currency stands on one side: " + before + ", " + after);
        }
    }

    /** Prices without a word of what money it is. */
    public static Currency unsaid() {
        return new Currency("", "");
    }

    /** The word or sign of it; empty when nothing was said. */
    public String name() {
        return before + after;
    }

    /** An amount with two decimals and the currency where it was typed. */
    public String of(BigDecimal amount) {
        String figure = amount.setScale(2, RoundingMode.HALF_UP).toPlainString();
        return before + figure + (after.isEmpty() ? "" : " " + after);
    }
}
