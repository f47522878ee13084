package piecewright.remedy;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;
import piecewright.plan.ModelParameters;
import piecewright.plan.Obstacle;
import piecewright.plan.PlanRequest;
import piecewright.plan.PlanRequest.Amount;
import piecewright.plan.PlanRequest.When;
import piecewright.plan.PlanResult;
import piecewright.plan.Planner;
import piecewright.plan.Seeded;
import piecewright.store.StoreException;
import piecewright.store.StyleLibrary;
import piecewright.style.MaltStyle;

/** Every remedy offered was planned; no smaller step of its kind would have done. */
class RemediesTest {
    private static final int WANTED = 3;

    private static PlanResult plan(PlanRequest request) {
        return new Planner(ModelParameters.defaults()).plan(request);
    }

    private static List<Obstacle> obstacles(PlanRequest request) {
        return plan(request).match(planned -> List.of(), PlanResult.NotPossible::obstacles);
    }

    private static List<Remedy> remedies(PlanRequest request, List<Obstacle> obstacles) {
        return new Remedies(RemediesTest::plan).against(request, obstacles);
    }

    private static PlanRequest with(PlanRequest request, Amount amount, When when) {
        return new PlanRequest(request.style(), request.lot(), request.house(), amount, when);
    }

    /** A wish too soon by a few days, whatever the household. */
    private static PlanRequest hurried(long seed) {
        PlanRequest request = Seeded.request(seed);
        LocalDate ready = LocalDate.of(2030, 6, 1).plusDays(seed);
        long days = Math.round(request.style().finish().restDays()) + 7;
        return with(request, request.amount(), new When.ReadyBy(ready, ready.minusDays(days)));
    }

    @Test
    void everyRemedyPlansAndNoSmallerStepOfItsKindDoes() {
        int refused = 0;
        int helped = 0;
        for (long seed = 0; refused < WANTED; seed++) {
            PlanRequest request = hurried(seed);
            List<Obstacle> obstacles = obstacles(request);
            if (obstacles.isEmpty()) continue;
            refused++;
            List<Remedy> remedies = remedies(request, obstacles);
            if (!remedies.isEmpty()) helped++;
            for (Remedy remedy : remedies) checkSmallest(request, obstacles, remedy);
        }
        assertTrue(helped >= WANTED / 2, "helped " + helped + " of " + refused);
    }

    private static void checkSmallest(PlanRequest request, List<Obstacle> obstacles, Remedy remedy) {
        Changed changed = new Changed(request);
        assertTrue(
                plan(remedy.request()) instanceof PlanResult.Planned,
                remedy.change().toString());
        for (List<Change> kind : new Steps(request).against(obstacles)) {
            int at = kind.indexOf(remedy.change());
            for (Change smaller : kind.subList(0, Math.max(0, at))) {
                assertTrue(plan(changed.by(smaller)) instanceof PlanResult.NotPossible, smaller.toString());
            }
        }
    }

    @Test
    void aPieceTooLargeForTheKitIsMadeSmaller() {
        PlanRequest request = Seeded.request(3);
        PlanRequest huge = with(request, new Amount.RawGrain(15), request.when());
        List<Remedy> remedies = remedies(huge, obstacles(huge));
        Remedy smaller = remedies.stream()
                .filter(remedy -> remedy.change() instanceof Change.SmallerPiece)
                .findFirst()
                .orElseThrow();
        double kg = ((Change.SmallerPiece) smaller.change()).massKg();
        assertEquals(kg, smaller.plan().outcome().rawGrainKg(), 0.001);
        assertTrue(kg < 15);
    }

    @Test
    void theSameWishIsHelpedInTheSameWay() {
        PlanRequest request = LongStream.range(0, 50)
                .mapToObj(RemediesTest::hurried)
                .filter(wish -> !obstacles(wish).isEmpty())
                .findFirst()
                .orElseThrow();
        List<Obstacle> obstacles = obstacles(request);
        List<Change> once = changes(remedies(request, obstacles));
        assertFalse(once.isEmpty());
        assertEquals(once, changes(remedies(request, obstacles)));
    }

    private static List<Change> changes(List<Remedy> remedies) {
        List<Change> changes = new ArrayList<>();
        remedies.forEach(remedy -> changes.add(remedy.change()));
        return changes;
    }

    @Test
    void aShorterRestChangesNothingElseOfTheStyle() throws StoreException {
        MaltStyle amber = StyleLibrary.builtIn().style("amber");
        PlanRequest request = Seeded.request(1).withStyle(amber);
        MaltStyle rested = new Changed(request).by(new Change.ShorterRest(2)).style();
        assertEquals(2, rested.finish().restDays());
        assertEquals(amber, rested.finishedBy(amber.finish()));
        assertEquals(amber.finish().lever(), rested.finish().lever());
    }

    @Test
    void poisonIsNotHelped() {
        PlanRequest request = Seeded.request(1);
        assertEquals(List.of(), remedies(request, List.of(new Obstacle.TreatedSeed("a lot"))));
    }
}
