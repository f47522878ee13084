package piecewright.history;

import piecewright.plan.Timetable.Visit;
import piecewright.plan.search.UnderWay;

/** In which order acts can have come. */
final class Order {
    private static final int HEAPED = 97;
    private static final int SPREAD = 99;
    private static final int PACKED = 102;
    private static final int COUCH_BROKEN = 104;
    private static final int LOADED = 109;
    private static final int CURES = 200;
    private static final int ALWAYS = Integer.MAX_VALUE;

    private Order() {}

    /** Acts of a lower rank come first; what is done to a bed comes after what laid it. */
    static int rank(Visit visit) {
        int number = visit.number();
        return switch (visit.kind()) {
            case SOAK -> 2 * number;
            case DRAIN -> 2 * number + 1;
            case HEAP -> HEAPED;
            case LOOK -> HEAPED + 1;
            case FLOOR -> SPREAD;
            case TURN, SPRINKLE -> SPREAD + 1;
            case WITHER -> SPREAD + 2;
            case PACK -> PACKED;
            case CHECK -> PACKED + 1;
            case BREAK -> COUCH_BROKEN;
            case STEW -> COUCH_BROKEN + 1;
            case LOAD -> LOADED;
            case STIR, LOWER -> LOADED + 1;
            case RAISE -> LOADED + 1 + number;
            case CURE -> CURES;
            case OFF -> CURES + 1;
            case DEROOT -> CURES + 2;
            case ROAST -> CURES + 3 + number;
        };
    }

    /** The rank from which on an act can have been only after this one. Rootlets can be rubbed off roasted malt too. */
    static int tooLate(Visit visit) {
        return switch (visit.kind()) {
            case TURN, SPRINKLE -> LOADED;
            case LOOK -> SPREAD;
            case CHECK -> COUCH_BROKEN;
            case STIR -> CURES;
            case LOWER -> CURES + 1;
            case DEROOT -> ALWAYS;
            default -> rank(visit);
        };
    }

    /** Whether the first stands before the second in every course. */
    static boolean before(Visit first, Visit second) {
        boolean inner = !UnderWay.bounds(first.kind()) && !UnderWay.bounds(second.kind());
        return rank(first) < rank(second) || inner && rank(first) == rank(second);
    }
}
