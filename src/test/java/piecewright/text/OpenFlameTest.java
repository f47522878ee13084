package piecewright.text;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import piecewright.house.House;
import piecewright.plan.Caution;
import piecewright.plan.DemoPlan;
import piecewright.plan.Finding;
import piecewright.plan.ModelParameters;
import piecewright.plan.Plan;
import piecewright.plan.PlanRequest;
import piecewright.plan.PlanResult;
import piecewright.plan.Planner;
import piecewright.store.HouseFile;
import piecewright.store.StoreException;

/** A kiln whose fumes pass through the grain. */
class OpenFlameTest {
    private static final Wording WORDING =
            new Wording(DisplayUnits.metric(), DemoPlan.request().house().zone());

    private static List<Finding.OpenFlame> flames(Plan plan) {
        return plan.findings().stream()
                .filter(Finding.OpenFlame.class::isInstance)
                .map(Finding.OpenFlame.class::cast)
                .toList();
    }

    /** FDA, Compliance Policy Guide 578.500: 10 ppb of nitrosodimethylamine in barley malt, 10 µg in a kilogram. */
    @Test
    void itsPlanWarnsOfNitrosaminesWithTheLimit() throws IOException, StoreException {
        Path file = Path.of("demo-data/houses/cool-garage.json");
        String flamed = Files.readString(file).replace("\"powerW\": 1000", "\"openFlame\": true, \"powerW\": 1000");
        House house = HouseFile.parse(file, flamed);
        PlanRequest like = DemoPlan.request();
        PlanRequest request = new PlanRequest(like.style(), like.lot(), house, like.amount(), like.when());
        Plan plan = ((PlanResult.Planned) new Planner(ModelParameters.defaults()).plan(request)).plan();
        List<Finding.OpenFlame> flames = flames(plan);
        assertEquals(List.of(new Finding.OpenFlame("kiln.load", "plywood box kiln")), flames);
        assertEquals(Finding.Severity.WARNING, flames.get(0).severity());
        assertEquals(10, Finding.OpenFlame.NDMA_LEVEL_UG_PER_KG);
        String said = WORDING.finding(flames.get(0));
        assertTrue(said.contains("nitrosamines") && said.contains("10 µg in a kilogram"), said);
        assertTrue(said.contains("local rules"), said);
    }

    @Test
    void everyKilnIsCautionedAndNoElectricOneWarned() {
        assertEquals(List.of(), flames(DemoPlan.plan()));
        boolean cautioned = DemoPlan.plan().acts().stream()
                .anyMatch(act -> act.id().equals("kiln.load") && act.cautions().contains(Caution.COMBUSTION_GASES));
        assertTrue(cautioned);
        String caution = WORDING.caution(Caution.COMBUSTION_GASES);
        assertTrue(caution.contains("nitrosamines") && caution.contains("10 µg in a kilogram"), caution);
    }
}
