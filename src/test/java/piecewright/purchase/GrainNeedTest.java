package piecewright.purchase;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import piecewright.grain.GrainKind;
import piecewright.grain.GrainLot;
import piecewright.house.AirTemperature;
import piecewright.plan.Households;
import piecewright.plan.ModelParameters;
import piecewright.plan.Plan;
import piecewright.plan.PlanRequest;
import piecewright.plan.PlanResult;
import piecewright.plan.Planner;
import piecewright.quantity.Moisture;
import piecewright.store.StoreException;
import piecewright.store.StyleLibrary;
import piecewright.style.MaltStyle;

class GrainNeedTest {
    private static final GrainBuyer BUYER = new GrainBuyer(ModelParameters.defaults());

    /** Worked examples of the formula G = M (1 − wm) / ((1 − wb)(1 − c)(1 − h) Y); loss shares from memory. */
    @ParameterizedTest
    @CsvSource(textBlock = """
            5, 4, 12, 0.02, 0.97, 0.01, 0.045, 0.035, 6.353, 6.146
            5, 4, 12, 0.02, 0.85, 0.01, 0.045, 0.035, 7.250, 6.084
            10, 3.5, 13, 0.03, 0.98, 0.012, 0.075, 0.045, 13.504, 13.199
            5, 4, 13, 0.02, 0.97, 0.01, 0.045, 0.025, 6.360, 6.155
            """)
    void formulaGivesTheWorkedExamples(
            double maltKg,
            double maltPercent,
            double grainPercent,
            double cleaning,
            double growing,
            double leaching,
            double respiration,
            double rootlets,
            double usefulKg,
            double scaleKg) {
        Losses losses = new Losses(cleaning, 0.01, leaching, respiration, rootlets, 0);
        Moisture grain = Moisture.ofWetBasisPercent(grainPercent);
        Moisture malt = Moisture.ofWetBasisPercent(maltPercent);
        assertEquals(usefulKg, maltKg / losses.usefulRatio(grain, malt, growing), 0.002);
        assertEquals(scaleKg, maltKg / losses.scaleRatio(grain, malt, growing), 0.002);
    }

    /** Property: more loss, wetter grain and drier malt need more grain; and dead corns never save any. */
    @Test
    void everyLossAsksForMoreGrain() {
        Moisture grain = Moisture.ofWetBasisPercent(12);
        Moisture malt = Moisture.ofWetBasisPercent(4);
        double base = new Losses(0.02, 0.01, 0.01, 0.045, 0.035, 0).usefulRatio(grain, malt, 0.97);
        for (int which = 0; which < 6; which++) {
            double[] f = {0.02, 0.01, 0.01, 0.045, 0.035, 0};
            f[which] += 0.01;
            Losses more = new Losses(f[0], f[1], f[2], f[3], f[4], f[5]);
            assertTrue(more.usefulRatio(grain, malt, 0.97) < base, "loss " + which);
        }
        Losses losses = new Losses(0.02, 0.01, 0.01, 0.045, 0.035, 0);
        assertTrue(losses.usefulRatio(Moisture.ofWetBasisPercent(13), malt, 0.97) < base);
        assertTrue(losses.usefulRatio(grain, Moisture.ofWetBasisPercent(3), 0.97) < base);
        assertTrue(losses.usefulRatio(grain, malt, 0.9) < base);
    }

    /** Source: exact; the last row is the thousand-corn method of an encyclopaedia, 42 g at 15 % to 32 g at 2 %. */
    @ParameterizedTest
    @CsvSource(textBlock = """
            12, 8, 4, 84.33
            14, 10, 4, 80.63
            15, 12.16, 2, 76.19
            """)
    void maltOfAHundredKilograms(double grain, double loss, double malt, double kg) {
        Losses losses = new Losses(0, 0, loss / 100, 0, 0, 0);
        assertEquals(
                kg,
                100 * losses.usefulRatio(Moisture.ofWetBasisPercent(grain), Moisture.ofWetBasisPercent(malt), 1),
                0.01);
    }

