package piecewright.chart;

/**
 * Where values lie up a picture: straight from low to fold and, less steep, from fold to high. Values outside lie on the
 * edge.
 */
record ValueScale(double low, double fold, double high, double bottomY, double foldY, double topY) {
    ValueScale {
        if (!(low < fold && fold <= high)) throw new IllegalArgumentException("need low < fold <= high: " + fold);
    }

    /** One slope all the way. */
    static ValueScale straight(double low, double high, double bottomY, double topY) {
        return new ValueScale(low, high, high, bottomY, topY, topY);
    }

    double y(double value) {
        double kept = Math.max(low, Math.min(high, value));
        if (kept <= fold) return bottomY + (kept - low) / (fold - low) * (foldY - bottomY);
        return foldY + (kept - fold) / (high - fold) * (topY - foldY);
    }
}
