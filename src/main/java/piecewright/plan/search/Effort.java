package piecewright.plan.search;

/**
 * How hard a search looks.
 *
 * @param mostPerCell labels followed among rivals; {@link Integer#MAX_VALUE} for all
 * @param eagernessRatio weight on what is still to pay, 1 or more: 1 proves the cheapest, more hurries
 * @param bucketRatio width of the buckets in which grain is taken for equal, as a multiple of the usual; 0 for none
 */
record Effort(int mostPerCell, double eagernessRatio, double bucketRatio) {
    /** Judgement: measured; more rivals change the cost of plans by less than a hundredth. */
    private static final int MOST_PER_CELL = 7;
    /** Judgement: measured; 98 % of small steeps stay within a hundredth of the cheapest, found several times sooner. */
    private static final double EAGERNESS_RATIO = 1.08;

    /** Judgement: measured on the demo households; plans cost up to 3 % more, found in a half to four fifths of the time. */
    private static final double COUCHED_EAGERNESS_RATIO = 1.25;

    Effort {
        if (mostPerCell < 1) throw new IllegalArgumentException("mostPerCell must be 1 or more: " + mostPerCell);
        if (!(eagernessRatio >= 1))
            throw new IllegalArgumentException("eagernessRatio must be 1 or more: " + eagernessRatio);
        if (!(bucketRatio >= 0)) throw new IllegalArgumentException("bucketRatio must be 0 or more: " + bucketRatio);
    }

    /** For styles with a hot couch, whose bound knows less: hurries more. */
    static Effort couched() {
        return new Effort(MOST_PER_CELL, COUCHED_EAGERNESS_RATIO, 1);
    }

    static Effort usual() {
        return new Effort(MOST_PER_CELL, EAGERNESS_RATIO, 1);
    }

    /** Nothing pruned: finds the cheapest timetable of the grid. For small problems. */
    static Effort complete() {
        return new Effort(Integer.MAX_VALUE, 1, 0);
    }
}