    @Test
    void grainForMaltAndMaltFromGrainUndoEachOther() throws StoreException {
        for (MaltStyle style : StyleLibrary.builtIn().all()) {
            GrainLot lot = GrainBuyer.usual(style.grains().get(0));
            for (double maltKg : new double[] {1, 4.5, 20}) {
                GrainNeed need = BUYER.forMalt(style, lot, maltKg);
                double backKg = BUYER.fromGrain(style, lot, need.waterfall().grainKg())
                        .waterfall()
                        .usefulMaltKg();
                assertEquals(maltKg, backKg, 0.001 * maltKg, style.key());
                closes(need.waterfall());
                double ratio = need.waterfall().grainKg() / maltKg;
                assertTrue(ratio > 1.15 && ratio < 1.4, style.key() + " takes " + ratio);
                assertTrue(need.lowGrainKg() < need.waterfall().grainKg()
                        && need.waterfall().grainKg() < need.highGrainKg());
            }
        }
    }

    private static void closes(Waterfall waterfall) {
        double lostKg =
                waterfall.items().stream().mapToDouble(Waterfall.Item::lostKg).sum();
        assertEquals(waterfall.usefulMaltKg(), waterfall.grainKg() - lostKg, 1e-9);
    }

    /** The plan and the purchase read the same ledger: the figures are the same to the gram. */
    @Test
    void planAndPurchaseAgree() {
        PlanRequest request = new PlanRequest(
                Households.pale(),
                Households.barley(),
                Households.house(
                        "cellar", new AirTemperature.Constant(15), Households.officeWeek(), Households.boxKiln(true)),
                new PlanRequest.Amount.FinishedMalt(3),
                new PlanRequest.When.StartOn(LocalDate.of(2031, 3, 8)));
        PlanResult result = new Planner(ModelParameters.defaults()).plan(request);
        Plan plan = result.match(PlanResult.Planned::plan, not -> {
            throw new AssertionError(not.obstacles());
        });
        GrainNeed need = GrainNeed.of(plan, request.lot());
        closes(need.waterfall());
        assertEquals(plan.outcome().rawGrainKg(), need.waterfall().grainKg(), 1e-9);
        assertEquals(plan.outcome().finishedMaltKg(), need.waterfall().usefulMaltKg(), 1e-6);
        assertEquals(plan.outcome().scaleMaltKg(), need.waterfall().scaleMaltKg(), 1e-6);
        GrainNeed houseless =
                BUYER.forMalt(request.style(), request.lot(), plan.outcome().finishedMaltKg());
        assertEquals(
                plan.outcome().rawGrainKg(),
                houseless.waterfall().grainKg(),
                0.04 * plan.outcome().rawGrainKg(),
                "and a batch without a house is near");
    }

    @Test
    void sacksAreTheCheapestThatHoldEnough() {
        Sack large = new Sack(25, Optional.of(new BigDecimal("30")));
        Sack small = new Sack(5, Optional.of(new BigDecimal("9")));
        assertEquals(Map.of(small, 2), SackChoice.of(8, List.of(large, small)).sacks());
        assertEquals(Map.of(large, 1), SackChoice.of(17, List.of(large, small)).sacks());
        assertEquals(
                Map.of(large, 1, small, 1),
                SackChoice.of(28, List.of(small, large)).sacks());
        assertEquals(Map.of(), SackChoice.of(0, List.of(small)).sacks());
    }

    @Test
    void wishesOfOneGrainShareSacksAndWhatIsOwned() throws StoreException {
        StyleLibrary library = StyleLibrary.builtIn();
        GrainLot barley = GrainBuyer.usual(GrainKind.BARLEY);
        List<GrainNeed> needs = List.of(
                BUYER.forMalt(library.style("pale"), barley, 4),
                BUYER.forMalt(library.style("pale-ale"), barley, 4),
                BUYER.forMalt(library.style("wheat-pale"), GrainBuyer.usual(GrainKind.WHEAT), 3));
        Sack sack = new Sack(10, Optional.of(new BigDecimal("15")));
        ShoppingList list =
                ShoppingList.of(needs, Map.of(GrainKind.BARLEY, 3.0), Map.of(GrainKind.BARLEY, List.of(sack)));
        assertEquals(2, list.lines().size());
        ShoppingList.Line line = list.lines().get(0);
        assertEquals(
                needs.get(0).waterfall().grainKg() + needs.get(1).waterfall().grainKg() + 0.15, line.neededKg(), 1e-9);
        assertEquals(Map.of(sack, 1), line.sacks());
        assertEquals(Optional.of(new BigDecimal("15")), line.cost());
        double perMalt = line.costPerMaltKg().orElseThrow().doubleValue();
        assertEquals(1.5 * line.neededKg() / 8, perMalt, 0.006);
    }
}
