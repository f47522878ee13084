package piecewright.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import piecewright.app.ReadWish;
import piecewright.plan.Arrangement;
import piecewright.store.BatchFile;
import piecewright.store.StoreException;
import piecewright.store.StyleLibrary;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** Where and how deep a piece grows and how warm its water is, as told or left open. */
class ArrangementTest {
    @TempDir
    private Path folder;

    private static List<String> plan(String... more) {
        return Run.plan("pale", "two-row-barley", "cool-garage", more);
    }

    private static JsonNode act(String document, String id) {
        for (JsonNode act : JsonMapper.shared().readTree(document).get("plan").get("acts")) {
            if (act.get("id").stringValue().equals(id)) return act;
        }
        throw new AssertionError(id);
    }

    @Test
    void whatIsToldIsKeptWithTheBatch() throws StoreException {
        Path batch = folder.resolve("thin.json");
        List<String> wish = new ArrayList<>(plan("--malt", "4 kg", "--ready-by", "2027-05-01"));
        wish.addAll(List.of("--bed", "3 cm", "--water", "12 C", "--into", batch.toString(), "--json"));

        String planned = Run.of(Run.REAL, Run.NOW, wish).out();
        Arrangement kept = ReadWish.of(batch, BatchFile.read(batch), StyleLibrary.builtIn())
                .request()
                .arrangement();

        assertEquals(3, act(planned, "floor.spread").get("depthCm").doubleValue(), 0.05);
        assertEquals(12, act(planned, "steep-1.soak").get("setC").doubleValue(), 1e-9);
        assertEquals(OptionalDouble.of(3), kept.bedCm());
        assertEquals(OptionalDouble.of(12), kept.fillC());
        String grows = act(planned, "floor.spread").get("place").stringValue();
        assertEquals(Optional.of(grows), kept.places().growsIn());
    }

    @ParameterizedTest
    @ValueSource(strings = {"garage", "hall"})
    void itIsSteepedWhereThePersonSaysAndStaysThere(String place) throws StoreException {
        Path batch = folder.resolve("there.json");
        List<String> wish = new ArrayList<>(plan("--malt", "4 kg", "--ready-by", "2027-05-01"));
        wish.addAll(List.of("--steep-in", place, "--into", batch.toString(), "--json"));

        String planned = Run.of(Run.REAL, Run.NOW, wish).out();
        Arrangement kept = ReadWish.of(batch, BatchFile.read(batch), StyleLibrary.builtIn())
                .request()
                .arrangement();

        assertEquals(place, act(planned, "steep-1.soak").get("place").stringValue());
        assertEquals(Optional.of(place), kept.places().steepsIn());
    }

    @Test
    void whatIsLeftOpenIsChosenAndExplained() {
        List<String> wish = new ArrayList<>(plan("--malt", "4 kg", "--ready-by", "2027-05-01", "--leave-open", "bed"));

        String page = Run.of(Run.REAL, Run.NOW, wish).out().replaceAll("\\s+", " ");

        assertTrue(page.contains("Left open, and taken: a bed "), page);
    }

    @ParameterizedTest
    @CsvSource({
        "--bed,60 cm,must be from 1 cm to 30 cm",
        "--bed,deep,--bed",
        "--water,40 C,must be from 2 °C to 24 °C",
        "--grow-in,attic,no trays stand in",
        "--steep-in,attic,no vessels stand in",
        "--leave-open,cloth,cannot be left open"
    })
    void whatCannotBeIsRefusedByItsOption(String option, String typed, String why) {
        List<String> wish = new ArrayList<>(plan("--malt", "4 kg", "--ready-by", "2027-05-01", option, typed));

        Run run = Run.of(Run.REAL, Run.NOW, wish);

        assertEquals(2, run.code());
        assertTrue(run.err().contains(option) && run.err().contains(why), run.err());
    }
}
