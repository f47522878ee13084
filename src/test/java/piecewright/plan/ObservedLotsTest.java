package piecewright.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import piecewright.assess.LotJudge;
import piecewright.assess.LotJudgement.MouldRisk;
import piecewright.assess.Reason;
import piecewright.grain.GrainLot;
import piecewright.grain.LotObservations;
import piecewright.grain.LotObservations.Sign;
import piecewright.grain.LotObservations.Viability;
import piecewright.house.AirTemperature;
import piecewright.house.House;
import piecewright.plan.Finding.Severity;
import piecewright.plan.PlanRequest.Amount;
import piecewright.plan.PlanRequest.When;
import piecewright.purchase.GrainBuyer;
import piecewright.purchase.GrainNeed;

/** What was seen of a lot reaches its plan and its shopping list, by the functions that judge it. */
class ObservedLotsTest {
    private static final LocalDate START = LocalDate.of(2031, 3, 8);

    private static LotObservations seen(double brokenFraction, double ergotGPerKg, Sign... signs) {
        return new LotObservations(
                Optional.empty(),
                OptionalDouble.of(brokenFraction),
                OptionalDouble.of(ergotGPerKg),
                Set.copyOf(Arrays.asList(signs)));
    }

    private static Plan plan(LotObservations seen, double roomC) {
        House house = Households.house(
                "cellar", new AirTemperature.Constant(roomC), Households.officeWeek(), Households.boxKiln(true));
        PlanRequest request = new PlanRequest(
                Households.pale(),
                Households.barley().withSeen(seen),
                house,
                new Amount.FinishedMalt(3),
                new When.StartOn(START));
        return assertInstanceOf(PlanResult.Planned.class, new Planner(ModelParameters.defaults()).plan(request))
                .plan();
    }

    private static <T extends Finding> List<T> of(Plan plan, Class<T> kind) {
        return plan.findings().stream().filter(kind::isInstance).map(kind::cast).toList();
    }

    private static boolean warns(Plan plan, Caution caution) {
        return plan.acts().get(0).cautions().contains(caution);
    }

    /** Worked: 97 of 100 grow and 8 % are broken, so 0.97 × 0.92 = 89.2 % become malt; broken ones are never saved grain. */
    @Test
    void brokenCornsAreNeitherMaltNorSavedGrain() {
        Plan whole = plan(LotObservations.none(), 15);
        Plan broken = plan(seen(0.08, 0), 15);
        assertEquals(3, broken.outcome().finishedMaltKg(), 0.005);
        double more = broken.outcome().rawGrainKg() / whole.outcome().rawGrainKg();
        assertEquals(1 / 0.92, more, 0.01);
        GrainLot lot = Households.barley().withSeen(seen(0.08, 0));
        assertEquals(1 - 0.97 * 0.92, LotJudge.effects(lot).deadFraction(), 1e-9);
        GrainNeed need = GrainNeed.of(broken, lot);
        assertEquals(broken.outcome().finishedMaltKg(), need.waterfall().usefulMaltKg(), 1e-6);
        GrainNeed houseless = new GrainBuyer(ModelParameters.defaults()).forMalt(Households.pale(), lot, 3);
        assertEquals(
                broken.outcome().rawGrainKg(),
                houseless.waterfall().grainKg(),
                0.04 * houseless.waterfall().grainKg());
    }

    @Test
    void brokenCornsAreAFindingAndMakeMouldLikelier() {
        Plan plan = plan(seen(0.06, 0), 15);
        assertEquals(
                List.of(new Reason.Broken(0.06)),
                of(plan, Finding.LotDoubt.class).stream()
                        .map(Finding.LotDoubt::reason)
                        .toList());
        assertEquals(
                List.of(MouldRisk.RAISED),
                of(plan, Finding.MouldLikely.class).stream()
                        .map(Finding.MouldLikely::risk)
                        .toList());
        assertTrue(of(plan(seen(0.01, 0), 15), Finding.MouldLikely.class).isEmpty());
        assertEquals(
                MouldRisk.HIGH,
                of(plan(seen(0.08, 0), 15), Finding.MouldLikely.class).get(0).risk());
    }

