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
    TOO_WET,
    TOO_WARM,
    TOO_COLD,
    MATTED,
    DENSE_BED(Rescue::packsDense),
    UNEVEN,
    FUZZY,
    DRY_ROOTS,
    SHOOTS_OUT,
    KILN_NOT_READY,
    POWER_FAILS_WET,
    POWER_FAILS_DAMP,
    POWER_FAILS_DRY,
    HOT_WHILE_WET,
    TOO_LIGHT,
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
}
