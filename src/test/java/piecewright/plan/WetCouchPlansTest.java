package piecewright.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import piecewright.house.AirTemperature;
import piecewright.house.House;
import piecewright.house.Kit;
import piecewright.house.Place;
import piecewright.house.Trays;
import piecewright.house.Vessel;
import piecewright.plan.PlanRequest.Amount;
import piecewright.plan.PlanRequest.When;
import piecewright.plan.Simulation.Course;
import piecewright.plan.Timetable.Visit;
import piecewright.process.Metabolism;
import piecewright.process.germination.Heap;
import piecewright.store.HouseFile;
import piecewright.store.LotFile;
import piecewright.store.StoreException;
import piecewright.store.StyleLibrary;
import piecewright.style.Couches;

/** Rye in a garage of 5 to 10 °C in March, nothing of it in the house: its chit lags, and the plan heaps it. */
class WetCouchPlansTest {
    private static final PlanRequest WISH = wish("rye-pale", 8);
    private static final Planner PLANNER = new Planner(ModelParameters.defaults());
    private static final Plan PLAN = planned(PLANNER.plan(WISH));
    private static final Blueprint BLUEPRINT = PLANNER.blueprint(WISH, PLAN);

    private static PlanRequest wish(String style, double grainKg) {
        try {
            House house = HouseFile.read(Path.of("demo-data/houses/cool-garage.json"));
            return new PlanRequest(
                    StyleLibrary.builtIn().style(style),
                    LotFile.read(Path.of("demo-data/lots/winter-rye.json")),
                    frosty(in(house, "garage")),
                    new Amount.RawGrain(grainKg),
                    new When.ReadyBy(LocalDate.of(2027, 5, 1), LocalDate.of(2027, 3, 1)));
        } catch (StoreException broken) {
            throw new AssertionError(broken);
        }
    }

    /** That house with tubs and trays all in one place, and no box. */
    private static House in(House house, String place) {
        Kit kit = house.kit();
        List<Trays> trays = kit.trays().stream()
                .map(one -> new Trays(one.name(), place, one.count(), one.areaM2()))
                .toList();
        List<Vessel> tubs = kit.vessels().stream()
                .map(one -> new Vessel(one.name(), place, one.volumeL()))
                .toList();
        return house.withKit(new Kit(tubs, trays, List.of(), kit.heaters(), kit.scale()));
    }

    /** The same with a colder garage. */
    private static House frosty(House house) {
        List<Place> places = house.places().stream()
                .map(one -> one.name().equals("garage")
                        ? new Place(one.name(), new AirTemperature.Daily(5, 10), one.humidityFraction())
                        : one)
                .toList();
        return new House(
                house.name(), house.zone(), places, house.steepWaterC(), house.people(), house.nights(), house.kit());
    }

    private static Plan planned(PlanResult result) {
        return result.match(PlanResult.Planned::plan, not -> {
            throw new AssertionError(not.obstacles().toString());
        });
    }

    private static Optional<Act> act(Plan plan, ActKind kind) {
        return plan.acts().stream().filter(act -> act.kind() == kind).findFirst();
    }

    private static Course course() {
        return new Simulation(BLUEPRINT.setup(), BLUEPRINT.origin())
                .run(BLUEPRINT.timetable(), BLUEPRINT.raw(BLUEPRINT.setup()));
    }

    @Test
    void aLaggingChitIsHeapedLookedAtAndSpread() {
        Act heap = act(PLAN, ActKind.HEAP).orElseThrow();
        Act spread = act(PLAN, ActKind.FLOOR).orElseThrow();
        assertEquals("wetcouch.heap", heap.id());
        assertEquals(22, heap.setting().limitC().orElseThrow());
        assertTrue(heap.setting().depthCm().orElseThrow() <= 25);
        Phase phase = PLAN.phases().stream()
                .filter(one -> one.kind() == PhaseKind.WET_COUCHING)
                .findFirst()
                .orElseThrow();
        assertEquals(heap.startsAt(), phase.from());
        assertEquals(spread.startsAt(), phase.until());
        assertTrue(heap.cautions().containsAll(List.of(Caution.RAW_GREEN_MALT, Caution.CARBON_DIOXIDE)));
        assertTrue(heap.cautions().contains(Caution.PACKS_DENSE), "rye has no husk");
        assertTrue(PLAN.findings().stream()
                .anyMatch(finding -> finding instanceof Finding.WetCouchForecast forecast && forecast.coreC() <= 22));
    }

