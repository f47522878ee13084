package piecewright.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import piecewright.house.House;
import piecewright.house.Kit;
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

    private static PlanRequest roasted(String style) throws StoreException {
        return new PlanRequest(
                StyleLibrary.builtIn().style(style),
                LotFile.read(Path.of("demo-data/lots/two-row-barley.json")),
                HouseFile.read(Path.of("demo-data/houses/terrace-kitchen.json")),
                new Amount.FinishedMalt(2),
                new When.ReadyBy(LocalDate.parse("2027-11-25"), LocalDate.parse("2027-10-01")));
    }

    private static ColourPlanner.Aimed aimed(String style, double colourEbc) throws StoreException {
        return aimed(request(style), colourEbc);
    }

    private static ColourPlanner.Aimed aimed(PlanRequest request, double colourEbc) throws StoreException {
        ModelParameters parameters = ModelParameters.defaults();
        List<MaltStyle> styles = StyleLibrary.builtIn().all();
        return new ColourPlanner(new Planner(parameters)::plan, parameters.kiln(), styles).plan(request, colourEbc);
    }

    /** The forward model of the plan is the oracle: the plan made for a colour must come to it, inside its style. */
    @ParameterizedTest
    @ValueSource(doubles = {4.5, 5.2})
    void thePlanComesToTheColourByACureOfTheStyle(double colourEbc) throws StoreException {
        ColourPlanner.Aimed aimed = aimed("pale-ale", colourEbc);
        Plan plan = ((PlanResult.Planned) aimed.result()).plan();
        double spareQuarter = 0.25 / 3.75; // people's hours may miss a cure of 3.5 to 4 h by a quarter
        assertEquals(colourEbc, plan.outcome().finished().kiln().colourEbc(), spareQuarter * colourEbc);
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
        assertEquals(List.of("Pale ale malt", "Vienna-like malt by short hot couch"), obstacle.reaching());
    }

    @Test
    void aRoastedStyleComesToTheColourByItsMinutes() throws StoreException {
        ColourPlanner.Aimed aimed = aimed(roasted("amber"), 60);
        Plan plan = ((PlanResult.Planned) aimed.result()).plan();
        assertEquals(60, plan.outcome().finished().kiln().colourEbc(), 0.15 * 60);
        var whole = roasted("amber").style().oven().roast().orElseThrow().last();
        var used = aimed.request().style().oven().roast().orElseThrow().last();
        assertEquals(used.shortestMinutes(), used.longestMinutes());
        assertTrue(used.shortestMinutes() >= whole.shortestMinutes());
        assertTrue(used.longestMinutes() <= whole.longestMinutes());
    }

    private static PlanRequest couched(String style) throws StoreException {
        return new PlanRequest(
                StyleLibrary.builtIn().style(style),
                LotFile.read(Path.of("demo-data/lots/two-row-barley.json")),
                HouseFile.read(Path.of("demo-data/houses/farmhouse.json")),
                new Amount.FinishedMalt(5),
                new When.ReadyBy(LocalDate.parse("2027-04-20"), LocalDate.parse("2027-02-01")));
    }

    /** Couches end when somebody is there; the cure makes up for it. Every figure stays inside the style's. */
    @ParameterizedTest
    @ValueSource(doubles = {13, 20})
    void aCouchedStyleComesToTheColourByItsCouchAndItsCure(double colourEbc) throws StoreException {
        ColourPlanner.Aimed aimed = aimed(couched("munich"), colourEbc);
        Plan plan = assertInstanceOf(
                        PlanResult.Planned.class,
                        aimed.result(),
                        () -> aimed.result().toString())
                .plan();
        assertEquals(colourEbc, plan.outcome().finished().kiln().colourEbc(), 0.15 * colourEbc);
        MaltStyle whole = couched("munich").style();
        MaltStyle used = aimed.request().style();
        var wholeCouch = whole.couches().hot().orElseThrow();
        double indexHours = plan.outcome().finished().couch().indexHours();
        double quickFormHours = 0.5; // the search reads the index from a table; a tenth may be verified
        assertTrue(indexHours >= wholeCouch.acceptableIndex().lowHours() - quickFormHours, "index " + indexHours);
        assertTrue(indexHours <= wholeCouch.acceptableIndex().highHours() + quickFormHours, "index " + indexHours);
        assertEquals(
                wholeCouch.acceptableIndex(), used.couches().hot().orElseThrow().acceptableIndex());
        assertTrue(whole.kiln().cureC().contains(used.kiln().cureC().lowC()));
    }

    @Test
    void aHouseWithoutABoxIsToldThatTheCouchNeedsOne() throws StoreException {
        PlanRequest request = couched("munich");
        House like = request.house();
        Kit kit = like.kit();
        Kit boxless = new Kit(kit.vessels(), kit.trays(), List.of(), kit.heaters(), kit.scale());
        House house = new House(
                "boxless", like.zone(), like.places(), like.steepWaterC(), like.people(), like.nights(), boxless);
        var not = (PlanResult.NotPossible) aimed(request.withHouse(house), 18).result();
        assertEquals(List.of(new Obstacle.NoBox()), not.obstacles());
    }
}
