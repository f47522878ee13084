package piecewright.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import piecewright.grain.GrainLot;
import piecewright.grain.Treatment;
import piecewright.house.AirTemperature;
import piecewright.house.House;
import piecewright.house.LocalHours;
import piecewright.plan.PlanRequest.Amount;
import piecewright.plan.PlanRequest.When;

class PlannerTest {
    private static final When MAY = new When.ReadyBy(LocalDate.of(2031, 5, 3), LocalDate.of(2031, 2, 1));

    private static PlanResult plan(GrainLot lot, House house, Amount amount, When when) {
        return new Planner(ModelParameters.defaults())
                .plan(new PlanRequest(Households.pale(), lot, house, amount, when));
    }

    private static List<Obstacle> refused(PlanResult result) {
        return assertInstanceOf(PlanResult.NotPossible.class, result).obstacles();
    }

    private static Plan planned(PlanResult result) {
        return assertInstanceOf(PlanResult.Planned.class, result).plan();
    }

    @Test
    void theWishedMaltIsMaltFromCornsThatGrew() {
        Plan plan = planned(plan(Households.barley(), Households.garage(9, 13), new Amount.FinishedMalt(4), MAY));
        assertEquals(4, plan.outcome().finishedMaltKg(), 0.005);
        assertTrue(plan.outcome().scaleMaltKg() > plan.outcome().finishedMaltKg());
        // common practice, no source: 1.16 to 1.30 kg of grain per kg of malt
        assertTrue(plan.outcome().rawGrainKg() > 4 * 1.16 && plan.outcome().rawGrainKg() < 4 * 1.30);
    }

    /** Law and common practice: treated seed is never food. */
    @Test
    void treatedSeedIsRefused() {
        GrainLot like = Households.barley();
        GrainLot treated = new GrainLot(
                like.name(),
                like.kind(),
                like.moisture(),
                like.dishes(),
                like.size(),
                Treatment.TREATED,
                like.learned());
        PlanResult result = plan(treated, Households.garage(9, 13), new Amount.RawGrain(4), MAY);
        assertEquals(List.of(new Obstacle.TreatedSeed("lot B")), refused(result));
    }

    @Test
    void aDayTooNearIsTooSoonByDays() {
        When near = new When.ReadyBy(LocalDate.of(2031, 5, 3), LocalDate.of(2031, 4, 10));
        List<Obstacle> obstacles =
                refused(plan(Households.barley(), Households.garage(9, 13), new Amount.RawGrain(4), near));
        Obstacle.TooSoon tooSoon = assertInstanceOf(Obstacle.TooSoon.class, obstacles.get(0));
        assertTrue(tooSoon.shortBy().toDays() >= 5 && tooSoon.shortBy().toDays() <= 25, tooSoon.toString());
    }

    @Test
    void aHouseWhereNobodyCanStayForTheCureSaysSo() {
        Map<DayOfWeek, List<LocalHours>> hour = Map.of(
                DayOfWeek.MONDAY, List.of(new LocalHours(LocalTime.of(18, 0), LocalTime.of(19, 0))),
                DayOfWeek.WEDNESDAY, List.of(new LocalHours(LocalTime.of(18, 0), LocalTime.of(19, 0))));
        House house = Households.house("a house", new AirTemperature.Daily(8, 12), hour, Households.boxKiln(false));
        List<Obstacle> obstacles = refused(plan(Households.barley(), house, new Amount.RawGrain(4), MAY));
        Obstacle.NobodyThere nobody = assertInstanceOf(Obstacle.NobodyThere.class, obstacles.get(0));
        assertEquals("kiln.cure", nobody.actId());
    }

    @Test
    void aVesselTooSmallNamesTheLitres() {
        List<Obstacle> obstacles =
                refused(plan(Households.barley(), Households.garage(9, 13), new Amount.RawGrain(40), MAY));
        Obstacle.VesselTooSmall small = assertInstanceOf(Obstacle.VesselTooSmall.class, obstacles.get(0));
        // 40 kg / 0.65 kg/L · 1.45 / 0.85 = 105 L
        assertEquals(105, small.neededL(), 0.5);
        assertEquals(30, small.largestL(), 1e-9);
    }

    @Test
    void everyActNamesAWindowAndAWeight() {
        Plan plan = planned(plan(Households.barley(), Households.garage(9, 13), new Amount.RawGrain(4), MAY));
        for (Act act : plan.acts()) {
            assertTrue(act.expect().massKg() > 2, act.id());
            assertTrue(!act.window().hardLatest().isBefore(act.startsAt()), act.id());
        }
        assertEquals(
                plan.acts().size(), plan.acts().stream().map(Act::id).distinct().count());
    }
}
