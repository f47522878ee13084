package piecewright.assess;

import java.time.LocalDate;
import piecewright.grain.GrainKind;

/**
 * The published limit on ergot bodies in raw cereals; local rules go first.
 *
 * @param limitGPerKg g of ergot per kg of grain
 */
record ErgotLimit(double limitGPerKg, LocalDate since) {
    /** Source: Regulation (EU) 2024/1808, second hand: 0.2 g/kg; rye from 1 July 2025. */
    private static final double PRESENT_G_PER_KG = 0.2;
    /** Source: the same, second hand: rye until 30 June 2025; Great Britain 0.5 for all. */
    private static final double RYE_BEFORE_G_PER_KG = 0.5;

    private static final LocalDate RYE_SINCE = LocalDate.of(2025, 7, 1);
    /** Judgement: the day for other cereals is from memory. */
    private static final LocalDate OTHERS_SINCE = LocalDate.of(2024, 7, 1);

    static ErgotLimit of(GrainKind kind, LocalDate today) {
        if (kind != GrainKind.RYE) return new ErgotLimit(PRESENT_G_PER_KG, OTHERS_SINCE);
        return today.isBefore(RYE_SINCE)
                ? new ErgotLimit(RYE_BEFORE_G_PER_KG, OTHERS_SINCE)
                : new ErgotLimit(PRESENT_G_PER_KG, RYE_SINCE);
    }
}
