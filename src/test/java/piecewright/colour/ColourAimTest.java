package piecewright.colour;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.time.Duration;
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
import piecewright.process.kiln.EnzymeSurvival;
import piecewright.process.kiln.KilnParameters;
import piecewright.quantity.EbcRange;
import piecewright.store.HouseFile;
import piecewright.store.LotFile;
import piecewright.store.StoreException;
import piecewright.store.StyleLibrary;
import piecewright.style.HotCouchSchedule;
import piecewright.style.MaltStyle;
import piecewright.style.RoastSchedule;

/** Oracle: the plan itself, which integrates colour forward through its own drying and roast. */
class ColourAimTest {
    private static final ColourAim AIM = new ColourAim(KilnParameters.defaults(), new ColourAim.Kit(105, 220, 1));

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

    /** Drying and so the moisture a malt is roasted at differ by a little from house to house. */
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

    /**
     * Property: solving for a colour and making the malt by the answer, as the style then asks for it, gives the colour,
     * within a hundredth, over all that each style of schedules/ comes to.
     */
    @Test
    void inverseAndForwardUndoEachOtherOverEveryStylesRange() throws StoreException {
        ColourAim any = new ColourAim(
                KilnParameters.defaults(), new ColourAim.Kit(Double.POSITIVE_INFINITY, Double.POSITIVE_INFINITY, 1));
        for (MaltStyle style : StyleLibrary.builtIn().all()) {
            double palestEbc = any.made(indexed(style, any.reach(style, 0)), any.reach(style, 0));
            double darkestEbc = any.made(indexed(style, any.reach(style, 1599)), any.reach(style, 1599));
            EbcRange published = style.finish().colour();
            assertTrue(palestEbc < published.highEbc() && darkestEbc > published.lowEbc(), style.key());
            for (double share = 0.01; share < 1; share += 0.07) {
                double targetEbc = palestEbc + share * (darkestEbc - palestEbc);
                ColourReach reach = any.reach(style, targetEbc);
                assertTrue(reach.isReached(), style.key() + " " + targetEbc);
                assertEquals(targetEbc, any.made(indexed(style, reach), reach), 0.01 * targetEbc, style.key());
            }
        }
    }

    /** The style with its couch broken as was found. */
    private static MaltStyle indexed(MaltStyle style, ColourReach reach) {
        return style.withCouches(ColourAim.aimed(style, reach).couches());
    }

    /** What the page says is what was computed: minutes and seconds of the last step as the schedule of the block has them. */
    @Test
    void theRoastThatIsPlannedIsTheRoastThatWasSolved() throws StoreException {
        for (double wantedEbc : new double[] {52.3, 61, 74.9}) {
            var found = assertInstanceOf(ColourReach.ReachedByRoast.class, AIM.reach(style("amber"), wantedEbc));
            RoastSchedule roast =
                    ColourAim.aimed(style("amber"), found).oven().roast().orElseThrow();
            assertEquals(found.roasted().last(), roast.last().planned());
            assertEquals(0, found.roasted().last().toSeconds() % 10);
            assertEquals(wantedEbc, found.roasted().colourEbc(), 0.01 * wantedEbc);
        }
    }

    /** The index where the cure is in its middle; beyond what the couch does, the cure. Inside the style's range always. */
    @Test
    void aCouchedStyleIsAimedByItsCouchFirst() throws StoreException {
        MaltStyle munich = style("munich");
        HotCouchSchedule couch = munich.couches().hot().orElseThrow();
        double before = 0;
        for (double wantedEbc : new double[] {12, 14, 17, 19, 22}) {
            var found = assertInstanceOf(ColourReach.Reached.class, AIM.reach(munich, wantedEbc));
            double indexHours = found.cured().couch().orElseThrow().indexHours();
            assertTrue(indexHours >= before, "darker wants no shorter a couch");
            assertTrue(indexHours <= couch.acceptableIndex().highHours());
            assertTrue(indexHours >= couch.acceptableIndex().lowHours());
            assertTrue(munich.kiln().cureC().contains(found.cured().cureC()));
            if (indexHours > 7.1 && indexHours < 13.9)
                assertEquals(100, found.cured().cureC(), 1e-9);
            assertEquals(2, found.band().highEbc() / found.cured().colourEbc(), 1e-9);
            before = indexHours;
        }
        var darkest = assertInstanceOf(ColourReach.OutOfReach.class, AIM.reach(munich, 60));
        assertEquals(14, darkest.nearest().couch().orElseThrow().indexHours());
        assertEquals(Change.A_DARKER_STYLE, darkest.change());
        MaltStyle aimed = ColourAim.aimed(munich, darkest);
        assertEquals(14, aimed.couches().hot().orElseThrow().indexHours());
        assertEquals(
                couch.acceptableIndex(), aimed.couches().hot().orElseThrow().acceptableIndex());
    }

    /** Reference runs of the couch, fitted: 4.5 kg packed at 40 % comes to an index of 31.1 h in 40 h from 22 °C at 19 °C. */
    @Test
    void theUsualCouchTakesAboutAsLongAsTheReferenceRun() throws StoreException {
        HotCouchSchedule dark = style("dark").couches().hot().orElseThrow();
        HotCouchSchedule run = new HotCouchSchedule(
                0.40, dark.packing(), 31.1, dark.acceptableIndex(), 72, dark.checks(), dark.spreadAboveC());
        UsualCouch usual =
                UsualCouch.of(run, new EnzymeSurvival(KilnParameters.defaults().enzymes()));
        assertTrue(usual.reached());
        assertEquals(40, usual.hours(), 3);
        assertTrue(usual.diastaticFraction() > 0.4 && usual.diastaticFraction() < 0.85, usual.toString());
    }

    @Test
    void withoutABoxNoCouchedStyleReachesAnything() throws StoreException {
        ColourAim boxless = new ColourAim(KilnParameters.defaults(), new ColourAim.Kit(105, 220, 0));
        assertEquals(new ColourReach.NoBox(), boxless.reach(style("munich"), 18));
        assertTrue(boxless.reach(style("pale-ale"), 6).isReached());
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
        assertEquals(Duration.ofMinutes(55), tooDark.nearest().last());
        var tooPale = assertInstanceOf(ColourReach.RoastOutOfReach.class, AIM.reach(style("amber"), 10));
        assertEquals(Change.A_PALER_STYLE, tooPale.change());
        assertEquals(Duration.ofMinutes(40), tooPale.nearest().last());
        MaltStyle aimed = ColourAim.aimed(style("amber"), tooDark);
        assertEquals(
                Duration.ofMinutes(55),
                aimed.oven().roast().orElseThrow().last().planned());
    }

    @Test
    void anOvenThatMayNotRoastSoHotIsNamed() throws StoreException {
        ColourAim cool = new ColourAim(KilnParameters.defaults(), new ColourAim.Kit(100, 120, 1));
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
