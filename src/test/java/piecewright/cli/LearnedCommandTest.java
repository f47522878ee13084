package piecewright.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.List;
import java.util.UUID;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import piecewright.belief.Belief;
import piecewright.belief.Trait;
import piecewright.belief.Unknown;
import piecewright.learn.Learned;
import piecewright.store.LearnedFile;
import piecewright.store.StoreException;

/** learned, and plans that go by it, from words to answers. */
class LearnedCommandTest {
    @TempDir
    private Path folder;

    private Path lot = Path.of("");
    private Path house = Path.of("");

    @BeforeEach
    void copyTheDemo() throws IOException {
        lot = Files.copy(Path.of("demo-data/lots/two-row-barley.json"), folder.resolve("barley.json"));
        house = Files.copy(Path.of("demo-data/houses/cool-garage.json"), folder.resolve("home.json"));
        Files.copy(Path.of("demo-data/houses/cool-garage-2027-03.csv"), folder.resolve("cool-garage-2027-03.csv"));
    }

    private static void teach(Path file, Trait trait, String item, double value, double axisSd) throws StoreException {
        Belief belief = Belief.independent(List.of(new Belief.Single(new Unknown(trait, item), value, axisSd)));
        Instant at = Instant.parse("2027-02-20T08:00:00Z");
        LearnedFile.write(file, new Learned(List.of(new Learned.Chapter(new UUID(3, 4), at, belief))));
    }

    private static Run run(String... words) {
        return Run.of(Run.NEVER, words);
    }

    @Test
    void beforeAndNowStandSideBySide() throws StoreException {
        Run fresh = run("learned", "--lot", lot.toString());
        assertEquals(0, fresh.code(), fresh.err());
        assertTrue(fresh.out().startsWith("two-row barley: nothing learned yet;"), fresh.out());
        teach(lot, Trait.STEEP_RATE, "two-row barley", 1.418, 0.058);
        Run taught = run("learned", "--lot", lot.toString());
        assertTrue(taught.out().startsWith("two-row barley: learned from one batch, on 2027-02-20."), taught.out());
        String row = taught.out()
                .lines()
                .filter(line -> line.contains("speed of drinking"))
                .findFirst()
                .orElseThrow();
        assertTrue(row.endsWith("1.42 (1.32 to 1.53)"), row);
        String other = taught.out()
                .lines()
                .filter(line -> line.contains("speed of growth"))
                .findFirst()
                .orElseThrow();
        assertTrue(other.matches(".* 1.00 \\(0.77 to 1.29\\) +as before"), other);
    }

    @Test
    void aHouseShowsItsKitInThePersonsUnits() throws StoreException {
        teach(house, Trait.DIAL_OFFSET, "plywood box kiln", -5, 1);
        Run run = run("learned", "--house", house.toString(), "--units", "us");
        assertEquals(0, run.code(), run.err());
        String row = run.out()
                .lines()
                .filter(line -> line.contains("plywood box kiln: hotter"))
                .findFirst()
                .orElseThrow();
        assertTrue(row.endsWith("-9 °F (-11.3 °F to -6.7 °F)"), row);
        Run json = run("learned", "--house", house.toString(), "--json");
        assertTrue(json.out().contains("\"p50\" : -5"), json.out());
    }

    @Test
    void aPlanGoesByWhatWasLearnedAndSaysSo() throws StoreException {
        List<String> words = List.of("plan", "--full", "--style", "pale", "--malt", "4 kg", "--ready-by", "2027-05-01");
        Run before = Run.of(Run.REAL, Run.NOW, withFiles(words));
        assertFalse(before.out().contains("Earlier batches"), before.out());
        teach(lot, Trait.STEEP_RATE, "two-row barley", 1.6, 0.058);
        teach(house, Trait.DIAL_OFFSET, "plywood box kiln", 5, 1);
        Run after = Run.of(Run.REAL, Run.NOW, withFiles(words));
        assertEquals(0, after.code(), after.err());
        String flat = after.out().replaceAll("\\s+", " ");
        assertTrue(flat.contains("Earlier batches of this lot taught the plan: it drinks at 1"), after.out());
        assertTrue(flat.contains("runs 5 °C hotter than its dial says"), after.out());
    }

    private List<String> withFiles(List<String> words) {
        List<String> all = new java.util.ArrayList<>(words);
        all.addAll(List.of("--lot", lot.toString(), "--house", house.toString()));
        return all;
    }

    @Test
    void mistakesAreNamed() throws IOException {
        assertEquals(2, run("learned").code());
        assertEquals(
                2,
                run("learned", "--lot", lot.toString(), "--house", house.toString())
                        .code());
        Files.writeString(folder.resolve("barley.learned.json"), "{");
        Run damaged = run("learned", "--lot", lot.toString());
        assertEquals(2, damaged.code());
        assertTrue(damaged.err().contains("barley.learned.json"), damaged.err());
    }
}
