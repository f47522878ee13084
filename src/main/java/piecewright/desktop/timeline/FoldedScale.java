package piecewright.desktop.timeline;

/**
 * Heat up a lane: linear to a fold, squeezed above it, so that the floor's few degrees and the kiln's many both show.
 *
 * @param lowC at the foot of the lane
 * @param highC at its top
 */
record FoldedScale(double lowC, double highC) {
    static final double FOLD_C = 20;
    static final double FOLD_HEIGHT_RATIO = 0.6;

    FoldedScale {
        if (!(lowC < FOLD_C && highC > FOLD_C)) {
            throw new IllegalArgumentException("need lowC < " + FOLD_C + " < highC: " + lowC + ", " + highC);
        }
    }

    /** The scale that shows all of these figures. */
    static FoldedScale around(Trace grain, Trace air) {
        double lowC = 8;
        double highC = 40;
        for (Trace trace : new Trace[] {grain, air}) {
            for (Trace.Point point : trace.points()) {
                lowC = Math.min(lowC, point.figure());
                highC = Math.max(highC, point.figure());
            }
        }
        return new FoldedScale(5 * Math.floor((lowC - 1) / 5), 20 * Math.ceil((highC + 1) / 20));
    }

    /** Share of the lane's height at which a temperature lies, 0 at its foot. */
    double heightRatio(double temperatureC) {
        return temperatureC <= FOLD_C
                ? FOLD_HEIGHT_RATIO * (temperatureC - lowC) / (FOLD_C - lowC)
                : FOLD_HEIGHT_RATIO + (1 - FOLD_HEIGHT_RATIO) * (temperatureC - FOLD_C) / (highC - FOLD_C);
    }
}
