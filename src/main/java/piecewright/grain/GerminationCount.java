package piecewright.grain;

import java.util.OptionalInt;

/**
 * One dish of a germination test: corns laid, and germinated corns counted so far at each reading.
 *
 * @param waterMl water in the dish, mL; 4 for energy, 8 for water sensitivity
 * @param corns corns laid, 1 or more
 * @param by24Hours cumulative germinated corns at 24 h, if read; likewise 48 and 72
 */
public record GerminationCount(
        double waterMl, int corns, OptionalInt by24Hours, OptionalInt by48Hours, OptionalInt by72Hours) {
    public GerminationCount {
        if (corns < 1) throw new IllegalArgumentException("corns must be 1 or more: " + corns);
        if (!(waterMl > 0 && waterMl <= 50)) {
            throw new IllegalArgumentException("waterMl must be in (0, 50]: " + waterMl);
        }
        int before = 0;
        for (OptionalInt count : new OptionalInt[] {by24Hours, by48Hours, by72Hours}) {
            if (count.isEmpty()) continue;
            if (count.getAsInt() < before || count.getAsInt() > corns) {
                throw new IllegalArgumentException(
                        "cumulative counts must rise and stay at or below corns: " + count.getAsInt());
            }
            before = count.getAsInt();
        }
        if (by24Hours.isEmpty() && by48Hours.isEmpty() && by72Hours.isEmpty()) {
            throw new IllegalArgumentException("a dish needs at least one count");
        }
    }

    /** The last cumulative count. */
    public int germinated() {
        return by72Hours.orElse(by48Hours.orElse(by24Hours.orElse(0)));
    }
}
