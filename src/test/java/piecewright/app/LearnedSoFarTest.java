package piecewright.app;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.time.Instant;
import java.time.LocalDate;
import java.util.Locale;
import java.util.Optional;
import java.util.UUID;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import piecewright.app.BatchAtHand.Recording;
import piecewright.plan.Continuation;
import piecewright.plan.ModelParameters;
import piecewright.plan.Plan;
import piecewright.plan.PlanRequest;
import piecewright.plan.PlanResult;
import piecewright.plan.Planner;
import piecewright.replan.Batch;
import piecewright.replan.Position;
import piecewright.store.BatchFile;
import piecewright.store.JournalFile;
import piecewright.store.PlanTimes;
import piecewright.store.SavedBatch;
import piecewright.store.StyleLibrary;
import piecewright.text.ColourUnit;
import piecewright.text.DisplayUnits;
import piecewright.text.UnitSystem;

/** A lot that drinks faster than most is taken so for the rest of its own batch. */
class LearnedSoFarTest {
    private static final UUID ID = UUID.fromString("5b0e86a1-6f1c-4b5e-9d5a-0a6c1d1c9b33");
    private static final DisplayUnits UNITS = new DisplayUnits(UnitSystem.METRIC, ColourUnit.EBC, Locale.ENGLISH);
    private static final Continuation GOING_ON = new Continuation(ModelParameters.defaults());

    @TempDir
    private Path folder;

    private Path file = Path.of("");
    private StyleLibrary library = StyleLibrary.builtIn();
    private Plan plan = planned();

    LearnedSoFarTest() throws Exception {}

    private Plan planned() throws Exception {
        return ((PlanResult.Planned) new Planner(ModelParameters.defaults()).plan(wish().request())).plan();
    }

    private ReadWish wish() throws Exception {
        return ReadWish.of(new PlanWish(
                library.style("pale"),
                Path.of("demo-data/lots/two-row-barley.json"),
                Path.of("demo-data/houses/cool-garage.json"),
                new PlanRequest.Amount.RawGrain(5),
                new PlanRequest.When.ReadyBy(LocalDate.of(2027, 5, 1), LocalDate.of(2027, 3, 1))));
    }

    @BeforeEach
    void kept() throws Exception {
        file = folder.resolve("batch.json");
        Keeping.open(
                        new Keeping.Targets(Optional.of(file), Optional.empty()),
                        wish(),
                        () -> ID,
                        piecewright.store.StyleLibrary.builtIn())
                .keep(wish(), plan, CalendarManner.usual(UNITS), plan.startsAt());
    }

    private Instant at(String act) {
        return plan.acts().stream()
                .filter(one -> one.id().equals(act))
                .findFirst()
                .orElseThrow()
                .startsAt();
    }

    private double expectedAtSecondDrain(Plan told) {
        return told.acts().stream()
                .filter(one -> one.id().equals("steep-2.drain"))
                .findFirst()
                .orElseThrow()
                .expect()
                .moisture()
                .wetBasisFraction();
    }

    private void recorded(String line, Instant now) throws Exception {
        Recording recording = BatchAtHand.open(file, library, GOING_ON).recordLine(line, UNITS, now);
        assertTrue(recording instanceof Recording.Kept, line);
    }

    private Plan learned(Instant now) throws Exception {
        return BatchAtHand.open(file, library, GOING_ON)
                .where(now)
                .orElseThrow()
                .plan();
    }

    /** The same where nothing is learned: the weight counts, the lot stays as its file has it. */
    private Plan unlearned(Instant now) throws Exception {
        SavedBatch saved = BatchFile.read(file);
        PlanTimes times = PlanTimes.of(file, saved);
        Batch batch = new Batch(
                ReadWish.of(file, saved, library).request(),
                times.grainKg(),
                times.visits(),
                times.places(),
                0,
                JournalFile.read(JournalFile.beside(file), saved.id()).journal());
        return new Position(GOING_ON)
                .of(batch, batch.journal().vessels(), now)
                .orElseThrow()
                .plan();
    }

    @Test
    void aHeavyFirstDrainRaisesTheNextForecastByMoreThanTheWaterItHas() throws Exception {
        Instant soaked = at("steep-1.soak").plusSeconds(60);
        recorded("soaked", soaked);
        assertEquals(expectedAtSecondDrain(unlearned(soaked)), expectedAtSecondDrain(learned(soaked)), 1e-9);
        Instant drained = at("steep-1.drain").plusSeconds(60);
        double expectedKg = plan.acts().stream()
                .filter(one -> one.id().equals("steep-1.drain"))
                .findFirst()
                .orElseThrow()
                .expect()
                .massKg();
        recorded(String.format(Locale.ROOT, "drained %.3f kg", expectedKg * 1.04), drained);
        double by = expectedAtSecondDrain(learned(drained)) - expectedAtSecondDrain(unlearned(drained));
        assertTrue(by > 0.002, "only " + by);
    }
}
