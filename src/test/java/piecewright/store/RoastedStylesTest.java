package piecewright.store;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.ConcurrentMap;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import piecewright.house.House;
import piecewright.plan.Act;
import piecewright.plan.ActKind;
import piecewright.plan.Availability;
import piecewright.plan.Caution;
import piecewright.plan.Finding;
import piecewright.plan.InnerSchedule;
import piecewright.plan.InnerSchedule.InnerStep;
import piecewright.plan.InnerSchedule.Kind;
import piecewright.plan.ModelParameters;
import piecewright.plan.Obstacle;
import piecewright.plan.Plan;
import piecewright.plan.PlanRequest;
import piecewright.plan.PlanResult;
import piecewright.plan.Planner;
import piecewright.process.Ledgers;
import piecewright.process.PieceState;
import piecewright.style.ColourLever;
import piecewright.style.MaltStyle;

/** Every stewed or roasted style of schedules/, planned for a household with an oven and refused by ones without. */
class RoastedStylesTest {
    private static final ConcurrentMap<String, Plan> PLANS = new ConcurrentHashMap<>();

    static Stream<String> roasted() throws StoreException {
        return StyleLibrary.builtIn().all().stream()
                .filter(style -> style.oven().roast().isPresent())
                .map(MaltStyle::key)
                .filter(key -> !key.equals("black"));
    }

    static Stream<String> stewed() throws StoreException {
        return roasted().filter(key -> style(key).oven().stew().isPresent());
    }

    private static MaltStyle style(String key) {
        try {
            return StyleLibrary.builtIn().style(key);
        } catch (StoreException unknown) {
            throw new AssertionError(unknown);
        }
    }

    private static House house(String name) {
        try {
            return HouseFile.read(Path.of("demo-data/houses", name + ".json"));
        } catch (StoreException unread) {
            throw new AssertionError(unread);
        }
    }

    private static PlanResult result(String style, String house) {
        return result(style, house, new PlanRequest.Amount.RawGrain(3.6));
    }

    private static PlanResult result(String style, String house, PlanRequest.Amount amount) {
        try {
            PlanRequest request = new PlanRequest(
                    style(style),
                    LotFile.read(Path.of("demo-data/lots/two-row-barley.json")),
                    house(house),
                    amount,
                    new PlanRequest.When.StartOn(LocalDate.of(2027, 4, 2)));
            return new Planner(ModelParameters.defaults()).plan(request);
        } catch (StoreException unread) {
            throw new AssertionError(unread);
        }
    }

    private static Plan plan(String style) {
        return PLANS.computeIfAbsent(style, key -> ((PlanResult.Planned) result(key, "terrace-kitchen")).plan());
    }

    private static List<Act> blocks(Plan plan) {
        return plan.acts().stream().filter(act -> act.inner().isPresent()).toList();
    }

    @Test
    void thereAreSixOfThemAndBlackIsOnlyRefused() throws StoreException {
        assertEquals(
                List.of("amber", "brown", "chocolate", "crystal-dark", "crystal-light", "crystal-medium"),
                roasted().toList());
        for (String key : roasted().toList()) {
            assertEquals(ColourLever.ROAST_MINUTES, style(key).finish().lever());
            assertTrue(style(key).oven().roast().orElseThrow().hottestC() <= 220, key);
        }
    }

    /** Published ranges of trade notes and Cook et al., as each file quotes them. */
    @ParameterizedTest
    @MethodSource("roasted")
    void theDefaultScheduleReachesTheColourOfItsStyle(String key) {
        double colourEbc = plan(key).outcome().finished().kiln().colourEbc();
        assertTrue(style(key).finish().colour().contains(colourEbc), key + " comes to " + colourEbc);
        assertTrue(
                plan(key).findings().stream().noneMatch(finding -> finding instanceof Finding.OffStyle),
                () -> plan(key).findings().toString());
    }

