package piecewright.app;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import piecewright.journal.Report;
import piecewright.plan.Continuation;
import piecewright.plan.ModelParameters;
import piecewright.plan.Planner;
import piecewright.replan.Where;
import piecewright.store.StyleLibrary;
import piecewright.text.DisplayUnits;

/** The piece a first run opens on. */
class DemoBatchTest {
    private static final Instant NOW = Instant.parse("2031-05-07T09:00:00Z");

    @TempDir
    Path folder;

    private Workspace workspace;

    private Optional<Path> laid() throws Exception {
        workspace = Workspace.open(folder.resolve("ours"));
        return new DemoBatch(workspace, new Planner(ModelParameters.defaults())::plan, UUID::randomUUID)
                .lay(DisplayUnits.metric(), NOW);
    }

    private static Where where(Path file) throws Exception {
        return BatchAtHand.open(file, StyleLibrary.builtIn(), new Continuation(ModelParameters.defaults()))
                .where(NOW)
                .orElseThrow();
    }

    @Test
    void itIsUnderWayAndNothingOfItIsOverdueOrDoubted() throws Exception {
        Where where = where(laid().orElseThrow());
        assertTrue(where.plan().startsAt().isBefore(NOW));
        assertTrue(where.next().act().orElseThrow().startsAt().isAfter(NOW));
        assertEquals(List.of(), where.next().overdue());
        assertEquals(List.of(), where.account().contradictions());
        assertEquals(List.of(), where.account().inferred());
    }

    @Test
    void weightsTemperaturesAndAcrospiresWereWrittenDown() throws Exception {
        Path file = laid().orElseThrow();
        var journal = BatchAtHand.open(file, StyleLibrary.builtIn(), new Continuation(ModelParameters.defaults()))
                .journal();
        assertTrue(journal.effective().stream().anyMatch(entry -> entry.report() instanceof Report.Weighed));
        assertTrue(journal.effective().stream().anyMatch(entry -> entry.report() instanceof Report.TemperatureRead));
        assertTrue(journal.effective().stream().allMatch(entry -> entry.at().isBefore(NOW)));
    }

    @Test
    void itIsLaidOutOnceAndGoesWithTheDemo() throws Exception {
        Path file = laid().orElseThrow();
        assertEquals(Optional.empty(), laid());
        assertEquals(List.of(file), workspace.batchFiles());
        workspace.removeDemo();
        assertFalse(workspace.hasDemo());
        assertFalse(Files.exists(file));
        assertEquals(List.of(), workspace.batchFiles());
        assertEquals(Optional.empty(), laid());
    }
}
