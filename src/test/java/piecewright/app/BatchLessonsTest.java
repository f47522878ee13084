package piecewright.app;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import piecewright.journal.Entry;
import piecewright.journal.Journal;
import piecewright.journal.Report;
import piecewright.learn.Lessons;
import piecewright.learn.Lessons.Outcome;
import piecewright.plan.ActKind;
import piecewright.plan.PlanRequest;
import piecewright.plan.PlanRequest.Amount;
import piecewright.plan.PlanRequest.When;
import piecewright.store.HouseFile;
import piecewright.store.LotFile;
import piecewright.store.StoreException;
import piecewright.store.StyleLibrary;

/** What a batch taught, kept beside the files of its lot and house, and read by the next wish. */
class BatchLessonsTest {
    private static final Instant START = Instant.parse("2027-03-05T17:00:00Z");
    private static final Instant NOW = Instant.parse("2027-03-20T17:00:00Z");

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

    private Lessons.Batch batch() throws StoreException {
        PlanRequest request = new PlanRequest(
                StyleLibrary.builtIn().style("pale"),
                LotFile.read(lot),
                HouseFile.read(house),
                new Amount.RawGrain(5),
                new When.StartOn(LocalDate.of(2027, 3, 5)));
        Journal journal = new Journal(List.of(
                entry(1, 0, Report.Did.of(ActKind.SOAK)),
                entry(2, 8, Report.Weighed.net(6.7)),
                entry(3, 8, Report.Did.of(ActKind.DRAIN)),
                entry(4, 20, Report.Did.of(ActKind.SOAK)),
                entry(5, 28, Report.Weighed.net(7.5)),
                entry(6, 28, Report.Did.of(ActKind.DRAIN))));
        return new Lessons.Batch(new UUID(5, 6), request, 5, journal);
    }

    private static Entry entry(int number, int hours, Report report) {
        Instant at = START.plusSeconds(3600L * hours);
        return new Entry(number, at, at, Optional.empty(), report);
    }

    @Test
    void theNextWishForTheLotStartsFromWhatWasKept() throws StoreException, NotWrittenException, IOException {
        String before = Files.readString(lot);
        PlanWish wish = new PlanWish(
                StyleLibrary.builtIn().style("pale"),
                lot,
                house,
                new Amount.RawGrain(5),
                new When.StartOn(LocalDate.of(2027, 4, 2)));
        assertTrue(ReadWish.of(wish).request().lot().learned().steepRateRatio().isEmpty());
        assertInstanceOf(Outcome.Taught.class, new BatchLessons(lot, house).keep(batch(), NOW));
        ReadWish read = ReadWish.of(wish);
        double rate = read.request().lot().learned().steepRateRatio().orElseThrow();
        assertTrue(rate > 1.3, "drank fast: " + rate);
        assertEquals(before, Files.readString(lot), "the person's own file stays as it is");
        assertEquals(
                Files.readString(folder.resolve("barley.learned.json")),
                read.texts().wish().get("lotLearned"));
    }

    @Test
    void lookingAtABatchSoFarKeepsNothing() throws StoreException {
        assertInstanceOf(Outcome.Taught.class, new BatchLessons(lot, house).soFar(batch(), NOW));
        assertTrue(Files.notExists(folder.resolve("barley.learned.json")));
    }

    @Test
    void whatCannotBeWrittenIsSaid() throws StoreException {
        Lessons.Batch batch = batch();
        BatchLessons elsewhere = new BatchLessons(folder.resolve("nowhere").resolve("barley.json"), house);
        assertThrows(NotWrittenException.class, () -> elsewhere.keep(batch, NOW));
    }
}