    /** Attendance is a guard: one and the same person from the first minute to the last. */
    @ParameterizedTest
    @MethodSource("roasted")
    void everyBlockLiesInOnePersonsHoursAndOverlapsNothing(String key) {
        Plan plan = plan(key);
        Availability hours = Availability.of(
                house("terrace-kitchen"), plan.startsAt(), plan.subject().readyAt());
        assertTrue(blocks(plan).size() >= 1);
        for (Act block : blocks(plan)) {
            Instant until = hours.workableUntil(block.startsAt()).orElseThrow();
            assertTrue(!block.endsAt().isAfter(until), key + " " + block.id() + " ends " + block.endsAt());
            for (Act other : plan.acts()) {
                boolean apart = other.equals(block)
                        || !other.startsAt().isBefore(block.endsAt())
                        || !block.startsAt().isBefore(other.endsAt());
                assertTrue(apart, key + ": " + block.id() + " and " + other.id());
            }
        }
    }

    /** The amount is settled after the search; a stew that got longer by it must be searched for again. */
    @ParameterizedTest
    @ValueSource(doubles = {1.5, 2, 2.5, 3, 3.5, 4, 4.5})
    void theKilnIsLoadedWhenTheStewIsOverWhateverTheAmount(double maltKg) {
        for (String key : List.of("crystal-light", "crystal-medium")) {
            PlanResult result = result(key, "terrace-kitchen", new PlanRequest.Amount.FinishedMalt(maltKg));
            if (!(result instanceof PlanResult.Planned planned)) continue;
            List<Act> acts = planned.plan().acts();
            for (int i = 0; i + 1 < acts.size(); i++) {
                Act act = acts.get(i);
                Instant next = acts.get(i + 1).startsAt();
                boolean stews = act.inner().isPresent();
                assertTrue(!stews || !next.isBefore(act.endsAt()), key + " " + maltKg + " kg: " + act.id());
            }
        }
    }

    @ParameterizedTest
    @MethodSource("roasted")
    void everyBlockSaysWhatToDoFromItsFirstMinuteToItsLast(String key) {
        for (Act block : blocks(plan(key))) {
            InnerSchedule inner = block.inner().orElseThrow();
            assertEquals(Duration.ZERO, inner.steps().get(0).at());
            assertEquals(block.work(), inner.length());
            Duration at = Duration.ZERO;
            double grainC = -50;
            for (InnerStep step : inner.steps()) {
                assertTrue(step.at().compareTo(at) >= 0, key + " " + inner);
                at = step.at();
                if (step.kind() != Kind.OVER) {
                    assertTrue(step.expect().grainC() >= grainC - 1e-9, "warmer all the time: " + inner);
                    grainC = step.expect().grainC();
                }
                step.ovenC().ifPresent(ovenC -> assertTrue(ovenC <= 220, key));
            }
            assertTrue(inner.steps().stream().anyMatch(step -> step.kind() == Kind.SAMPLE), key);
            assertTrue(
                    inner.first(Kind.STOP)
                                    .at()
                                    .compareTo(inner.first(Kind.SAMPLE).at())
                            > 0,
                    key);
        }
    }

    /** The kitchen oven of that household is 6 K colder than its dial says: ask 106 for 100. */
    @Test
    void theDialIsSetByTheOvensOffset() {
        Act roast = blocks(plan("amber")).get(0);
        InnerStep in = roast.inner().orElseThrow().first(Kind.GOES_IN);
        assertEquals(100, in.ovenC().orElseThrow());
        assertEquals(106, in.dialC().orElseThrow());
        assertEquals(Duration.ofMinutes(12), roast.inner().orElseThrow().lag(), "12 mm lag 12 min");
    }

    @ParameterizedTest
    @MethodSource("roasted")
    void fireAndSmokeStandAtEveryRoast(String key) {
        for (Act block : blocks(plan(key))) {
            if (block.kind() != ActKind.ROAST) continue;
            assertTrue(block.cautions().containsAll(List.of(Caution.ROASTING_FIRE, Caution.ROASTING_SMOKE)), key);
        }
    }

