package piecewright.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** judge, buy and colour from words to answers; none of them may ask the planner. */
class GrainCommandsTest {
    @TempDir
    private Path folder;

    private static String lot(String name) {
        return Path.of("demo-data", "lots", name + ".json").toString();
    }

    private static Run run(String... words) {
        return Run.of(Run.NEVER, words);
    }

    @Test
    void judgingEndsWithWhetherTheLotMayBeMalted() {
        Run good = run("judge", "--lot", lot("two-row-barley"));
        assertEquals(0, good.code());
        assertTrue(good.out().startsWith("two-row barley: malt it."), good.out());
        Run poor = run("judge", "--lot", lot("low-germination-barley"), "--json");
        assertEquals(1, poor.code());
        assertTrue(poor.out().contains("\"verdict\" : \"do-not-malt\""), poor.out());
        assertEquals(2, run("judge").code());
    }

    @Test
    void dyedSeedOfUnknownTreatmentIsNeitherMaltedNorPlanned() throws IOException {
        Path dyed = folder.resolve("dyed.json");
        String text = Files.readString(Path.of(lot("sack-without-label")));
        Files.writeString(dyed, text.replace("\"treated\"", "\"signs\": [\"dyed\"],\n  \"treated\""));
        assertEquals(1, run("judge", "--lot", dyed.toString()).code());
        assertEquals(
                2, run("buy", "--malt", "pale=5 kg", "--lot", dyed.toString()).code());
        Run plan = Run.of(
                Run.REAL,
                "plan",
                "--style",
                "pale",
                "--lot",
                dyed.toString(),
                "--house",
                "demo-data/houses/cool-garage.json",
                "--malt",
                "4 kg",
                "--ready-by",
                "2027-05-01");
        assertEquals(1, plan.code());
    }

    @Test
    void severalWishesMakeOneListToShopWith() {
        Run run = run(
                "buy",
                "--malt",
                "pale=5 kg",
                "--malt",
                "pale-ale=3 kg",
                "--malt",
                "wheat-pale=2 kg",
                "--sack",
                "barley=5 kg@9",
                "--sack",
                "barley=25 kg@30",
                "--owned",
                "barley=1 kg");
        assertEquals(0, run.code(), run.err());
        assertTrue(run.out().contains("buy 2 × 5.000 kg. Costs 18,"), run.out());
        assertEquals(
                1,
                run.out().lines().filter(line -> line.startsWith("  barley:")).count());
        assertEquals(
                1, run.out().lines().filter(line -> line.startsWith("  wheat:")).count());
    }

    @Test
    void grainSaysWhatMaltItGives() {
        Run run = run("buy", "--grain", "pale=10 lb", "--json");
        assertEquals(0, run.code(), run.err());
        assertTrue(run.out().contains("\"rawGrainKg\" : 4.536"), run.out());
    }

    @Test
    void coloursAreReachedOrSaidToBeOutOfReach() {
        Run reached = run("colour", "--target", "5 EBC", "--house", "demo-data/houses/cool-garage.json");
        assertEquals(0, reached.code(), reached.err());
        assertTrue(reached.out().contains("#FCF3D7") && reached.out().contains("Pale ale malt: cure "), reached.out());
        Run couched = run("colour", "--target", "25 EBC");
        assertTrue(couched.out().contains("Dark malt by full hot couch: cure "), couched.out());
        Run dark = run("colour", "--target", "700 EBC", "--json");
        assertEquals(1, dark.code());
        assertTrue(dark.out().contains("\"needs\" : \"a-darker-style\""), dark.out());
    }

    @Test
    void beerAsksForAMaltColourAndNamesTheFormula() {
        Run run = run("colour", "--beer", "9 EBC", "--volume", "20 L", "--grist", "4.5 kg", "--share", "60 %");
        assertTrue(run.out().startsWith("By Morey's power law"), run.out() + run.err());
        assertEquals(2, run("colour", "--beer", "9 EBC").code());
        assertEquals(2, run("colour").code());
    }

    @Test
    void whatCannotBeReadIsRefusedInOneLine() {
        String[][] wrong = {
            {"buy"},
            {"buy", "--malt", "5 kg"},
            {"buy", "--malt", "pale=0 kg"},
            {"buy", "--malt", "nothing=5 kg"},
            {"buy", "--malt", "pale=5 kg", "--sack", "barley=25 kg@dear"},
            {"buy", "--malt", "pale=5 kg", "--sack", "barley=25 kg@30", "--sack", "barley=5 kg"},
            {"buy", "--malt", "pale=5 kg", "--owned", "sand=5 kg"},
            {"colour", "--target", "blue"},
            {"colour", "--target", "5 EBC", "--beer", "9 EBC", "--volume", "20 L", "--grist", "4 kg", "--share", "60 %"}
        };
        for (String[] words : wrong) {
            Run run = run(words);
            assertEquals(2, run.code(), String.join(" ", words));
            assertEquals(1, run.err().lines().count(), run.err());
        }
    }
}
