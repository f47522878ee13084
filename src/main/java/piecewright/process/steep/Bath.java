package piecewright.process.steep;

/**
 * Fresh water run into the vessel.
 *
 * @param fillC its temperature, °C, [0, 40]
 * @param waterL how much, L, above 0
 */
public record Bath(double fillC, double waterL) {
    public Bath {
        if (!(fillC >= 0 && fillC <= 40)) throw new IllegalArgumentException("fillC must be in [0, 40]: " + fillC);
        if (!(waterL > 0)) throw new IllegalArgumentException("waterL must be above 0: " + waterL);
    }
}
