package piecewright.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import piecewright.house.AirTemperature;
import piecewright.house.House;
import piecewright.house.Place;
import piecewright.plan.PlanRequest.Amount;
import piecewright.plan.PlanRequest.When;
import piecewright.remedy.Remedies;
import piecewright.remedy.Remedy;

/** Wet grain never freezes and never lies in a bed that spoils: such air is refused with what would help. */
class GrainHarmTest {
    private static final Planner PLANNER = new Planner(ModelParameters.defaults());

    private static PlanRequest in(double lowC, double highC) {
        House like = Households.house(
                "a house", new AirTemperature.Daily(lowC, highC), Households.officeWeek(), Households.boxKiln(false));
        return new PlanRequest(
                Households.pale(),
                Households.barley(),
                like,
                new Amount.RawGrain(4),
                new When.StartOn(LocalDate.of(2027, 3, 1)));
    }

    private static PlanRequest with(PlanRequest request, Place more) {
        House like = request.house();
        List<Place> places = new ArrayList<>(like.places());
        places.add(more);
        return request.withHouse(new House(
                like.name(), like.zone(), places, like.steepWaterC(), like.people(), like.nights(), like.kit()));
    }

    private static List<Obstacle> obstacles(PlanResult result) {
        return result.match(planned -> List.of(), PlanResult.NotPossible::obstacles);
    }

    @ParameterizedTest
    @ValueSource(doubles = {-30, -8, -2, 0, 3})
    void aColdGarageIsPlannedOrRefusedWithWordsNeverAFault(double lowC) {
        for (double highC : new double[] {lowC, lowC + 5}) {
            PlanResult result = PLANNER.plan(in(lowC, highC));
            if (result instanceof PlanResult.Planned planned) {
                for (Plan.Sample sample : planned.plan().course()) {
                    assertTrue(sample.state().grainC() >= GrainHarm.FREEZES_C, lowC + " " + sample.at());
                }
            }
        }
    }

    @Test
    void aWarmerPlaceHelpsAgainstFrostAndIsPlanned() {
        PlanRequest request = with(in(-9, -2), new Place("cellar", new AirTemperature.Constant(12), 0.8));
        List<Obstacle> obstacles = obstacles(PLANNER.plan(request));
        assertTrue(!obstacles.isEmpty());
        List<Remedy> remedies = new Remedies(PLANNER).against(request, obstacles);
        assertTrue(
                remedies.stream()
                        .anyMatch(remedy -> remedy.plan().acts().stream()
                                .anyMatch(
                                        act -> act.setting().place().orElse("").equals("cellar"))),
                obstacles + " " + remedies);
    }

    @ParameterizedTest
    @CsvSource({"24, 28", "26, 26", "28, 33"})
    void aBedThatWouldSpoilIsRefusedAndAColderPlaceHelps(double lowC, double highC) {
        PlanRequest request = with(in(lowC, highC), new Place("cellar", new AirTemperature.Constant(12), 0.8));
        List<Obstacle> obstacles = obstacles(PLANNER.plan(request));
        assertEquals(1, obstacles.size());
        Obstacle.BedTooWarm warm = assertInstanceOf(Obstacle.BedTooWarm.class, obstacles.get(0));
        assertTrue(warm.expectedC() > warm.warmestC() + GrainHarm.MOST_OVER_K, warm.toString());
        List<Remedy> remedies = new Remedies(PLANNER).against(request, obstacles);
        assertTrue(
                remedies.stream()
                        .anyMatch(remedy -> remedy.plan().acts().stream()
                                .anyMatch(act -> act.id().equals("floor.spread")
                                        && act.setting().place().orElse("").equals("cellar"))),
                remedies.toString());
    }
}
