package piecewright.ensemble;

/** The first minute at which a figure passes a level; scratch of one run. */
final class Crossing {
    private final double levelRatio;
    private double atMinutes = Double.NaN;

    Crossing(double levelRatio) {
        this.levelRatio = levelRatio;
    }

    /** Told the figure, rising, at the two ends of a step. */
    void rose(double fromRatio, double toRatio, double fromMinutes, double toMinutes) {
        if (happened() || toRatio < levelRatio) return;
        double share = fromRatio >= levelRatio ? 0 : (levelRatio - fromRatio) / (toRatio - fromRatio);
        atMinutes = fromMinutes + share * (toMinutes - fromMinutes);
    }

    boolean happened() {
        return !Double.isNaN(atMinutes);
    }

    /** NaN while it has not happened. */
    double atMinutes() {
        return atMinutes;
    }
}
