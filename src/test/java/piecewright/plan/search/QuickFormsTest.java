package piecewright.plan.search;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Optional;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import piecewright.plan.Heaping;
import piecewright.plan.ModelParameters;
import piecewright.plan.PlanRequest;
import piecewright.plan.Rooms;
import piecewright.plan.Seeded;
import piecewright.plan.Setup;
import piecewright.plan.SetupMaker;
import piecewright.process.GrainMass;
import piecewright.process.GrowthState;
import piecewright.process.PieceState;
import piecewright.process.SteepState;
import piecewright.process.germination.Cover;
import piecewright.process.germination.FloorActs;
import piecewright.process.germination.FloorBed;
import piecewright.process.germination.Heap;
import piecewright.process.germination.WetHeap;
import piecewright.process.germination.WitherBed;
import piecewright.process.kiln.DryingBed;
import piecewright.process.kiln.KilnStage;
import piecewright.process.steep.AirRest;
import piecewright.process.steep.Bath;
import piecewright.process.steep.Immersion;
import piecewright.process.steep.Standing;
import piecewright.process.steep.Wetting;
import piecewright.quantity.HoursRange;
import piecewright.quantity.Moisture;
import piecewright.style.WetCouchSchedule;

/** How far the search's quick forms stray from the reference stages, on seeded households. */
class QuickFormsTest {
    private static Setup setup(long seed) {
        PlanRequest request = Seeded.request(seed);
        Instant origin =
                LocalDate.of(2030, 4, 1).atStartOfDay(request.house().zone()).toInstant();
        Rooms rooms = new Rooms(request.house(), origin, origin.plus(Duration.ofDays(20)));
        return new SetupMaker(ModelParameters.defaults())
                .of(request, rooms, 4, new ArrayList<>())
                .orElseThrow();
    }

    private static PieceState raw(Setup setup) {
        Moisture moisture = Moisture.ofDryBasisRatio(setup.lot().moistureRatio());
        return PieceState.rawGrain(setup.dryMatterKg() / (1 - moisture.wetBasisFraction()), moisture, 0, 2, 12);
    }

