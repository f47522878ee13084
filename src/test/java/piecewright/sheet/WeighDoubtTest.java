package piecewright.sheet;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import piecewright.grain.LotMoisture;
import piecewright.house.Scale;
import piecewright.quantity.Moisture;

class WeighDoubtTest {
    /** Source: the project's table of estimates, 5 kg at 12.5 % give or take 1 point, a scale good to 2 g. */
    @ParameterizedTest
    @CsvSource({"43, 1, 0.7", "20, 5, 1.4", "10, 5.5, 1.8", "4.5, 6, 2.3"})
    void agreesWithTheTableOfPractice(double moisturePercent, double lostPercent, double sdPercent) {
        double stepG = 2 * Math.sqrt(12);
        WeighDoubt doubt = new WeighDoubt(5, new LotMoisture(new Moisture(0.125), 0.01, true), new Scale(stepG, 10));
        assertEquals(sdPercent, 100 * doubt.sdFraction(moisturePercent / 100, lostPercent / 100), 0.05);
    }
}
