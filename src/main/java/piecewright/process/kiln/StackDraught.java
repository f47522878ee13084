package piecewright.process.kiln;

/** Air that a warm box draws by itself: V = Cd A sqrt(2 g H dT / T). */
public final class StackDraught {
    /** Judgement: common practice reproduced: a box with two vents slightly open, no fan; 8 to 12. */
    public static final double VENTED_BOX_M3_PER_HOUR = 10;
    /** Judgement: discharge coefficient of a sharp opening, from memory. */
    private static final double DISCHARGE_RATIO = 0.6;
    /** Source: standard gravity, rounded. */
    private static final double GRAVITY_M_PER_S2 = 9.81;

    private StackDraught() {}

    /**
     * m³/h.
     *
     * @param ventM2 area of all vents, m²
     * @param heightM between inlet and outlet, m
     * @param riseK of the air inside over that outside, K, 0 or more
     * @param meanK mean absolute temperature of the two, K
     */
    public static double airFlowM3PerHour(double ventM2, double heightM, double riseK, double meanK) {
        return 3600 * DISCHARGE_RATIO * ventM2 * Math.sqrt(2 * GRAVITY_M_PER_S2 * heightM * riseK / meanK);
    }
}
