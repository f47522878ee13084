package piecewright.style;

import java.util.List;
import java.util.Objects;
import piecewright.quantity.HoursRange;
import piecewright.quantity.TemperatureRange;

/**
 * How a style is dried and cured. The ladder says the highest air-on temperature at each moisture; a rung opens when
 * the moisture is at or below its figure.
 *
 * @param ladder rungs from wet to dry: moisture falling, temperature rising; the first is open from loading
 * @param cureC air-on temperatures of curing, °C; the plan aims at the middle
 * @param cureHours length of curing, hours
 * @param endMoistureFraction moisture off the kiln that the style may have at most, wet basis
 * @param colourBase colour and substrate of the malt before heat
 */
public record KilnSchedule(
        List<Rung> ladder,
        TemperatureRange cureC,
        HoursRange cureHours,
        double endMoistureFraction,
        ColourBase colourBase) {
    public KilnSchedule {
        ladder = List.copyOf(ladder);
        Objects.requireNonNull(cureC);
        Objects.requireNonNull(cureHours);
        Objects.requireNonNull(colourBase);
        if (ladder.isEmpty()) throw new IllegalArgumentException("ladder must not be empty");
        for (int i = 1; i < ladder.size(); i++) {
            if (!(ladder.get(i).belowMoistureFraction() < ladder.get(i - 1).belowMoistureFraction()
                    && ladder.get(i).airOnC() > ladder.get(i - 1).airOnC())) {
                throw new IllegalArgumentException(
                        "ladder must fall in moisture and rise in temperature at rung " + (i + 1));
            }
        }
    }

    /** The same schedule with another cure. */
    public KilnSchedule withCure(TemperatureRange changedC, HoursRange changedHours) {
        return new KilnSchedule(ladder, changedC, changedHours, endMoistureFraction, colourBase);
    }

    /** At or below this moisture (wet basis) the air-on may be this warm, °C. The first rung's figure is 1 or less. */
    public record Rung(double belowMoistureFraction, double airOnC) {}

    /**
     * @param startEbc colour of the green malt, EBC, 0 or more
     * @param substrateRatio factor S on the rate of colour formation, more than 0
     */
    public record ColourBase(double startEbc, double substrateRatio) {}
}
