package piecewright.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import piecewright.grain.GrainLot;
import piecewright.house.House;
import piecewright.house.Scale;
import piecewright.plan.PlanRequest.Amount;
import piecewright.plan.PlanRequest.When;
import piecewright.process.steep.TestSteep;
import piecewright.store.HouseFile;
import piecewright.store.LotFile;
import piecewright.store.StoreException;
import piecewright.store.StyleLibrary;

class PreflightTest {
    private static final LocalDate DAY = LocalDate.parse("2027-03-20");

    private static House house;
    private static PlanRequest untested;
    private static Plan plan;

    private static PlanRequest request(String lot) throws StoreException {
        return new PlanRequest(
                StyleLibrary.builtIn().style("pale"),
                LotFile.parse(Path.of("lot.json"), lot),
                house,
                new Amount.FinishedMalt(4),
                new When.StartOn(DAY));
    }

    private static String lot(String more) {
        return "{ \"format\": 1, \"name\": \"sack\", \"grain\": \"barley\", \"moisture\": { \"wetBasisPercent\": 12 },"
                + " \"treated\": \"no\"" + more + " }";
    }

    @BeforeAll
    static void planOnce() throws StoreException {
        house = HouseFile.read(Path.of("demo-data/houses/cool-garage.json"));
        untested = request(lot(""));
        plan = ((PlanResult.Planned) new Planner(ModelParameters.defaults()).plan(untested)).plan();
    }

    private static List<Check> checks(PlanRequest request, LocalDate earliest) {
        return new Preflight(request, earliest.atStartOfDay()).added(plan).checks();
    }

    private static Check check(List<Check> checks, CheckKind kind) {
        return checks.stream().filter(check -> check.kind() == kind).findFirst().orElseThrow();
    }

    @Test
    void anUntestedLotIsCountedAndSteepedInTimeForTheFirstAct() {
        List<Check> checks = checks(untested, DAY.minusDays(19));
        assertEquals(
                List.of(CheckKind.LAY_OUT, CheckKind.COUNT, CheckKind.TEST_SOAK, CheckKind.TEST_WEIGH),
                checks.stream().map(Check::kind).sorted().toList());
        double counted = hours(check(checks, CheckKind.LAY_OUT), check(checks, CheckKind.COUNT));
        assertTrue(counted >= 68 && counted <= 76, "72 h, four either way, as practice takes it: " + counted);
        double soaked = hours(check(checks, CheckKind.TEST_SOAK), check(checks, CheckKind.TEST_WEIGH));
        assertTrue(soaked >= 6 && soaked <= 14, "long enough to tell: " + soaked);
        Instant aDayBefore = plan.startsAt().minus(Duration.ofHours(24));
        assertTrue(checks.stream().noneMatch(check -> check.startsAt().isAfter(aDayBefore)));
    }

    private static double hours(Check from, Check until) {
        return Duration.between(from.startsAt(), until.startsAt()).toMinutes() / 60.0;
    }

    @ParameterizedTest
    @ValueSource(ints = {4, 5, 6, 8, 19})
    void everyVisitFallsIntoSomebodysHoursAndNoTwoTogether(int daysBefore) {
        LocalDate earliest = DAY.minusDays(daysBefore);
        List<Check> checks = checks(untested, earliest);
        Instant from = earliest.atStartOfDay(house.zone()).toInstant();
        Availability hours = Availability.of(house, from, plan.startsAt());
        for (int at = 0; at < checks.size(); at++) {
            Check check = checks.get(at);
            assertFalse(check.startsAt().isBefore(from));
            assertTrue(hours.workableUntil(check.startsAt())
                    .filter(until -> !check.endsAt().isAfter(until))
                    .isPresent());
            if (at > 0) assertFalse(check.startsAt().isBefore(checks.get(at - 1).endsAt()));
        }
    }

    @Test
    void whatWasMeasuredIsNotAskedForAgain() throws StoreException {
        String dish = ", \"dishes\": [{ \"waterMl\": 4, \"corns\": 100, \"by72Hours\": 97 }]";
        assertEquals(
                List.of(CheckKind.TEST_SOAK, CheckKind.TEST_WEIGH),
                checks(request(lot(dish)), DAY.minusDays(19)).stream()
                        .map(Check::kind)
                        .toList());
        String steep = ", \"testSteep\": { \"startG\": 100, \"drainedG\": 132, \"hours\": 8, \"waterC\": 15 }";
        assertEquals(List.of(), checks(request(lot(dish + steep)), DAY.minusDays(19)));
    }

