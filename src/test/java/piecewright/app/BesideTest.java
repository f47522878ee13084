package piecewright.app;

import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import piecewright.app.files.FolderFiles;

/** What lies beside a batch or a calendar is never taken for a batch, and goes where the batch goes. */
class BesideTest {
    private static final Path BATCH = Path.of("spring.json");

    @Test
    void whatLiesBesideABatchIsNoBatch() {
        assertTrue(FolderFiles.isThing(BATCH));
        Stream.of(
                        Beside.ledger(BATCH),
                        Beside.published(BATCH),
                        Beside.places(BATCH),
                        Beside.liveMark(BATCH),
                        Beside.liveList(Path.of("all.ics")),
                        Beside.ledger(Path.of("all.ics")))
                .forEach(file -> assertFalse(FolderFiles.isThing(file), file.toString()));
    }

    @Test
    void allOfItIsKnownToGoWithTheBatch() {
        Stream.of(Beside.ledger(BATCH), Beside.published(BATCH), Beside.places(BATCH), Beside.liveMark(BATCH))
                .map(file -> String.valueOf(file.getFileName()).substring("spring.json".length()))
                .forEach(ending -> assertTrue(Beside.OF_A_BATCH.contains(ending), ending));
    }
}
