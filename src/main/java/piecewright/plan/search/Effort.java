package piecewright.plan.search;

import piecewright.plan.Setup;

/**
 * How hard a search looks.
 *
 * @param mostPerCell labels followed among rivals; {@link Integer#MAX_VALUE} for all
 * @param mostTaken labels followed in all, then a search gives up; {@link Integer#MAX_VALUE} for all
 * @param eagernessRatio weight on what is still to pay, 1 or more: 1 proves the cheapest, more hurries
 * @param bucketRatio width of the buckets in which grain is taken for equal, as a multiple of the usual; 0 for none
 */
record Effort(int mostPerCell, int mostTaken, double eagernessRatio, double bucketRatio) {
    /** Judgement: measured; more rivals change the cost of plans by less than a hundredth. */
    private static final int MOST_PER_CELL = 7;
    /** Judgement: searches that find a plan take up five to eighty thousand labels; this ends those that never will. */
    private static final int MOST_TAKEN = 150_000;
    /** Judgement: measured; 98 % of small steeps stay within a hundredth of the cheapest, found several times sooner. */
    private static final double EAGERNESS_RATIO = 1.08;

    /** Judgement: measured; more hurries past the aim of growth, which a miss prices steeply. */
    private static final double COUCHED_EAGERNESS_RATIO = 1.08;

    Effort {
        if (mostPerCell < 1) throw new IllegalArgumentException("mostPerCell must be 1 or more: " + mostPerCell);
        if (mostTaken < 1) throw new IllegalArgumentException("mostTaken must be 1 or more: " + mostTaken);
        if (!(eagernessRatio >= 1))
            throw new IllegalArgumentException("eagernessRatio must be 1 or more: " + eagernessRatio);
        if (!(bucketRatio >= 0)) throw new IllegalArgumentException("bucketRatio must be 0 or more: " + bucketRatio);
    }

    /** Judgement: measured; with a wet couch among the ways on no small steep costs a hundredth more, in the same time. */
    private static final double HEAPED_EAGERNESS_RATIO = 1.04;

    /** The same with all rivals followed. */
    Effort patient() {
        return new Effort(Integer.MAX_VALUE, mostTaken, eagernessRatio, bucketRatio);
    }

    /** For the piece of this setup. */
    static Effort of(Setup setup) {
        if (setup.couching().isPresent()) return couched();
        boolean heaps =
                setup.heaping().isPresent() && setup.heaping().get().expected().helps();
        return heaps ? new Effort(MOST_PER_CELL, MOST_TAKEN, HEAPED_EAGERNESS_RATIO, 1) : usual();
    }

    /** For styles with a hot couch, whose bound knows less. */
    static Effort couched() {
        return new Effort(MOST_PER_CELL, MOST_TAKEN, COUCHED_EAGERNESS_RATIO, 1);
    }

    static Effort usual() {
        return new Effort(MOST_PER_CELL, MOST_TAKEN, EAGERNESS_RATIO, 1);
    }

    /** Nothing pruned: finds the cheapest timetable of the grid. For small problems. */
    static Effort complete() {
        return new Effort(Integer.MAX_VALUE, Integer.MAX_VALUE, 1, 0);
    }
}
