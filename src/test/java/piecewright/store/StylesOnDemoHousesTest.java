package piecewright.store;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.MethodSource;
import piecewright.grain.GrainKind;
import piecewright.grain.GrainLot;
import piecewright.house.House;
import piecewright.plan.Caution;
import piecewright.plan.ModelParameters;
import piecewright.plan.Obstacle;
import piecewright.plan.Plan;
import piecewright.plan.PlanRequest;
import piecewright.plan.PlanResult;
import piecewright.plan.Planner;
import piecewright.style.MaltStyle;
import piecewright.style.OvenSchedule;
import piecewright.text.DisplayUnits;
import piecewright.text.Wording;

/** Every built-in style on every demo household: a plan in style, or a reason that names what is missing. */
class StylesOnDemoHousesTest {
    /** A hundredth of a colour, which nobody measures twice alike. */
    private static final double UNSEEN_RATIO = 0.01;

    private static final Path DEMO = Path.of("demo-data");
    private static final Map<GrainKind, String> LOTS = Map.of(
            GrainKind.BARLEY, "two-row-barley",
            GrainKind.HULLLESS_BARLEY, "hull-less-barley",
            GrainKind.WHEAT, "winter-wheat",
            GrainKind.RYE, "winter-rye",
            GrainKind.OATS, "hulled-oats",
            GrainKind.SPELT, "dehulled-spelt");

    /** The houses, the malt each can handle and a day to be ready by. */
    private enum Demo {
        COOL_GARAGE("cool-garage", 4, LocalDate.of(2027, 5, 20)),
        FARMHOUSE("farmhouse", 4, LocalDate.of(2027, 5, 10)),
        TERRACE("terrace-kitchen", 4, LocalDate.of(2027, 5, 20)),
        WARM_FLAT("warm-flat", 2.5, LocalDate.of(2027, 12, 20)),
        WORKSHOP("workshop", 4, LocalDate.of(2027, 5, 20));

        final String house;
        final double maltKg;
        final LocalDate ready;

        Demo(String house, double maltKg, LocalDate ready) {
            this.house = house;
            this.maltKg = maltKg;
            this.ready = ready;
        }
    }

    static List<MaltStyle> styles() throws StoreException {
        return StyleLibrary.builtIn().all().stream()
                .filter(style -> style.oven().equals(OvenSchedule.none()))
                .toList();
    }

    private static GrainLot lot(GrainKind kind) throws StoreException {
        return LotFile.read(DEMO.resolve("lots").resolve(LOTS.get(kind) + ".json"));
    }

    private static House house(Demo demo) throws StoreException {
        return HouseFile.read(DEMO.resolve("houses").resolve(demo.house + ".json"));
    }

    private static PlanResult plan(MaltStyle style, GrainKind kind, Demo demo) throws StoreException {
        return new Planner(ModelParameters.defaults())
                .plan(new PlanRequest(
                        style,
                        lot(kind),
                        house(demo),
                        new PlanRequest.Amount.FinishedMalt(demo.maltKg),
                        new PlanRequest.When.ReadyBy(demo.ready, demo.ready.minusDays(85))));
    }

    @ParameterizedTest
    @MethodSource("styles")
    void everyStyleIsPlannedOrRefusedForAReasonOnEveryHousehold(MaltStyle style) throws StoreException {
        int planned = 0;
        for (Demo demo : Demo.values()) {
            PlanResult result = plan(style, style.grains().get(0), demo);
            boolean needsBox = style.couches().hot().isPresent()
                    && house(demo).kit().boxes().isEmpty();
            if (result instanceof PlanResult.Planned done) {
                planned++;
                assertFalse(needsBox, style.key() + " on " + demo);
                inStyle(style, done.plan(), demo);
            } else {
                List<Obstacle> obstacles = ((PlanResult.NotPossible) result).obstacles();
                Wording wording = new Wording(DisplayUnits.metric(), house(demo).zone());
                obstacles.forEach(one -> assertTrue(wording.obstacle(one).length() > 40));
                assertTrue(needsBox, style.key() + " on " + demo + ": " + obstacles);
                assertEquals(List.of(new Obstacle.NoBox()), obstacles);
            }
        }
        assertTrue(planned >= 3, style.key() + " is planned on " + planned);
    }

    /** The published colour of its style, which every house reaches that plans it; its acrospire and its end moisture. */
    private static void inStyle(MaltStyle style, Plan plan, Demo demo) {
        String where = style.key() + " on " + demo + ": ";
        double ebc = plan.outcome().finished().kiln().colourEbc();
        assertTrue(ebc >= style.finish().colour().lowEbc() * (1 - UNSEEN_RATIO), where + ebc);
        assertTrue(ebc <= style.finish().colour().highEbc() * (1 + UNSEEN_RATIO), where + ebc);
        double grown = plan.outcome().finished().growth().growthRatio();
        assertTrue(style.growth().acceptable().lowFraction() - 0.01 <= grown, where + grown);
        assertTrue(style.growth().acceptable().highFraction() + 0.01 >= grown, where + grown);
        double end = plan.outcome().endMoisture().wetBasisFraction();
        assertTrue(end <= style.kiln().endMoistureFraction(), where + end);
    }

    /** Trade cautions of the grains; common practice, no source. */
    @ParameterizedTest
    @EnumSource
    void everyGrainHasAStyleAndItsCautionsStandAtTheActs(GrainKind kind) throws StoreException {
        Optional<MaltStyle> style = styles().stream()
                .filter(one -> one.grains().contains(kind))
                .filter(one -> one.couches().hot().isEmpty())
                .findFirst();
        PlanResult result = plan(style.orElseThrow(), kind, Demo.WORKSHOP);
        Plan plan = ((PlanResult.Planned) result).plan();
        List<Caution> soak = plan.acts().get(0).cautions();
        List<Caution> all = new ArrayList<>();
        plan.acts().forEach(act -> all.addAll(act.cautions()));
        assertEquals(kind == GrainKind.RYE, soak.contains(Caution.ERGOT));
        assertEquals(kind == GrainKind.OATS, soak.contains(Caution.OATS_FLOAT));
        boolean husked = kind == GrainKind.BARLEY || kind == GrainKind.OATS;
        assertEquals(!husked, all.contains(Caution.PACKS_DENSE));
        // reference table: huskless grain lies at most 8 cm deep here
        if (!husked) assertTrue(style.orElseThrow().growth().deepestBedCm() <= 8);
    }
}
