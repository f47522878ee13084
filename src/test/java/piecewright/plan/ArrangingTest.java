package piecewright.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Duration;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import piecewright.plan.Arranging.Arranged;
import piecewright.plan.Arranging.Choice;

/** What a wish leaves open is chosen by planning every way. */
class ArrangingTest {
    private static final Planner PLANNER = new Planner(ModelParameters.defaults());

    private static Plan plan(PlanRequest request) {
        return ((PlanResult.Planned) PLANNER.plan(request)).plan();
    }

    private static Act act(Plan plan, String id) {
        return plan.acts().stream()
                .filter(act -> act.id().equals(id))
                .findFirst()
                .orElseThrow();
    }

    private static List<Finding.Chosen> chosen(Arranged arranged) {
        return ((PlanResult.Planned) arranged.result())
                .plan().findings().stream()
                        .filter(Finding.Chosen.class::isInstance)
                        .map(Finding.Chosen.class::cast)
                        .toList();
    }

    @ParameterizedTest
    @ValueSource(longs = {2, 5})
    void whatIsChosenIsNeverDearerThanTheUsualAndIsWhatItSaysItIs(long seed) {
        PlanRequest request = Seeded.request(seed);
        Plan usual = plan(request);

        Arranged best = new Arranging(PLANNER::plan).best(request, EnumSet.allOf(Choice.class));
        Plan again = plan(best.request());

        assertTrue(again.costMinutes() <= usual.costMinutes(), again.costMinutes() + " against " + usual.costMinutes());
        List<Finding.Chosen> chosen = chosen(best);
        assertEquals(
                List.of(Choice.PLACE, Choice.BED, Choice.WATER),
                chosen.stream().map(Finding.Chosen::choice).toList());
        assertEquals(again.costMinutes(), chosen.get(2).taken().costMinutes(), 1e-9);
        assertEquals(act(again, "steep-1.soak").setting(), chosen.get(2).taken().setting());
        for (Finding.Chosen one : chosen) {
            one.lost()
                    .ifPresent(lost ->
                            assertTrue(lost.way().costMinutes() >= one.taken().costMinutes() - 1));
        }
    }

    @Test
    void waterThatIsWarmedIsPouredWarmerTakesFiveMinutesMoreAndIsSaidToBeWarmed() {
        PlanRequest request = Seeded.request(2);
        double sourceC = request.house().steepWaterC();
        Plan usual = plan(request);

        Plan warmed = plan(request.arranged(Arrangement.usual().withFillC(sourceC + 3)));

        Act soak = act(warmed, "steep-1.soak");
        assertEquals(sourceC + 3, soak.setting().setC().orElseThrow(), 1e-9);
        assertEquals(act(usual, "steep-1.soak").work().plusMinutes(5), soak.work());
        assertTrue(warmed.findings().contains(new Finding.WaterTempered("steep-1.soak", sourceC, sourceC + 3)));
        assertFalse(usual.findings().stream().anyMatch(Finding.WaterTempered.class::isInstance));
    }

    /** Common practice, no source: a thin bed is left alone longer than a deep one. */
    @Test
    void aThinBedMayBeLeftLongerThanADeepOne() {
        PlanRequest request = Seeded.request(5);

        Plan thin = plan(request.arranged(Arrangement.usual().withBedCm(4)));
        Plan deep = plan(request.arranged(Arrangement.usual().withBedCm(7)));

        assertEquals(4, act(thin, "floor.spread").setting().depthCm().orElseThrow(), 0.5);
        assertTrue(act(deep, "floor.spread").setting().depthCm().orElseThrow() >= 6);
        assertTrue(gap(thin).compareTo(gap(deep)) > 0, gap(thin) + " against " + gap(deep));
    }

    private static Duration gap(Plan plan) {
        return plan.findings().stream()
                .filter(Finding.BedDepth.class::isInstance)
                .map(finding -> ((Finding.BedDepth) finding).longestGap())
                .findFirst()
                .orElseThrow();
    }

    @Test
    void whereNothingElseFitsThatIsSaid() {
        PlanRequest request = Seeded.request(2);

        Arranged best = new Arranging(PLANNER::plan).best(request, Set.of(Choice.PLACE));

        assertEquals(Optional.empty(), chosen(best).get(0).lost());
    }
}