    @Test
    void anOvenNobodyHeldAgainstAThermometerIsChecked() throws StoreException {
        String unchecked = new String(read("demo-data/houses/cool-garage.json"))
                .replace("\"thermostatErrorK\": 3", "\"thermostatErrorK\": 8");
        House other = HouseFile.parse(Path.of("demo-data/houses/cool-garage.json"), unchecked);
        PlanRequest request =
                new PlanRequest(untested.style(), untested.lot(), other, untested.amount(), untested.when());
        Check oven = check(checks(request, DAY.minusDays(19)), CheckKind.OVEN);
        assertEquals("plywood box kiln", oven.about());
        assertEquals(new Check.Gain(8, 3), oven.gain());
    }

    private static byte[] read(String file) {
        try {
            return java.nio.file.Files.readAllBytes(Path.of(file));
        } catch (java.io.IOException gone) {
            throw new AssertionError(gone);
        }
    }

    @Test
    void aTestWithoutRoomIsToldAndTheNextDayWithRoomIsFound() {
        Preflight preflight = new Preflight(untested, DAY.minusDays(2).atStartOfDay());
        Plan added = preflight.added(plan);
        assertEquals(
                List.of(CheckKind.TEST_SOAK, CheckKind.TEST_WEIGH),
                added.checks().stream().map(Check::kind).toList());
        assertTrue(added.findings().contains(new Finding.NoRoomToCheck("plan", CheckKind.LAY_OUT, "sack")));
        Optional<LocalDate> room = preflight.roomFrom(plan);
        LocalDate afterFourDaysAndAnotherToActOnIt =
                DAY.minusDays(2).plusDays(4).plusDays(1);
        assertEquals(Optional.of(afterFourDaysAndAnotherToActOnIt), room);
        assertEquals(Optional.empty(), new Preflight(untested, DAY.minusDays(19).atStartOfDay()).roomFrom(plan));
    }

    @Test
    void noVisitLiesInHoursOfTodayThatAreOver() {
        LocalDateTime evening = DAY.minusDays(3).atTime(21, 0);
        List<Check> checks = new Preflight(untested, evening).added(plan).checks();
        assertFalse(checks.isEmpty());
        Instant now = evening.atZone(house.zone()).toInstant();
        assertTrue(checks.stream().noneMatch(check -> check.startsAt().isBefore(now)));
    }

    @Test
    void aTestSteepSharpensThePlanOfTheLot() throws StoreException {
        GrainLot slow = request(
                        lot(", \"testSteep\": { \"startG\": 100, \"drainedG\": 128, \"hours\": 8, \"waterC\": 15 }"))
                .lot();
        assertTrue(slow.learned().steepRateRatio().orElseThrow() < 1.198);
    }

    /** Whatever the scale shows of the sample the plan asked for is taken, and tells the rate to 15 % at worst. */
    @Test
    void onACoarseScaleTheSampleIsLargeEnoughToTell() throws StoreException {
        for (double stepG : new double[] {0.1, 1, 2, 5, 10, 20, 25}) {
            double sampleG = TestSteep.sampleG(new Scale(stepG, 20)).orElseThrow();
            assertTrue(sampleG >= 100 && sampleG <= 1000, "grain for " + stepG + ": " + sampleG);
            for (double gainedRatio = 0.26; gainedRatio <= 0.36; gainedRatio += 0.02) {
                double trulyRatio = rate(sampleG, sampleG * (1 + gainedRatio));
                for (double off : new double[] {-0.5, 0.5}) {
                    double read = sampleG * (1 + gainedRatio) + off * stepG;
                    assertEquals(1, rate(sampleG, read) / trulyRatio, 0.15, stepG + " g, gained " + gainedRatio);
                }
            }
        }
        assertEquals(OptionalDouble.empty(), TestSteep.sampleG(new Scale(50, 20)));
    }

    private static double rate(double startG, double drainedG) throws StoreException {
        return request(lot(", \"testSteep\": { \"startG\": " + startG + ", \"drainedG\": " + drainedG
                        + ", \"hours\": 8, \"waterC\": 15 }"))
                .lot()
                .learned()
                .steepRateRatio()
                .orElseThrow();
    }

    @Test
    void theSampleFollowsTheScaleOfTheHouse() throws StoreException {
        House coarse = HouseFile.parse(
                Path.of("demo-data/houses/cool-garage.json"),
                new String(read("demo-data/houses/cool-garage.json")).replace("\"stepG\": 5", "\"stepG\": 20"));
        PlanRequest request =
                new PlanRequest(untested.style(), untested.lot(), coarse, untested.amount(), untested.when());
        Check soak = check(checks(request, DAY.minusDays(19)), CheckKind.TEST_SOAK);
        assertEquals(800, soak.gain().sampleG());
        assertEquals(
                200,
                check(checks(untested, DAY.minusDays(19)), CheckKind.TEST_SOAK)
                        .gain()
                        .sampleG());
    }
}
