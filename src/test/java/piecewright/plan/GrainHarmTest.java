package piecewright.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Duration;
import java.time.Instant;
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
    private static final long HOUSEHOLDS = Long.getLong("piecewright.harmed", 6);
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
        assertTrue(warm.expectedC() > warm.warmestC() + Rules.BED_SPOILS_OVER_K, warm.toString());
        List<Remedy> remedies = new Remedies(PLANNER).against(request, obstacles);
        assertTrue(
                remedies.stream()
                        .anyMatch(remedy -> remedy.plan().acts().stream()
                                .anyMatch(act -> act.id().equals("floor.spread")
                                        && act.setting().place().orElse("").equals("cellar"))),
                remedies.toString());
    }

    /** Made-up households in seasons too cold and too warm: wet grain is kept from frost, heat and drowning, or refused. */
    @Test
    void noPlanFreezesDrownsOrOverheatsItsGrainWhateverTheSeason() {
        int planned = 0;
        for (long seed = 0; seed < HOUSEHOLDS; seed++) {
            for (double byK : new double[] {-12, -6, 6, 10}) {
                PlanRequest wish = seed % 2 == 0 ? Styled.request(seed) : Seeded.request(seed);
                PlanRequest request = wish.withHouse(shifted(wish.house(), byK));
                if (!(PLANNER.plan(request) instanceof PlanResult.Planned found)) continue;
                planned++;
                String told = "seed " + seed + " by " + byK + " K";
                neverTooColdOrWarm(request, found.plan(), told);
                neverUnderWaterTooLong(request, found.plan(), told);
            }
        }
        assertTrue(planned > HOUSEHOLDS, planned + " of " + 4 * HOUSEHOLDS);
    }

    private static void neverTooColdOrWarm(PlanRequest request, Plan plan, String told) {
        Instant drained = first(plan, ActKind.DRAIN);
        Instant spread = first(plan, ActKind.FLOOR);
        Instant lifted = first(plan, ActKind.PACK, ActKind.STEW, ActKind.LOAD);
        double warmestC = request.style().growth().warmestGrainC() + Rules.BED_SPOILS_OVER_K;
        for (Plan.Sample sample : plan.course()) {
            double grainC = sample.state().grainC();
            boolean wet = !sample.at().isBefore(drained) && sample.at().isBefore(lifted);
            boolean bed = !sample.at().isBefore(spread) && sample.at().isBefore(lifted);
            assertTrue(!wet || grainC >= GrainHarm.FREEZES_C, told + " " + sample.at() + ": " + grainC);
            assertTrue(!bed || grainC <= warmestC, told + " " + sample.at() + ": " + grainC);
        }
    }

    private static void neverUnderWaterTooLong(PlanRequest request, Plan plan, String told) {
        Instant soaked = Instant.EPOCH;
        for (Act act : plan.acts()) {
            if (act.kind() == ActKind.SOAK) soaked = act.startsAt();
            if (act.kind() != ActKind.DRAIN) continue;
            double hours = Duration.between(soaked, act.startsAt()).toMinutes() / 60.0;
            double fillC = request.arrangement().fillC().orElse(request.house().steepWaterC());
            Limits limits = act.id().startsWith("steep-1.") ? Practice.FIRST_IMMERSION : Practice.LATER_IMMERSION;
            double ratio = Math.max(
                    1,
                    Math.max(
                            request.style().steep().soaks().firstRatio(),
                            request.style().steep().soaks().laterRatio()));
            assertTrue(hours <= ratio * limits.hardHours(Math.min(fillC, 10)), told + " " + act.id() + " " + hours);
        }
    }

    private static Instant first(Plan plan, ActKind... kinds) {
        return plan.acts().stream()
                .filter(act -> List.of(kinds).contains(act.kind()))
                .map(Act::startsAt)
                .findFirst()
                .orElseThrow();
    }

    private static House shifted(House like, double byK) {
        List<Place> places = like.places().stream()
                .map(place -> new Place(place.name(), shifted(place.air(), byK), place.humidityFraction()))
                .toList();
        return new House(
                like.name(), like.zone(), places, like.steepWaterC(), like.people(), like.nights(), like.kit());
    }

    private static AirTemperature shifted(AirTemperature air, double byK) {
        if (air instanceof AirTemperature.Constant constant) return new AirTemperature.Constant(constant.airC() + byK);
        if (air instanceof AirTemperature.Daily daily)
            return new AirTemperature.Daily(daily.lowC() + byK, daily.highC() + byK);
        return air;
    }
}
