package piecewright.store;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import piecewright.grain.GrainLot;
import piecewright.grain.Treatment;
import piecewright.house.AirTemperature;
import piecewright.house.House;

class DemoDataTest {
    private static final Path DEMO = Path.of("demo-data");

    static List<Path> lots() throws IOException {
        return json("lots");
    }

    static List<Path> houses() throws IOException {
        return json("houses");
    }

    private static List<Path> json(String folder) throws IOException {
        try (Stream<Path> files = Files.list(DEMO.resolve(folder))) {
            return files.filter(file -> file.toString().endsWith(".json"))
                    .sorted()
                    .toList();
        }
    }

    @Test
    void thereAreEnoughToShow() throws IOException {
        assertTrue(lots().size() >= 5 && houses().size() >= 3);
    }

    /** No test and no life may write beside what everybody starts from. */
    @Test
    void nothingLearnedOrKeptLiesAmongThem() throws IOException {
        try (Stream<Path> files = Files.walk(DEMO)) {
            assertEquals(
                    List.of(),
                    files.filter(Files::isRegularFile)
                            .filter(file -> !file.getFileName().toString().matches("[a-z0-9-]+\\.(json|csv)"))
                            .toList());
        }
    }

    @ParameterizedTest
    @MethodSource("lots")
    void everyLotIsRead(Path file) throws StoreException {
        double percent = LotFile.read(file).moisture().moisture().wetBasisPercent();
        assertTrue(percent >= 11 && percent <= 14, file + ": " + percent);
    }

    /** Reference: vessel of 3 L per kg of barley; 2-3 m³/h of air per kg; curing at 80 °C and more. For 5 kg. */
    @ParameterizedTest
    @MethodSource("houses")
    void everyHouseCanMakeAPiecePale(Path file) throws StoreException {
        House house = HouseFile.read(file);
        assertTrue(house.kit().vessels().stream().anyMatch(vessel -> vessel.volumeL() >= 15));
        assertTrue(house.kit().trays().stream().anyMatch(trays -> trays.totalAreaM2() >= 0.3));
        assertTrue(
                house.kit().heaters().stream().anyMatch(heater -> heater.air().airFlowM3PerHour() >= 12.5));
        assertTrue(house.kit().heaters().stream()
                .anyMatch(heater -> heater.air().range().highC() >= 82.5));
        house.kit().trays().forEach(trays -> house.place(trays.place()));
    }

    /** Kiln page: P = G·cp·ΔT + UA·ΔT, air 1.2 kg/m³ and 1.006 kJ/kgK; worked at 60 °C over 15 °C. */
    @ParameterizedTest
    @MethodSource("houses")
    void everyHeaterHasThePowerForItsAir(Path file) throws StoreException {
        HouseFile.read(file).kit().heaters().forEach(heater -> {
            double riseK = Math.min(60, heater.air().range().highC()) - 15;
            double neededW = heater.air().airFlowM3PerHour() * 1.2 / 3600 * 1006 * riseK
                    + heater.air().lossWPerK() * riseK;
            assertTrue(neededW <= heater.air().powerW(), heater.name() + " needs " + neededW);
        });
    }

    @Test
    void theLotsAreWhatTheyAreFor() throws StoreException {
        assertEquals(0.975, lot("two-row-barley").germinativeEnergyFraction().orElseThrow(), 1e-9);
        assertEquals(
                0.39, lot("water-sensitive-barley").waterSensitivityFraction().orElseThrow(), 1e-9);
        assertEquals(Treatment.TREATED, lot("treated-seed").treatment());
        assertEquals(Treatment.UNKNOWN, lot("sack-without-label").treatment());
        assertTrue(lot("low-germination-barley").germinativeEnergyFraction().orElseThrow() < 0.85);
        assertEquals(42, lot("sack-without-label").size().thousandCornG().orElseThrow(), 1e-9);
    }

    private static GrainLot lot(String name) throws StoreException {
        return LotFile.read(DEMO.resolve("lots").resolve(name + ".json"));
    }

    @Test
    void fahrenheitAndSemicolonLoggersAreRead() throws StoreException {
        var flat = (AirTemperature.Logged) HouseFile.read(DEMO.resolve("houses/warm-flat.json"))
                .place("flat")
                .air();
        assertEquals((69.0 - 32) / 1.8, flat.readings().get(0).airC(), 1e-9);
        var barn = (AirTemperature.Logged) HouseFile.read(DEMO.resolve("houses/farmhouse.json"))
                .place("barn")
                .air();
        assertEquals(2.9, barn.readings().get(0).airC(), 1e-9);
        assertEquals("2027-02-14T23:00:00Z", barn.readings().get(0).at().toString());
    }
}
