package piecewright.plan;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Instant;
import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import piecewright.plan.Timetable.Visit;
import piecewright.plan.search.UnderWay;

/** People leave out a whole phase, or write it down nowhere: the piece is still told of, and its rest is planned. */
class LeftOutTest {
    private static final Continuation CONTINUATION = new Continuation(ModelParameters.defaults());

    /** A dark one with a hot couch, one that is stewed, one of the floor alone. */
    @ParameterizedTest
    @ValueSource(longs = {9, 3, 0})
    void aPieceWithAPhaseLeftOutIsToldOfAndHasARest(long seed) {
        PlanRequest wish = Styled.request(seed);
        Plan plan = new Planner(ModelParameters.defaults()).plan(wish).match(PlanResult.Planned::plan, not -> {
            throw new AssertionError(seed + ": " + not.obstacles());
        });
        List<Visit> all = Timetable.of(plan).visits();
        int loaded = all.indexOf(Timetable.of(plan).first(ActKind.LOAD)) + 1;
        for (Visit left : all.subList(2, loaded - 1)) {
            if (!UnderWay.bounds(left.kind()) || left.kind() == ActKind.SOAK || left.kind() == ActKind.DRAIN) continue;
            List<Visit> done = all.subList(0, loaded).stream()
                    .filter(visit -> visit != left)
                    .toList();
            Instant now = all.get(loaded - 1).at().plusSeconds(60);
            Begun begun = new Begun(plan.outcome().rawGrainKg(), done, Found.nothing(), all, now);
            String told = seed + " " + wish.style().key() + " without " + left.id();
            assertTrue(
                    CONTINUATION
                            .told(
                                    wish,
                                    begun,
                                    all.stream().filter(visit -> visit != left).toList())
                            .isPresent(),
                    told);
            PlanResult rest = CONTINUATION.continued(wish, begun);
            assertTrue(rest instanceof PlanResult.Planned, told + ": " + rest);
        }
    }
}
