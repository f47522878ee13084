package piecewright.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.ObjectMapper;
import tools.jackson.databind.node.ObjectNode;

/**
 * However often entries were put right, every command answers, and says what it says of the journal that was right at
 * first. More of them: {@code mvn -q test -Dtest=ManyCorrectionsTest -Dpiecewright.corrections=16000}.
 */
class ManyCorrectionsTest {
    private static final int CORRECTIONS = Integer.getInteger("piecewright.corrections", 2_000);

    @TempDir
    private Path folder;

    private final ObjectMapper mapper = new ObjectMapper();
    private Batchwork batch;
    private OffsetDateTime now;
    private Path journal;

    /** Which entry each correction names. */
    enum Pattern {
        ONE_ENTRY,
        THE_CORRECTION_BEFORE,
        ANY_ENTRY_OR_CORRECTION,
        STRUCK_AND_BACK
    }

    @BeforeEach
    void soakedDrainedAndWeighed() {
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
        batch.didAllBefore("steep-2.soak");
        now = batch.act("steep-2.soak").at();
        journal = folder.resolve("workspace/batches/spring.json.journal.jsonl");
    }

    private List<JsonNode> entries() throws IOException {
        List<String> lines = Files.readAllLines(journal);
        return new ArrayList<>(
                lines.subList(1, lines.size()).stream().map(mapper::readTree).toList());
    }

    /** Corrections that all come to what the entries say, the last of them too. */
    private void corrected(Pattern pattern) throws IOException {
        List<JsonNode> told = entries();
        Random random = new Random(29);
        List<ObjectNode> more = new ArrayList<>();
        List<Integer> roots = new ArrayList<>();
        int first = told.get(told.size() - 1).get("number").intValue() + 1;
        for (int i = 0; i < CORRECTIONS; i++) {
            int root = switch (pattern) {
                case ONE_ENTRY, THE_CORRECTION_BEFORE, STRUCK_AND_BACK -> told.size() - 1;
                case ANY_ENTRY_OR_CORRECTION -> random.nextInt(told.size());
            };
            int names = told.get(root).get("number").intValue();
            if (pattern == Pattern.THE_CORRECTION_BEFORE && i > 0) names = first + i - 1;
            if (pattern == Pattern.ANY_ENTRY_OR_CORRECTION && i > 0 && random.nextBoolean()) {
                int earlier = random.nextInt(i);
                root = roots.get(earlier);
                names = first + earlier;
            }
            roots.add(root);
            boolean struck = pattern == Pattern.STRUCK_AND_BACK && i % 2 == 0 && i < CORRECTIONS - 1;
            more.add(correction(first + i, names, told.get(root), struck));
        }
        StringBuilder lines = new StringBuilder();
        more.forEach(entry -> lines.append(entry).append('\n'));
        Files.writeString(journal, Files.readString(journal) + lines, StandardCharsets.UTF_8);
    }

    private ObjectNode correction(int number, int names, JsonNode told, boolean struck) {
        ObjectNode entry = mapper.createObjectNode().put("number", number);
        entry.put("at", told.get("at").stringValue());
        entry.put("writtenAt", told.get("writtenAt").stringValue());
        ObjectNode report = entry.putObject("report").put("kind", "corrected").put("entry", names);
        if (!struck) report.set("instead", told.get("report"));
        return entry;
    }

    private String said(String command, String... words) {
        return batch.said(command, now, words);
    }

    @ParameterizedTest
    @EnumSource(Pattern.class)
    void everyCommandAnswersAsIfItHadBeenRightAtFirst(Pattern pattern) throws IOException {
        String where = said("where");
        String replan = said("replan");
        String learn = said("learn", "--only-show");
        int before = entries().size();
        corrected(pattern);
        assertEquals(before + CORRECTIONS, entries().size());
        assertEquals(where, said("where"));
        assertEquals(replan, said("replan"));
        assertEquals(learn, said("learn", "--only-show"));
        Path sheet = folder.resolve("sheet.html");
        said("papers", "--sheet", sheet.toString());
        assertTrue(Files.size(sheet) > 1000);
        assertTrue(said("record").lines().count() >= before + CORRECTIONS);
        said("record", "soaked");
        said("record", "undo");
        assertEquals(where, said("where"), "undone");
    }
}
