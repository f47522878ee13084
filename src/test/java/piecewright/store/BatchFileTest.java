package piecewright.store;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The fixture was written by the program as it was when batches had format 1, but for its two paths. */
class BatchFileTest {
    private static final Path FORMAT_1 = Path.of("src/test/resources/store/batch-format-1.json");

    @TempDir
    Path folder;

    @Test
    void aBatchOfFormat1IsReadWhole() throws StoreException {
        SavedBatch read = BatchFile.read(FORMAT_1);
        assertEquals("pale", read.request().styleKey());
        assertTrue(read.request().lotText().contains("\"name\": \"two-row barley\""));
        assertTrue(read.request().houseText().contains("\"name\": \"the house with the cool garage\""));
        assertEquals(
                Map.of(
                        "finishedMaltKg", "4.0",
                        "readyBy", "2027-05-01",
                        "earliestStart", "2027-02-15",
                        "lotFile", "/home/brewer/lots/two-row-barley.json",
                        "houseFile", "/home/brewer/houses/cool-garage.json",
                        "houseLearned", "{\"format\":1,\"learned\":[]}\n"),
                read.request().wish());
        assertEquals(
                read.calendarUids().size(),
                PlanTimes.of(FORMAT_1, read).visits().size());
        assertEquals(Optional.empty(), read.finishedAt());
    }

    @Test
    void itIsWrittenInThePresentFormatAndSaysTheSame() throws StoreException, IOException {
        SavedBatch old = BatchFile.read(FORMAT_1);
        Path file = folder.resolve("batch.json");
        BatchFile.write(file, old);
        assertTrue(Files.readString(file).startsWith("{\n  \"format\" : 3,"));
        assertEquals(old, BatchFile.read(file));
    }

    @Test
    void aFinishedBatchStaysFinished() throws StoreException {
        Path file = folder.resolve("batch.json");
        SavedBatch finished = BatchFile.read(FORMAT_1).finished(Instant.parse("2031-05-01T10:00:00Z"));
        BatchFile.write(file, finished);
        assertEquals(finished, BatchFile.read(file));
    }

    @Test
    void aBatchOfALaterProgramIsRefusedAndNotTouched() throws StoreException, IOException {
        Path file = folder.resolve("batch.json");
        BatchFile.write(file, BatchFile.read(FORMAT_1));
        String later = Files.readString(file).replace("\"format\" : 3", "\"format\" : 4");
        Files.writeString(file, later);
        StoreException refused = assertThrows(StoreException.class, () -> BatchFile.read(file));
        assertTrue(String.valueOf(refused.getMessage()).contains("was written by a later Piecewright (format 4"));
        assertEquals(later, Files.readString(file));
    }

    @Test
    void aFormat1WithoutItsLotIsRefusedByTheMissingKey() throws IOException {
        Path file = folder.resolve("batch.json");
        Files.writeString(file, Files.readString(FORMAT_1).replace("\"lotText\"", "\"lotTxt\""));
        StoreException refused = assertThrows(StoreException.class, () -> BatchFile.read(file));
        assertTrue(String.valueOf(refused.getMessage()).contains("lotTxt"), refused.getMessage());
    }
}