    private static Grain grainOf(PieceState state) {
        GrainMass mass = state.mass();
        double initial = mass.initialDryMatterKg();
        double water = mass.waterKg() / initial;
        return new Grain(
                water,
                state.steep().coreRatio(),
                water,
                state.steep().soakHours(),
                state.steep().chitRatio(),
                state.growth().growthRatio(),
                mass.dryMatterKg() / initial,
                state.grainC());
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8})
    void aSoakAndARestKeepToTheReferenceStages(long seed) {
        Setup setup = setup(seed);
        var steep = setup.models().steep();
        var metabolism = setup.models().metabolism();
        var air = setup.air().steep();
        Bath bath = new Bath(setup.fillC(), 6);
        PieceState raw = raw(setup);
        Immersion immersion = new Immersion(steep, metabolism, air, Standing.BUCKET, bath);
        PieceState drained = immersion.run(raw, 10, 18);
        double volumeL = bath.waterL() + Wetting.grainL(raw.mass());
        double relaxHours = steep.parameters().warming().hours(Standing.BUCKET, volumeL);
        double startC = Wetting.mixedC(raw.mass(), raw.grainC(), bath);
        SoakWalk soak = new SoakWalk(
                new SoakWalk.Setting(new SteepRates(steep, metabolism, air), startC, relaxHours), 1, grainOf(raw), 600);
        soak.to(1080);
        assertEquals(drained.mass().moisture().wetBasisFraction(), soak.grain().moistureFraction(), 0.002);
        assertEquals(drained.steep().chitRatio(), soak.grain().chitRatio(), 0.01);

        PieceState rested = new AirRest(steep, metabolism, air, Standing.BUCKET).run(drained, 18, 30);
        double restHours = steep.parameters().warming().hours(Standing.BUCKET, Wetting.grainL(drained.mass()));
        RestWalk rest = new RestWalk(
                new SoakWalk.Setting(new SteepRates(steep, metabolism, air), drained.grainC(), restHours),
                grainOf(drained),
                1080,
                1.18);
        rest.to(1800);
        assertEquals(rested.mass().moisture().wetBasisFraction(), rest.grain().moistureFraction(), 0.001);
        assertEquals(rested.steep().coreRatio(), rest.grain().coreRatio(), 0.002);
        assertEquals(rested.steep().chitRatio(), rest.grain().chitRatio(), 0.01);
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8})
    void aWetCouchKeepsToTheReferenceStage(long seed) {
        Setup plain = setup(seed);
        Setup setup = new Setup(
                plain.style(),
                plain.lot(),
                plain.models(),
                plain.outfit(),
                plain.air(),
                new Setup.Heaps(Optional.empty(), Optional.of(heaping(plain, seed))),
                plain.dryMatterKg());
        PieceState start = cast(setup)
                .withSteep(new SteepState(KilnHeat.ratioOf(0.44), 0, 20, 3, 0.7))
                .withGrowth(new GrowthState(0, 0));
        Heaping heaping = setup.heaping().orElseThrow();
        PieceState end = new WetHeap(
                        setup.models().metabolism(), setup.models().growth(), heaping.air(), heaping.heap())
                .run(start, 20, 44);
        HeapWalk walk = new HeapWalk(setup, grainOf(start), 20 * 60);
        walk.to(44 * 60);
        assertEquals(end.grainC(), walk.grain().grainC(), 0.15);
        assertEquals(end.steep().chitRatio(), walk.grain().chitRatio(), 0.01);
        assertEquals(end.growth().growthRatio(), walk.grain().growthRatio(), 0.01);
        assertEquals(end.mass().moisture().wetBasisFraction(), walk.grain().moistureFraction(), 0.002);
    }

    private static Heaping heaping(Setup setup, long seed) {
        WetCouchSchedule schedule = new WetCouchSchedule(25, 22, new HoursRange(8, 48));
        Heap heap = seed % 2 == 0
                ? new Heap(0.06, 0.8)
                : Heap.wrapped(setup.models().growth(), cast(setup).mass(), 0.25);
        return new Heaping(
                schedule, "shed", heap, setup.air().floor(), new Heaping.Expected(12, 2, 12, Heaping.Worth.HELPS));
    }

    private static PieceState cast(Setup setup) {
        PieceState raw = raw(setup);
        double dry = setup.dryMatterKg();
        double core = KilnHeat.ratioOf(0.44);
        return raw.withMass(new GrainMass(dry, dry * 0.99, dry * 0.99 * core))
                .withSteep(new SteepState(core, 0, 20, 3, 1.2))
                .withGrowth(new GrowthState(0.05, 0));
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8})
    void fourDaysOnTheFloorAndADayWitheringKeepToTheReferenceStages(long seed) {
        Setup setup = setup(seed);
        var models = setup.models();
        double areaM2 = setup.outfit().growing().areaM2();
        FloorBed bed =
                new FloorBed(models.metabolism(), models.growth(), setup.air().floor(), areaM2, Cover.DAMP_CLOTH);
        PieceState state = cast(setup);
        Grain start = grainOf(state);
        double at = 20;
        for (double turn = 32; turn <= 116; turn += 12) {
            state = FloorActs.turned(
                    bed.run(state, at, turn), setup.air().floor().airC(turn));
            at = turn;
        }
        BedWalk walk = new BedWalk(FloorLegs.floorBed(setup), start, 20 * 60);
        walk.to(116 * 60);
        assertEquals(state.growth().growthRatio(), walk.grain().growthRatio(), 0.03);
        assertEquals(state.mass().moisture().wetBasisFraction(), walk.grain().moistureFraction(), 0.006);

        PieceState withered =
                new WitherBed(models.metabolism(), models.growth(), setup.air().floor(), areaM2).run(state, 116, 140);
        BedWalk wither = new BedWalk(
                new BedRates(setup, new BedRates.Lying(setup.air().floor(), areaM2, 1, 0, 12)),
                grainOf(state),
                116 * 60);
        wither.to(140 * 60);
        assertEquals(
                withered.mass().moisture().wetBasisFraction(), wither.grain().moistureFraction(), 0.006);
        assertTrue(withered.mass().moisture().wetBasisFraction()
                < state.mass().moisture().wetBasisFraction());
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8})
    void dryingTablesKeepToTheReferenceStage(long seed) {
        Setup setup = setup(seed);
        var parameters = setup.models().kiln();
        var heater = setup.outfit().drying().dryer().air();
        PieceState green = cast(setup);
        KilnStage stage = new KilnStage(parameters, 50, heater, setup.air().dryer(), 1);
        DryTable table = new DryTable(
                new DryingBed(parameters.drying()),
                green.mass().dryMatterKg(),
                50,
                heater.airFlowM3PerHour(),
                setup.air().dryer());
        for (double hours = 2; hours <= 30; hours += 4) {
            double reference = stage.run(green, 40, 40 + hours).mass().dryBasisRatio();
            double quick = table.dried(green.mass().dryBasisRatio(), 40 * 60, (40 + hours) * 60);
            assertEquals(reference, quick, 0.02, "after " + hours + " h");
        }
    }
}
