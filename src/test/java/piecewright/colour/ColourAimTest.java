package piecewright.colour;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.time.LocalDate;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import piecewright.colour.ColourReach.Change;
import piecewright.plan.ModelParameters;
import piecewright.plan.Plan;
import piecewright.plan.PlanRequest;
import piecewright.plan.PlanResult;
import piecewright.plan.Planner;
import piecewright.process.kiln.KilnParameters;
import piecewright.store.HouseFile;
import piecewright.store.LotFile;
import piecewright.store.StoreException;
import piecewright.store.StyleLibrary;
import piecewright.style.MaltStyle;

/** Oracle: the plan itself, which integrates colour forward through its own drying and roast. */
class ColourAimTest {
    private static final ColourAim AIM = new ColourAim(KilnParameters.defaults(), 100, 220);

    private static MaltStyle style(String key) throws StoreException {
        return StyleLibrary.builtIn().style(key);
    }

    private static double plannedEbc(MaltStyle style) throws StoreException {
        PlanRequest request = new PlanRequest(
                style,
                LotFile.read(Path.of("demo-data/lots/two-row-barley.json")),
                HouseFile.read(Path.of("demo-data/houses/terrace-kitchen.json")),
                new PlanRequest.Amount.RawGrain(2.4),
                new PlanRequest.When.StartOn(LocalDate.of(2027, 4, 2)));
        Plan plan = ((PlanResult.Planned) new Planner(ModelParameters.defaults()).plan(request)).plan();
        return plan.outcome().finished().kiln().colourEbc();
    }

    /** Roast minutes are whole: a minute is worth up to 5 % in the hottest; drying differs by a little from house to house. */
    @ParameterizedTest
    @CsvSource(textBlock = """
            amber,         55
            amber,         75
            brown,         130
            chocolate,     800
            crystal-light, 45
            crystal-dark,  330
            """)
    void aPlanAimedAtAColourComesToIt(String key, double wantedEbc) throws StoreException {
        ColourReach reach = AIM.reach(style(key), wantedEbc);
        assertTrue(reach.isReached(), reach.toString());
        assertEquals(wantedEbc, plannedEbc(ColourAim.aimed(style(key), reach)), 0.10 * wantedEbc);
    }

    @Test
    void theBandIsThatOfTheStyle() throws StoreException {
        var amber = assertInstanceOf(ColourReach.ReachedByRoast.class, AIM.reach(style("amber"), 60));
        assertEquals(1.7, amber.band().highEbc() / amber.roasted().colourEbc(), 1e-9);
        var crystal = assertInstanceOf(ColourReach.ReachedByRoast.class, AIM.reach(style("crystal-medium"), 130));
        assertEquals(1.8, crystal.roasted().colourEbc() / crystal.band().lowEbc(), 1e-9);
    }

    @Test
    void whatIsOutOfReachComesAsNearAsItCan() throws StoreException {
        var tooDark = assertInstanceOf(ColourReach.RoastOutOfReach.class, AIM.reach(style("amber"), 400));
        assertEquals(Change.A_DARKER_STYLE, tooDark.change());
        assertEquals(55, tooDark.nearest().lastMinutes());
        var tooPale = assertInstanceOf(ColourReach.RoastOutOfReach.class, AIM.reach(style("amber"), 10));
        assertEquals(Change.A_PALER_STYLE, tooPale.change());
        assertEquals(40, tooPale.nearest().lastMinutes());
        MaltStyle aimed = ColourAim.aimed(style("amber"), tooDark);
        assertEquals(55, aimed.oven().roast().orElseThrow().last().plannedMinutes());
    }

    @Test
    void anOvenThatMayNotRoastSoHotIsNamed() throws StoreException {
        ColourAim cool = new ColourAim(KilnParameters.defaults(), 100, 120);
        assertEquals(new ColourReach.NoHeater(150, 120), cool.reach(style("amber"), 60));
        assertTrue(cool.reach(style("crystal-light"), 50).isReached());
        assertEquals(style("amber"), ColourAim.aimed(style("amber"), cool.reach(style("amber"), 60)));
    }

    @Test
    void kilnedStylesAreAimedByTheirCure() throws StoreException {
        ColourReach reach = AIM.reach(style("pale-ale"), 6);
        var found = assertInstanceOf(ColourReach.Reached.class, reach);
        MaltStyle aimed = ColourAim.aimed(style("pale-ale"), reach);
        assertEquals(found.cured().cureC(), aimed.kiln().cureC().lowC());
        assertEquals(found.cured().cureHours(), aimed.kiln().cureHours().highHours());
        assertEquals(style("pale-ale").oven(), aimed.oven());
    }
}
