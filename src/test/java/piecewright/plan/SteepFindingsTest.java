package piecewright.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.time.DayOfWeek;
import java.time.Duration;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import piecewright.assess.LotJudge;
import piecewright.grain.GrainLot;
import piecewright.house.AirTemperature;
import piecewright.house.House;
import piecewright.house.Kit;
import piecewright.house.LocalHours;
import piecewright.house.Person;
import piecewright.house.Place;
import piecewright.house.Trays;
import piecewright.house.Vessel;
import piecewright.plan.Heaping.Worth;
import piecewright.plan.PlanRequest.Amount;
import piecewright.plan.PlanRequest.When;
import piecewright.quantity.FractionRange;
import piecewright.store.HouseFile;
import piecewright.store.LotFile;
import piecewright.store.StoreException;
import piecewright.store.StyleLibrary;
import piecewright.style.Couches;
import piecewright.style.MaltStyle;
import piecewright.style.SteepSchedule;

/** What a plan says about its steep: over-wet grain, long soaks, and a wet couch left out. */
class SteepFindingsTest {
    private static final PlanRequest DEMO = DemoPlan.request();

    private static Plan planned(PlanRequest request) {
        return new Planner(ModelParameters.defaults()).plan(request).match(PlanResult.Planned::plan, not -> {
            throw new AssertionError(not.obstacles().toString());
        });
    }

    private static <T extends Finding> Optional<T> found(Plan plan, Class<T> kind) {
        return plan.findings().stream().filter(kind::isInstance).map(kind::cast).findFirst();
    }

    private static PlanRequest aimingAt(double steepOut) {
        MaltStyle like = DEMO.style();
        FractionRange near = new FractionRange(steepOut - 0.004, steepOut + 0.008);
        MaltStyle style = new MaltStyle(
                like.key(),
                like.title(),
                like.grains(),
                new SteepSchedule(steepOut, near, 2, 5),
                like.growth(),
                like.kiln(),
                like.finish(),
                like.couches(),
                like.oven());
        return new PlanRequest(style, DEMO.lot(), DEMO.house(), DEMO.amount(), DEMO.when());
    }

    /** Canadian malting-barley technical guide, chapter 4: 43 to 45 % at steep-out, four in five chitted; 48 % is over-wet. */
    @ParameterizedTest
    @CsvSource({"0.43, false", "0.44, false", "0.45, false", "0.478, true"})
    void anOverWetSteepIsWarnedOf(double steepOut, boolean warned) {
        Optional<Finding.OverWet> overWet = found(planned(aimingAt(steepOut)), Finding.OverWet.class);
        assertEquals(warned, overWet.isPresent());
        overWet.ifPresent(finding -> {
            assertEquals(Finding.Severity.WARNING, finding.severity());
            assertEquals(steepOut, finding.moisture().wetBasisFraction(), 0.009);
            assertTrue(finding.about().endsWith(".drain"));
        });
    }

    /** Practice, soaks of 12 to 14 h in water so cold: somebody only there at noon for two days cannot but soak longer. */
    @Test
    void aLongSoakIsSaidToBeOne() {
        List<LocalHours> noon = List.of(new LocalHours(LocalTime.of(12, 0), LocalTime.of(13, 0)));
        List<LocalHours> always = List.of(new LocalHours(LocalTime.of(6, 30), LocalTime.of(22, 30)));
        LocalDate first = LocalDate.of(2027, 3, 27);
        Map<DayOfWeek, List<LocalHours>> week =
                Arrays.stream(DayOfWeek.values()).collect(Collectors.toMap(day -> day, day -> always));
        Person person = new Person("at noon", week, Map.of(first, noon, first.plusDays(1), noon));
        Plan plan = planned(new PlanRequest(
                DEMO.style(),
                DEMO.lot(),
                DEMO.house().withPeople(List.of(person)),
                DEMO.amount(),
                new When.StartOn(first)));
        Finding.LongSoak said = found(plan, Finding.LongSoak.class).orElseThrow();
        assertEquals("steep-1.drain", said.about());
        assertTrue(said.lasts().toHours() >= 22, "lasts " + said.lasts());
        assertTrue(said.longestUsualHours() >= 12 && said.longestUsualHours() <= 14, said.toString());
        boolean twice = plan.findings().stream()
                .anyMatch(one ->
                        one instanceof Finding.PastFreeWindow && one.about().equals(said.about()));
        assertFalse(twice, "said once");
        assertTrue(found(DemoPlan.plan(), Finding.LongSoak.class).isEmpty());
    }

