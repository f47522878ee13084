package piecewright.store;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import piecewright.grain.GrainKind;
import piecewright.quantity.EbcRange;
import piecewright.style.KilnSchedule.Rung;
import piecewright.style.MaltStyle;

class SchedulesTest {
    private static final Path FOLDER = Path.of("schedules");

    static List<Path> schedules() throws IOException {
        try (Stream<Path> files = Files.list(FOLDER)) {
            return files.filter(file -> file.toString().endsWith(".json"))
                    .sorted()
                    .toList();
        }
    }

    @Test
    void theIndexListsEveryScheduleOnce() throws IOException {
        List<String> listed = Files.readAllLines(FOLDER.resolve("index.txt"));
        assertEquals(
                schedules().stream().map(file -> file.getFileName().toString()).toList(),
                listed.stream().sorted().toList());
    }

    @ParameterizedTest
    @MethodSource("schedules")
    void everyScheduleParsesAndIsNamedAfterItsStyle(Path file) throws StoreException {
        MaltStyle style = StyleFile.read(file);
        assertEquals(style.key() + ".json", file.getFileName().toString());
    }

    /** Steep page: kernel germinates from 30 %; kiln page: no heat above 65 °C above 23 %, but after a stew; limits of the pages. */
    @ParameterizedTest
    @MethodSource("schedules")
    void everyScheduleIsInsideWhatTheCraftAllows(Path file) throws StoreException {
        MaltStyle style = StyleFile.read(file);
        assertTrue(style.steep().acceptable().lowFraction() >= 0.42
                && style.steep().acceptable().highFraction() <= 0.48);
        assertTrue(style.growth().keepMoistureFraction() <= style.steep().targetFraction());
        List<Rung> ladder = style.kiln().ladder();
        assertEquals(1, ladder.get(0).belowMoistureFraction(), "the first rung is open from loading");
        boolean enzymesMatter = style.oven().stew().isEmpty();
        for (Rung rung : ladder) {
            if (!enzymesMatter) break;
            if (rung.airOnC() > 50) assertTrue(rung.belowMoistureFraction() <= 0.25);
            if (rung.airOnC() > 65) assertTrue(rung.belowMoistureFraction() <= 0.12);
        }
        double hottestC = ladder.get(ladder.size() - 1).airOnC();
        assertTrue(style.kiln().cureC().highC() <= hottestC, "curing stays on the ladder");
        assertTrue(style.finish().restDays() >= 7, "practice, row P: pale malt rests at least a week");
    }

    /** Binding ladder of the reference for pale, enzyme-rich styles; common practice, no source. */
    @Test
    void paleFollowsTheLadderForEnzymeRichMalt() throws StoreException {
        MaltStyle pale = StyleLibrary.builtIn().style("pale");
        assertEquals(
                List.of(
                        new Rung(1, 50),
                        new Rung(0.23, 60),
                        new Rung(0.12, 65),
                        new Rung(0.08, 75),
                        new Rung(0.06, 85)),
                pale.kiln().ladder());
        assertEquals(List.of(GrainKind.BARLEY), pale.grains());
        assertEquals(0.44, pale.steep().targetFraction());
        assertEquals(new EbcRange(2.5, 3.5), pale.finish().colour());
        assertEquals(21, pale.finish().restDays());
    }

    @Test
    void theLibraryHoldsEverySchedule() throws StoreException, IOException {
        assertEquals(
                schedules().stream()
                        .map(file -> file.getFileName().toString().replace(".json", ""))
                        .sorted()
                        .toList(),
                StyleLibrary.builtIn().all().stream().map(MaltStyle::key).toList());
        assertFalse(StyleLibrary.builtIn().all().isEmpty());
    }
}
