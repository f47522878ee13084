package piecewright.sheet;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import piecewright.plan.Act;
import piecewright.plan.ActKind;
import piecewright.plan.DemoPlan;

class WeightTableTest {
    /** 5 kg of grain at 12 % hold 4.4 kg of dry matter: 8.0 kg at 45 %, 145 g for each point there. */
    @Test
    void fiveKilogramsAtTwelvePercentWeighEightAtFortyFive() {
        WeightTable.Column column = new WeightTable.Column(DemoPlan.plan().acts(), 5 * 0.88);
        assertEquals(8.0, column.weightKg(45), 1e-9);
        assertEquals(0.145, (column.weightKg(46) - column.weightKg(44)) / 2, 0.001);
    }

    @Test
    void atTheWeightThePlanExpectsTheTableGivesThePlansMoisture() {
        for (WeightTable.Column column : WeightTable.of(DemoPlan.plan()).columns()) {
            for (Act act : column.acts()) {
                double percent = 100 * (1 - column.dryKg() / act.expect().massKg());
                assertEquals(act.expect().moisture().wetBasisPercent(), percent, 0.3, act.id());
            }
        }
    }

    @Test
    void everyWeighInHasItsColumnAndAFramedRow() {
        WeightTable table = WeightTable.of(DemoPlan.plan());
        List<Act> weighed = table.columns().stream()
                .flatMap(column -> column.acts().stream())
                .toList();
        assertEquals(
                3, weighed.stream().filter(act -> act.kind() == ActKind.DRAIN).count());
        assertTrue(weighed.stream().anyMatch(act -> act.kind() == ActKind.DEROOT));
        for (WeightTable.Column column : table.columns()) {
            assertTrue(table.percents().stream().anyMatch(column::expects), column::toString);
        }
        assertTrue(
                table.percents().size() <= 45, "one page: " + table.percents().size());
    }
}