    /** Practice, ends sourced: 8 to 12 h between looks in the cold, 18 at most; and 8 to 48 h in all. */
    @Test
    void nobodyLeavesAHeapLongerThanPracticeAllows() {
        Instant last = act(PLAN, ActKind.HEAP).orElseThrow().startsAt();
        Instant heaped = last;
        int looks = 0;
        for (Act act : PLAN.acts()) {
            boolean spreads = act.kind() == ActKind.FLOOR;
            if (act.kind() != ActKind.LOOK && !spreads) continue;
            Duration gap = Duration.between(last, act.startsAt());
            assertTrue(gap.compareTo(Duration.ofHours(18)) <= 0, "gap " + gap);
            assertFalse(act.startsAt().isAfter(act.window().hardLatest()));
            looks += spreads ? 0 : 1;
            last = act.startsAt();
            if (spreads) break;
        }
        Duration lies = Duration.between(heaped, last);
        assertTrue(looks > 0 && lies.toHours() >= 8 && lies.toHours() <= 48, looks + " looks in " + lies);
    }

    /** Decision of the references: casting wants four corns in five chitted, and the core stays at 22 °C or less. */
    @Test
    void theReferenceStagesFindItChittedAndCool() {
        Course course = course();
        Metabolism metabolism = BLUEPRINT.setup().models().metabolism();
        double chit = course.first(ActKind.FLOOR).before().steep().chitRatio();
        assertTrue(metabolism.chittedFraction(chit) > 0.79, "chitted " + metabolism.chittedFraction(chit));
        double before = course.first(ActKind.HEAP).before().steep().chitRatio();
        assertTrue(metabolism.chittedFraction(before) < 0.8, "heaped before it is ripe");
        assertTrue(course.hottestC(ActKind.HEAP, ActKind.FLOOR) + Heap.CORE_OVER_MEAN_K <= 22.3);
    }

    @Test
    void withoutOneInItsStyleThePieceStaysInTheTubAndPaysForIt() {
        PlanRequest never = new PlanRequest(
                WISH.style().withCouches(Couches.none()), WISH.lot(), WISH.house(), WISH.amount(), WISH.when());
        Plan plan = planned(PLANNER.plan(never));
        assertTrue(act(plan, ActKind.HEAP).isEmpty());
        assertTrue(plan.costMinutes() > PLAN.costMinutes(), plan.costMinutes() + " against " + PLAN.costMinutes());
    }

    /** Practice: 2 kg under cloths do not warm usefully, and where the bed is warm nothing is heaped. */
    @Test
    void aSmallPieceOrAWarmBedIsNotWorthAHeap() {
        assertFalse(helps(2, WISH.house()));
        assertTrue(helps(6, WISH.house()));
        assertFalse(helps(6, in(WISH.house(), "hall")));
    }

    private static boolean helps(double grainKg, House house) {
        Instant origin = LocalDate.of(2027, 3, 15).atStartOfDay(house.zone()).toInstant();
        Rooms rooms = new Rooms(house, origin, origin.plus(Duration.ofDays(14)));
        PlanRequest request =
                new PlanRequest(WISH.style(), WISH.lot(), house, new Amount.RawGrain(grainKg), WISH.when());
        Setup setup = new SetupMaker(ModelParameters.defaults())
                .of(request, rooms, grainKg, new java.util.ArrayList<>())
                .orElseThrow();
        return setup.heaping().orElseThrow().expected().helps();
    }

    @Test
    void nothingMovesWhenAllWentByPlanThroughTheHeap() {
        List<Visit> all = BLUEPRINT.timetable().visits();
        Continuation continuation = new Continuation(ModelParameters.defaults());
        for (int done = 0; done < all.size(); done++) {
            if (done > 0 && all.get(done - 1).kind() == ActKind.TURN) break;
            Instant now = done == 0
                    ? all.get(0).at().minusSeconds(3600)
                    : all.get(done - 1).at().plusSeconds(60);
            Begun begun = new Begun(PLAN.outcome().rawGrainKg(), all.subList(0, done), Found.nothing(), all, now);
            assertEquals(
                    all,
                    Timetable.of(planned(continuation.continued(WISH, begun))).visits(),
                    "after " + done);
        }
    }

    /** A look that never came: the next one is made as soon as somebody can, and the piece goes on. */
    @Test
    void aForgottenHeapIsLookedAtFirst() {
        List<Visit> all = BLUEPRINT.timetable().visits();
        int heap = 0;
        while (all.get(heap).kind() != ActKind.HEAP) heap++;
        Instant now = all.get(heap).at().plus(Duration.ofHours(26));
        Begun begun = new Begun(PLAN.outcome().rawGrainKg(), all.subList(0, heap + 1), Found.nothing(), all, now);
        Plan again = planned(new Continuation(ModelParameters.defaults()).continued(WISH, begun));
        List<Act> acts = again.acts();
        Act next = acts.get(heap + 1);
        assertTrue(next.kind() == ActKind.LOOK || next.kind() == ActKind.FLOOR, "next " + next);
        assertTrue(act(again, ActKind.LOAD).isPresent());
    }
}