    @ParameterizedTest
    @MethodSource("stewed")
    void aStewEndsWhereDryingBegins(String key) {
        List<Act> acts = plan(key).acts();
        Act stew = acts.stream()
                .filter(act -> act.kind() == ActKind.STEW)
                .findFirst()
                .orElseThrow();
        Act load = acts.get(acts.indexOf(stew) + 1);
        assertEquals(ActKind.LOAD, load.kind());
        assertEquals(stew.endsAt(), load.startsAt());
        assertTrue(load.expect().grainC() > 65, "hot from the oven: " + load.expect());
        assertEquals(stew.expect().massKg(), load.expect().massKg(), 1e-9, "nothing leaves under the cover");
        assertTrue(stew.expect().moisture().wetBasisPercent() > 40);
    }

    /** Conservation of mass, to a gram. */
    @ParameterizedTest
    @MethodSource("roasted")
    void theLedgersCloseToAGram(String key) throws StoreException {
        PieceState end = plan(key).outcome().finished();
        Ledgers.DryMatter dry = end.ledgers().dryMatter();
        Ledgers.Water water = end.ledgers().water();
        double goneKg = dry.leachedKg() + dry.respiredKg() + dry.rootletsKg() + dry.handlingKg() + dry.roastedKg();
        assertEquals(end.mass().initialDryMatterKg(), end.mass().dryMatterKg() + goneKg, 0.001);
        double rawRatio = LotFile.read(Path.of("demo-data/lots/two-row-barley.json"))
                .moisture()
                .moisture()
                .dryBasisRatio();
        double inKg = end.mass().initialDryMatterKg() * rawRatio
                + water.absorbedKg()
                + water.sprinkledKg()
                + water.formedKg();
        assertEquals(inKg, end.mass().waterKg() + water.evaporatedKg() + water.removedKg(), 0.001);
        assertTrue(dry.roastedKg() > 0);
    }

    @ParameterizedTest
    @MethodSource("roasted")
    void theRestCountsFromTheEndOfTheLastRoast(String key) {
        Plan plan = plan(key);
        Act last = plan.acts().get(plan.acts().size() - 1);
        assertEquals(ActKind.ROAST, last.kind());
        double restDays = style(key).finish().restDays();
        assertEquals(
                last.endsAt().plus(Duration.ofMinutes((long) (restDays * 24 * 60))),
                plan.subject().readyAt());
    }

    @ParameterizedTest
    @MethodSource("roasted")
    void aHouseWithoutAnOvenIsToldSo(String key) {
        for (String house : List.of("cool-garage", "farmhouse")) {
            var not = assertInstanceOf(PlanResult.NotPossible.class, result(key, house));
            double neededC = style(key).oven().roast().orElseThrow().hottestC();
            assertTrue(
                    not.obstacles().stream()
                            .anyMatch(one -> one instanceof Obstacle.NoOven oven && oven.neededC() == neededC),
                    () -> not.obstacles().toString());
        }
    }

    @Test
    void blackIsNeverRoastedInAKitchen() {
        var not = assertInstanceOf(PlanResult.NotPossible.class, result("black", "terrace-kitchen"));
        assertEquals(List.of(new Obstacle.RoastTooHot("Black malt", 230, 220)), not.obstacles());
    }

    /** 120 °C is all the fan oven of the flat reaches. */
    @ParameterizedTest
    @ValueSource(strings = {"crystal-light", "crystal-medium"})
    void theFlatMakesWhatItsOvenReaches(String key) {
        Plan plan = assertInstanceOf(PlanResult.Planned.class, result(key, "warm-flat"))
                .plan();
        double colourEbc = plan.outcome().finished().kiln().colourEbc();
        assertTrue(style(key).finish().colour().contains(colourEbc), key + " comes to " + colourEbc);
    }
}
