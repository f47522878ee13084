package piecewright.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import piecewright.journal.Report;
import piecewright.plan.PlanResult;
import piecewright.store.JournalFile;
import piecewright.store.JournalFile.Draft;
import piecewright.text.PlanSamples;

/** A fresh plan never takes the place of a batch that somebody is making. */
class IntoUnderWayTest {
    private static final Instant LATER = Instant.parse("2027-06-15T10:00:00Z");

    @TempDir
    Path folder;

    private Run plan(Instant now) {
        List<String> all = new ArrayList<>(
                Run.plan("pale", "two-row-barley", "cool-garage", "--malt", "4 kg", "--ready-by", "2027-05-01"));
        all.addAll(List.of(
                "--into",
                file().toString(),
                "--calendar",
                folder.resolve("plan.ics").toString()));
        return Run.of(request -> new PlanResult.Planned(PlanSamples.plan()), now, all);
    }

    private Path file() {
        return folder.resolve("spring.json");
    }

    private Map<String, String> files() throws Exception {
        Map<String, String> all = new TreeMap<>();
        try (Stream<Path> there = Files.list(folder)) {
            for (Path each : there.toList()) all.put(each.getFileName().toString(), Files.readString(each));
        }
        return all;
    }

    @Test
    void overABatchWithAJournalItIsRefusedWithTheTwoWaysOn() throws Exception {
        assertEquals(0, plan(Run.NOW).code());
        JournalFile.append(
                JournalFile.beside(file()),
                Run.BATCH,
                before -> List.of(new Draft(Run.NOW, Run.NOW, Optional.empty(), new Report.Noted("bought the grain"))));
        Map<String, String> before = files();
        Run again = plan(Run.NOW);
        assertEquals(2, again.code(), again.out());
        assertTrue(again.err().contains("under way"), again.err());
        assertTrue(again.err().contains("another name"), again.err());
        assertTrue(again.err().contains("replan"), again.err());
        assertEquals(before, files());
    }

    @Test
    void overABatchThatShouldHaveBegunToo() throws Exception {
        assertEquals(0, plan(Run.NOW).code());
        Map<String, String> before = files();
        Run again = plan(LATER);
        assertEquals(2, again.code(), again.out());
        assertEquals(before, files());
    }

    @Test
    void beforeItBeginsAPlanMayBeMadeAnewAndSaysThatItReplacesOne() {
        assertTrue(plan(Run.NOW).out().contains("Batch kept in " + file() + "\n"));
        Run again = plan(Run.NOW);
        assertEquals(0, again.code(), again.err());
        assertTrue(again.out().contains("in place of the plan it had"), again.out());
    }
}
