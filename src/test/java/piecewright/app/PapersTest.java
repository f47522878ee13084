package piecewright.app;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.time.Instant;
import java.time.LocalDate;
import java.util.Map;
import org.junit.jupiter.api.Test;
import piecewright.plan.Act;
import piecewright.plan.ActKind;
import piecewright.plan.CouchedDemo;
import piecewright.plan.DemoPlan;
import piecewright.plan.ModelParameters;
import piecewright.plan.Plan;
import piecewright.plan.PlanRequest;
import piecewright.plan.PlanResult;
import piecewright.plan.Planner;
import piecewright.sheet.MassBand;
import piecewright.store.HouseFile;
import piecewright.store.LotFile;
import piecewright.store.StoreException;
import piecewright.store.StyleLibrary;

/** What papers are made of: a band at every act of every kind of plan. */
class PapersTest {
    private static final Instant NOW = Instant.parse("2027-02-15T10:00:00Z");

    private static Map<String, MassBand> bands(PlanRequest request, Plan plan) {
        return Papers.of(request, plan, NOW).known().bands();
    }

    private static void everyActHasABandAboutItsMiddle(PlanRequest request, Plan plan) {
        Map<String, MassBand> bands = bands(request, plan);
        for (Act act : plan.acts()) {
            MassBand band = bands.get(act.id());
            assertTrue(band != null, () -> act.id() + " has no band");
            double middleKg = act.expect().massKg();
            assertTrue(band.lowKg() <= middleKg && middleKg <= band.highKg(), () -> act.id() + " " + band);
            double widthRatio = (band.highKg() - band.lowKg()) / middleKg;
            assertTrue(widthRatio > 0.003 && widthRatio < 0.25, () -> act.id() + " " + band);
        }
    }

    @Test
    void aPaleMaltHasABandAtEveryAct() {
        everyActHasABandAboutItsMiddle(DemoPlan.request(), DemoPlan.plan());
    }

    @Test
    void aCouchedMaltHasABandAtEveryActTooAndItsHeap() {
        everyActHasABandAboutItsMiddle(CouchedDemo.request(), CouchedDemo.plan());
        assertTrue(Papers.of(CouchedDemo.request(), CouchedDemo.plan(), NOW)
                .heaps()
                .isPresent());
        assertTrue(Papers.of(DemoPlan.request(), DemoPlan.plan(), NOW).heaps().isEmpty());
    }

    @Test
    void aStewedAndRoastedMaltHasABandAtEveryActToo() throws StoreException {
        PlanRequest request = new PlanRequest(
                StyleLibrary.builtIn().style("crystal-medium"),
                LotFile.read(Path.of("demo-data/lots/two-row-barley.json")),
                HouseFile.read(Path.of("demo-data/houses/terrace-kitchen.json")),
                new PlanRequest.Amount.FinishedMalt(2),
                new PlanRequest.When.ReadyBy(LocalDate.of(2027, 5, 1), LocalDate.of(2027, 3, 1)));
        PlanResult result = new Planner(ModelParameters.defaults()).plan(request);
        Plan plan = ((PlanResult.Planned) result).plan();
        assertEquals(ActKind.ROAST, plan.acts().get(plan.acts().size() - 1).kind());
        everyActHasABandAboutItsMiddle(request, plan);
    }

    /** The first drain hangs on a steep rate known to 30 %; raw grain on the scale and the floaters alone. */
    @Test
    void theBandIsWidestWhereTheLotIsLeastKnown() {
        Map<String, MassBand> bands = bands(DemoPlan.request(), DemoPlan.plan());
        MassBand raw = bands.get("steep-1.soak");
        MassBand drained = bands.get("steep-1.drain");
        assertTrue(
                drained.highKg() / drained.lowKg() - 1 > 3 * (raw.highKg() / raw.lowKg() - 1),
                () -> raw + " " + drained);
    }
}