    /** Common practice, no source: musty, mouldy or pink lots are discarded; the plan says so first and at the first soak. */
    @Test
    void aSpoiltLotIsWarnedOfInThePlan() {
        assertFalse(warns(plan(LotObservations.none(), 15), Caution.MOULD));
        for (Sign sign : List.of(Sign.MUSTY, Sign.MOULDY, Sign.PINK)) {
            Plan plan = plan(seen(0, 0, sign), 15);
            Finding.LotDoubt doubt = of(plan, Finding.LotDoubt.class).get(0);
            assertEquals(new Reason.Spoilt(sign), doubt.reason());
            assertEquals(Severity.WARNING, doubt.severity());
            assertTrue(warns(plan, Caution.MOULD), sign.key());
        }
    }

    /** Published, second hand: 0.2 g/kg for cereals other than rye; more is no lot to malt, less is picked out. */
    @Test
    void ergotStandsWithItsLimitAndAtTheFirstSoak() {
        assertFalse(warns(plan(LotObservations.none(), 15), Caution.ERGOT));
        for (double found : new double[] {0.1, 0.3}) {
            Plan plan = plan(seen(0, found), 15);
            Finding.LotDoubt doubt = of(plan, Finding.LotDoubt.class).get(0);
            Reason.Ergot ergot = assertInstanceOf(Reason.Ergot.class, doubt.reason());
            assertEquals(0.2, ergot.limitGPerKg());
            assertEquals(found > 0.2 ? Severity.WARNING : Severity.NOTE, doubt.severity());
            assertTrue(warns(plan, Caution.ERGOT));
        }
    }

    /** The same house and hours: what is cool enough for sound grain is too warm for grain that moulds easily. */
    @Test
    void mouldyGrainIsKeptCooler() {
        assertTrue(of(plan(LotObservations.none(), 16), Finding.WarmFloor.class).isEmpty());
        List<Finding.WarmFloor> warm = of(plan(seen(0, 0, Sign.MUSTY), 16), Finding.WarmFloor.class);
        assertEquals(1, warm.size());
        assertEquals(Households.pale().growth().warmestGrainC() - 4, warm.get(0).limitC(), 1e-9);
    }

    /** Reference: germination low and life high is dormancy, which only waiting mends. */
    @Test
    void aSleepingLotIsSaidToBeAsleep() {
        LotObservations alive = new LotObservations(
                Optional.of(new Viability(200, 198)), OptionalDouble.empty(), OptionalDouble.empty(), Set.of());
        GrainLot like = Households.barley();
        var none = java.util.OptionalInt.empty();
        GrainLot asleep = new GrainLot(
                        like.name(),
                        like.kind(),
                        like.moisture(),
                        List.of(new piecewright.grain.GerminationCount(
                                4, 100, none, none, java.util.OptionalInt.of(91))),
                        like.size(),
                        like.treatment(),
                        like.learned())
                .withSeen(alive);
        PlanRequest request = new PlanRequest(
                Households.pale(), asleep, Households.garage(9, 13), new Amount.RawGrain(4), new When.StartOn(START));
        Plan plan = ((PlanResult.Planned) new Planner(ModelParameters.defaults()).plan(request)).plan();
        Finding.LotDoubt doubt = of(plan, Finding.LotDoubt.class).get(0);
        assertInstanceOf(Reason.Dormant.class, doubt.reason());
        assertEquals(Severity.WARNING, doubt.severity());
    }

    /** Reference: dead corns rot in the warm heap. */
    @Test
    void aCouchOfBrokenCornsIsWatchedForMould() {
        for (long seed = 1; seed <= 20; seed++) {
            PlanRequest like = Couched.request(seed);
            PlanRequest request = new PlanRequest(
                    like.style(), like.lot().withSeen(seen(0.12, 0)), like.house(), like.amount(), like.when());
            if (!(new Planner(ModelParameters.defaults()).plan(request) instanceof PlanResult.Planned done)) continue;
            assertEquals(1, of(done.plan(), Finding.CouchMayMould.class).size());
            Stream<Act> heap = done.plan().acts().stream()
                    .filter(act -> act.kind() == ActKind.PACK || act.kind() == ActKind.BREAK);
            assertTrue(heap.allMatch(act -> act.cautions().contains(Caution.MOULD)));
            return;
        }
        throw new AssertionError("none was planned");
    }
}
