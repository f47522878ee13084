package piecewright.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import piecewright.house.House;
import piecewright.plan.PlanRequest.Amount;
import piecewright.plan.PlanRequest.When;
import piecewright.store.HouseFile;
import piecewright.store.LotFile;
import piecewright.store.StoreException;
import piecewright.store.StyleLibrary;
import piecewright.style.KilnSchedule;
import piecewright.style.MaltStyle;

class ColourPlannerTest {
    private static PlanRequest request(String style) throws StoreException {
        House house = HouseFile.read(Path.of("demo-data/houses/cool-garage.json"));
        return new PlanRequest(
                StyleLibrary.builtIn().style(style),
                LotFile.read(Path.of("demo-data/lots/two-row-barley.json")),
                house,
                new Amount.FinishedMalt(4),
                new When.ReadyBy(LocalDate.parse("2027-05-01"), LocalDate.parse("2027-03-01")));
    }

    private static ColourPlanner.Aimed aimed(String style, double colourEbc) throws StoreException {
        ModelParameters parameters = ModelParameters.defaults();
        List<MaltStyle> styles = StyleLibrary.builtIn().all();
        return new ColourPlanner(new Planner(parameters)::plan, parameters.kiln(), styles).plan(request(style), colourEbc);
    }

    /** The forward model of the plan is the oracle: the plan made for a colour must come to it, inside its style. */
    @ParameterizedTest
    @ValueSource(doubles = {4.5, 5.2})
    void thePlanComesToTheColourByACureOfTheStyle(double colourEbc) throws StoreException {
        ColourPlanner.Aimed aimed = aimed("pale-ale", colourEbc);
        Plan plan = ((PlanResult.Planned) aimed.result()).plan();
        assertEquals(colourEbc, plan.outcome().finished().kiln().colourEbc(), 0.05 * colourEbc);
        KilnSchedule whole = request("pale-ale").style().kiln();
        KilnSchedule used = aimed.request().style().kiln();
        assertTrue(whole.cureC().contains(used.cureC().lowC()));
        assertEquals(used.cureC().lowC(), used.cureC().highC());
        assertTrue(used.cureHours().lowHours() >= whole.cureHours().lowHours());
        assertTrue(used.cureHours().highHours() <= whole.cureHours().highHours());
    }

    @Test
    void aColourBeyondTheStyleIsRefusedWithTheNearestAndWhoReachesIt() throws StoreException {
        ColourPlanner.Aimed aimed = aimed("pale", 4.8);
        Obstacle.ColourOutOfReach obstacle = (Obstacle.ColourOutOfReach)
                ((PlanResult.NotPossible) aimed.result()).obstacles().get(0);
        assertEquals("Pale malt", obstacle.style());
        assertTrue(obstacle.nearestEbc() > 2.5 && obstacle.nearestEbc() < 4, "nearest " + obstacle.nearestEbc());
        assertEquals(List.of("Pale ale malt"), obstacle.reaching());
    }
}
