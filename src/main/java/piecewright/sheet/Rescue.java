package piecewright.sheet;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.function.Predicate;
import piecewright.grain.GrainKind;
import piecewright.plan.PlanRequest;

/**
 * What to do when something goes wrong, in the order of the work. Judgement: all of it is practice without a measured
 * basis. The words are in {@code wording.properties} under rescue; a style is shown those that can happen to it.
 */
enum Rescue {
    SOAKED_TOO_LONG,
    SOUR_WATER,
    MILKY_CORNS,
    CHITTED_UNDER_WATER,
    SHORT_OF_WATER,
    WET_FILM,
    TOO_WET,
    TOO_WARM,
    TOO_COLD,
    MATTED,
    DENSE_BED(Rescue::packsDense),
    UNEVEN,
    FUZZY,
    DRY_ROOTS,
    SHOOTS_OUT,
    KILN_NOT_READY(Rescue::staysAlive),
    COUCH_STALLS(Rescue::couched),
    COUCH_TOO_HOT(Rescue::couched),
    COUCH_SOUR(Rescue::couched),
    COUCH_MOULD(Rescue::couched),
    COUCH_DRY_TOP(Rescue::couched),
    COUCH_MISSED(Rescue::couched),
    COUCH_KILN_NOT_READY(Rescue::couched),
    STEW_OFF(Rescue::stewed),
    STEW_DRY(Rescue::stewed),
    STEW_COLD(Rescue::stewed),
    POWER_FAILS_WET(Rescue::staysAlive),
    POWER_FAILS_DEAD(Predicate.not(Rescue::staysAlive)),
    POWER_FAILS_DAMP,
    POWER_FAILS_DRY,
    HOT_WHILE_WET(Predicate.not(Rescue::stewed)),
    TOO_LIGHT,
    COLOUR_OFF(Predicate.not(Rescue::roasted)),
    ROAST_SMOKES(Rescue::roasted),
    ROAST_LEFT(Rescue::roasted),
    ROAST_HOT(Rescue::roasted),
    ROAST_UNEVEN(Rescue::roasted),
    ROAST_PALE(Rescue::roasted),
    ROAST_DARK(Rescue::roasted),
    SLACK,
    ODD_WEIGHT;

    private final Predicate<PlanRequest> happens;

    Rescue() {
        this(request -> true);
    }

    Rescue(Predicate<PlanRequest> happens) {
        this.happens = happens;
    }

    static List<Rescue> of(PlanRequest request) {
        return Arrays.stream(values())
                .filter(rescue -> rescue.happens.test(request))
                .toList();
    }

    String key() {
        return "rescue." + name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    private static boolean packsDense(PlanRequest request) {
        GrainKind kind = request.lot().kind();
        return kind == GrainKind.WHEAT || kind == GrainKind.RYE || kind == GrainKind.HULLLESS_BARLEY;
    }

    private static boolean couched(PlanRequest request) {
        return request.style().couches().hot().isPresent();
    }

    private static boolean stewed(PlanRequest request) {
        return request.style().oven().stew().isPresent();
    }

    private static boolean roasted(PlanRequest request) {
        return request.style().oven().roast().isPresent();
    }

    /** Whether the grain is alive until the kiln dries it: a hot couch or a stew kills it wet. */
    private static boolean staysAlive(PlanRequest request) {
        return !couched(request) && !stewed(request);
    }
}
