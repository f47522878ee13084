package piecewright.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tools.jackson.databind.JsonNode;

/** A finished batch is finished again: what it says now is what counts, and its lot and kit learn from it once. */
class FinishAgainTest {
    @TempDir
    private Path folder;

    private Batchwork batch;
    private OffsetDateTime off;
    private Map<Path, byte[]> before;

    @BeforeEach
    void upToTheEnd() throws IOException {
        batch = new Batchwork(folder.resolve("workspace"), "spring");
        batch.planned(
                "--style",
                "pale",
                "--lot",
                batch.file("s2-barley"),
                "--house",
                batch.file("s2-flat"),
                "--grain",
                "4 kg",
                "--bed",
                "3 cm",
                "--start",
                "2026-10-01",
                "--today",
                "2026-09-20");
        batch.didAllBefore("kiln.cure");
        batch.did(batch.act("kiln.cure"));
        off = batch.act("kiln.cure").at().plusHours(3);
        batch.said("record", off, "off the kiln");
        before = files();
    }

    private Map<Path, byte[]> files() throws IOException {
        Map<Path, byte[]> all = new TreeMap<>();
        try (var paths = Files.walk(folder)) {
            for (Path path : paths.filter(Files::isRegularFile).toList()) all.put(path, Files.readAllBytes(path));
        }
        return all;
    }

    /** Everything as it was before it was finished. */
    private void unfinished() throws IOException {
        for (Path path : files().keySet()) {
            if (before.containsKey(path)) Files.write(path, before.get(path));
            else Files.delete(path);
        }
    }

    private Run run(String... words) {
        List<String> all = new ArrayList<>(List.of(words));
        all.addAll(List.of("--workspace", folder.resolve("workspace").toString()));
        return Run.of(Run.REAL, Run.NOW, all);
    }

    /** What lot and house have learned, without the moments at which they did. */
    private List<String> learned() throws IOException {
        List<String> all = new ArrayList<>();
        for (Map.Entry<Path, byte[]> file : files().entrySet()) {
            if (!file.getKey().getFileName().toString().contains("learned")) continue;
            String text = new String(file.getValue(), java.nio.charset.StandardCharsets.UTF_8);
            all.add(file.getKey().getFileName() + " "
                    + text.replaceAll("\"learnedAt\"[^,}]*", "").replaceAll("\"checksum\"[^,}]*", ""));
        }
        assertTrue(!all.isEmpty(), files().keySet().toString());
        return all;
    }

    private List<String> finishedOnceWith(String weight) throws IOException {
        batch.said("finish", off.plusHours(1), "--weight", weight);
        List<String> all = learned();
        unfinished();
        return all;
    }

    @Test
    void anotherWeightTakesThePlaceOfTheFirst() throws IOException {
        List<String> right = finishedOnceWith("3.320 kg");
        batch.said("finish", off.plusHours(1), "--weight", "3.60 kg", "--colour", "3 EBC");
        JsonNode again = batch.json("finish", off.plusDays(1), "--weight", "3.320 kg", "--colour", "4 EBC")
                .get("finished");
        assertEquals(3.32, again.get("maltKg").doubleValue(), 1e-9);
        assertEquals(4, again.get("colourEbc").doubleValue(), 1e-9);
        String journal = batch.said("record", off.plusDays(1));
        assertTrue(
                journal.contains("should say: the grain weighs 3.320 kg"),
                "a correction, not a second weighing: " + journal);
        batch.said("finish", off.plusDays(2), "--weight", "3.320 kg");
        assertEquals(journal, batch.said("record", off.plusDays(2)), "the same again says nothing new");
        assertEquals(chapters(right), chapters(learned()), "each batch teaches once");
    }

    @Test
    void aCorrectedJournalIsLearnedFromInPlaceOfWhatItSaid() throws IOException {
        List<String> right = finishedOnceWith("3.320 kg");
        batch.said("finish", off.plusHours(1), "--weight", "3.60 kg");
        List<String> wrong = learned();
        assertNotEquals(right, wrong, "the test needs a weight that teaches otherwise");
        JsonNode entries = batch.json("record", off.plusHours(2)).get("entries");
        int weighed = entries.get(entries.size() - 1).get("number").intValue();
        batch.said("record", off.plusDays(1), "correct " + weighed + " 3.32 kg");
        String page = batch.said("finish", off.plusDays(1));
        assertTrue(page.contains("3.320 kg of malt"), page);
        assertEquals(right, learned(), "as if it had been said right at first");
        Run nothing = run("finish", "spring", "--now", off.plusDays(2).toString());
        assertEquals(1, nothing.code(), nothing.out());
        assertTrue(nothing.out().contains("was finished before"), nothing.out());
        assertEquals(right, learned());
    }

    private static int chapters(List<String> learned) {
        return String.join("", learned).split("\"batch\"", -1).length - 1;
    }
}
