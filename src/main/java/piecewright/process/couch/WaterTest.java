package piecewright.process.couch;

/**
 * Warm water cooling in an insulated box: what the box loses. About 5 L stand for a piece of 4.5 kg.
 *
 * @param waterL warm water, litres, above 0
 * @param startC its temperature when the box was closed, °C
 * @param endC its temperature at the end, °C, below startC
 * @param roomC air around the box, °C, below endC
 * @param hours between the two readings, above 0
 */
public record WaterTest(double waterL, double startC, double endC, double roomC, double hours) {
    /** Source: heat capacity of water, 4.19 kJ per kg and K at 20 to 60 °C. */
    private static final double WATER_KJ_PER_KG_K = 4.19;
    /** Source: 3,600 s per hour over 1,000 J per kJ, exact. */
    private static final double KJ_PER_HOUR_PER_W = 3.6;

    public WaterTest {
        if (!(waterL > 0)) throw new IllegalArgumentException("waterL must be above 0: " + waterL);
        if (!(hours > 0)) throw new IllegalArgumentException("hours must be above 0: " + hours);
        if (!(startC > endC && endC > roomC)) {
            throw new IllegalArgumentException("need startC > endC > roomC: " + startC + ", " + endC + ", " + roomC);
        }
    }

    /** UA, W/K: a body that cools as Newton says, C·ln(ΔT0/ΔT1)/t. */
    public double lossWPerK() {
        double heatKJPerK =
                WATER_KJ_PER_KG_K * waterL + CouchParameters.defaults().box().linerKJPerK();
        return heatKJPerK * Math.log((startC - roomC) / (endC - roomC)) / (KJ_PER_HOUR_PER_W * hours);
    }
}