    private static PlanRequest rye(double grainKg, AirTemperature garage) throws StoreException {
        House house = HouseFile.read(Path.of("demo-data/houses/cool-garage.json"));
        List<Place> places = house.places().stream()
                .map(one -> one.name().equals("garage") ? new Place("garage", garage, one.humidityFraction()) : one)
                .toList();
        Kit kit = house.kit();
        Kit garaged = new Kit(
                kit.vessels().stream()
                        .map(one -> new Vessel(one.name(), "garage", one.volumeL()))
                        .toList(),
                kit.trays().stream()
                        .map(one -> new Trays(one.name(), "garage", one.count(), one.areaM2()))
                        .toList(),
                List.of(),
                kit.heaters(),
                kit.scale());
        House cold = new House(
                house.name(), house.zone(), places, house.steepWaterC(), house.people(), house.nights(), garaged);
        return new PlanRequest(
                StyleLibrary.builtIn().style("rye-pale"),
                LotFile.read(Path.of("demo-data/lots/winter-rye.json")),
                cold,
                new Amount.RawGrain(grainKg),
                new When.ReadyBy(LocalDate.of(2027, 5, 1), LocalDate.of(2027, 3, 1)));
    }

    /** Practice: small pieces do not warm usefully; warm beds need no heap; the style's core stays under 22 °C. */
    @ParameterizedTest
    @CsvSource({
        "6, 18, 20, BED_IS_WARM",
        "2, 8, 13, TOO_LITTLE_GRAIN",
        "6, 8, 14, HELPS",
    })
    void aWetCouchLeftOutIsExplained(double grainKg, double lowC, double highC, Worth why) throws StoreException {
        Plan plan = planned(rye(grainKg, new AirTemperature.Daily(lowC, highC)));
        boolean heaped = plan.acts().stream().anyMatch(act -> act.kind() == ActKind.HEAP);
        Optional<Finding.NoWetCouch> explained = found(plan, Finding.NoWetCouch.class);
        assertEquals(!heaped, explained.isPresent(), "either a heap or a reason");
        explained.ifPresent(finding -> assertEquals(why, finding.why()));
        assertTrue(why == Worth.HELPS || !heaped, "no heap that does no good");
    }

    @Test
    void aStyleWithoutAWetCouchNeedsNoReason() {
        MaltStyle bare = DEMO.style().withCouches(Couches.none());
        Plan plan = planned(new PlanRequest(bare, DEMO.lot(), DEMO.house(), DEMO.amount(), DEMO.when()));
        assertTrue(found(plan, Finding.NoWetCouch.class).isEmpty());
        assertTrue(found(DemoPlan.plan(), Finding.NoWetCouch.class).isPresent());
    }

    /** What was seen of a lot keeps its heap cooler, as it does its floor. */
    @Test
    void aLotThatMayMouldIsHeapedCooler() throws StoreException {
        PlanRequest sound = rye(6, new AirTemperature.Daily(5, 10));
        GrainLot broken = LotFile.read(Path.of("demo-data/lots/low-germination-barley.json"));
        double coolerK = LotJudge.effects(broken).coolerK();
        assertTrue(coolerK > 0, "that lot is likely to mould");
        PlanRequest doubtful =
                new PlanRequest(DEMO.style(), broken, sound.house(), new Amount.RawGrain(6), sound.when());
        PlanRequest good =
                new PlanRequest(DEMO.style(), DEMO.lot(), sound.house(), new Amount.RawGrain(6), sound.when());
        assertEquals(warmest(good) - coolerK, warmest(doubtful), 1e-9);
    }

    private static double warmest(PlanRequest request) {
        var origin =
                LocalDate.of(2027, 3, 15).atStartOfDay(request.house().zone()).toInstant();
        Rooms rooms = new Rooms(request.house(), origin, origin.plus(Duration.ofDays(14)));
        Setup setup = new SetupMaker(ModelParameters.defaults())
                .of(request, rooms, 6, new ArrayList<>())
                .orElseThrow();
        return setup.heaping().orElseThrow().schedule().warmestCoreC();
    }

    /** Steep page, worked: 5 kg of barley at 650 g/L, swollen 1.45 times, 15 % freeboard: 13.1 L. */
    @Test
    void fiveKilogramsOfBarleyWantAThirteenLitreTub() {
        Kit kit = DEMO.house().kit();
        Kit cup =
                new Kit(List.of(new Vessel("cup", "garage", 2)), kit.trays(), kit.boxes(), kit.heaters(), kit.scale());
        PlanRequest request = new PlanRequest(
                DEMO.style(), DEMO.lot(), DEMO.house().withKit(cup), new Amount.RawGrain(5), DEMO.when());
        List<Obstacle> obstacles =
                ((PlanResult.NotPossible) new Planner(ModelParameters.defaults()).plan(request)).obstacles();
        Obstacle.VesselTooSmall small = obstacles.stream()
                .filter(Obstacle.VesselTooSmall.class::isInstance)
                .map(Obstacle.VesselTooSmall.class::cast)
                .findFirst()
                .orElseThrow();
        assertEquals(13.1, small.neededL(), 0.1);
    }
}
