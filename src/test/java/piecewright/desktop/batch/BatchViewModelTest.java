package piecewright.desktop.batch;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.util.EnumMap;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import piecewright.app.BatchAtHand;
import piecewright.app.CalendarManner;
import piecewright.app.CalendarUpdate;
import piecewright.app.Keeping;
import piecewright.app.PlanWish;
import piecewright.app.ReadWish;
import piecewright.desktop.plan.WishViewModel.Threads;
import piecewright.desktop.shell.UndoHistory;
import piecewright.ensemble.Figure;
import piecewright.ensemble.Milestone;
import piecewright.ensemble.Sureness;
import piecewright.ensemble.Verdict;
import piecewright.journal.Entry;
import piecewright.journal.Report;
import piecewright.learn.Lessons;
import piecewright.plan.Act;
import piecewright.plan.ActKind;
import piecewright.plan.Booking;
import piecewright.plan.Continuation;
import piecewright.plan.DemoPlan;
import piecewright.plan.ModelParameters;
import piecewright.plan.Plan;
import piecewright.plan.PlanRequest;
import piecewright.replan.ReplanResult.Replanned;
import piecewright.store.JournalFile;
import piecewright.store.StoreException;
import piecewright.store.StyleLibrary;
import piecewright.text.DisplayUnits;

/** A piece under way without a toolkit. */
class BatchViewModelTest {
    private static final Sureness UNTOLD = new Sureness(
            1,
            List.of(),
            new EnumMap<>(Milestone.class),
            new EnumMap<>(Figure.class),
            new Verdict(1, 1, Optional.empty()),
            Optional.empty());

    private static final DisplayUnits UNITS = DisplayUnits.metric();
    private static final Instant SOAKED = DemoPlan.plan().startsAt();
    private static final Instant NOW = SOAKED.plus(Duration.ofHours(1));

    @TempDir
    private Path folder;

    private Path file;
    private BatchViewModel model;

    private static BatchAtHand open(Path batch) throws StoreException {
        return BatchAtHand.open(batch, StyleLibrary.builtIn(), new Continuation(ModelParameters.defaults()));
    }

    /** Knows of no other pieces and no chances. */
    private static final class Nothing implements BatchViewModel.Foresight {
        @Override
        public Sureness of(PlanRequest request, Plan plan) {
            return UNTOLD;
        }

        @Override
        public List<Booking> besides(BatchAtHand batch) {
            return List.of();
        }

        @Override
        public CalendarUpdate oneCalendar(Path batch, Instant now) {
            throw new AssertionError("nobody asked for a calendar");
        }
    }

    private final UndoHistory history = new UndoHistory();

    private Instant now = NOW;

    private Path copied(String demo) throws IOException {
        Path from = Path.of("demo-data", demo);
        return Files.copy(from, folder.resolve(from.getFileName()));
    }

    @BeforeEach
    void kept() throws Exception {
        file = folder.resolve("spring.json");
        copied("houses/cool-garage-2027-03.csv");
        PlanWish typed = new PlanWish(
                DemoPlan.request().style(),
                copied("lots/two-row-barley.json"),
                copied("houses/cool-garage.json"),
                DemoPlan.request().amount(),
                DemoPlan.request().when());
        ReadWish wish = ReadWish.of(typed);
        Keeping.open(
                        new Keeping.Targets(Optional.of(file), Optional.empty()),
                        wish,
                        UUID::randomUUID,
                        piecewright.store.StyleLibrary.builtIn())
                .keep(wish, DemoPlan.plan(), CalendarManner.usual(UNITS), SOAKED.minus(Duration.ofDays(9)));
        model = new BatchViewModel(
                BatchViewModelTest::open,
                new Nothing(),
                new Threads(Runnable::run, Runnable::run, Runnable::run),
                new BatchViewModel.Own(() -> now, UNITS, history));
        model.open(file);
    }

    @Test
    void aLineIsReadBackAndShown() {
        model.record("soaked");
        assertEquals(Reply.Outcome.KEPT, model.replyProperty().get().outcome());
        assertEquals(
                1,
                model.shownProperty()
                        .get()
                        .orElseThrow()
                        .batch()
                        .journal()
                        .entries()
                        .size());
    }

    @Test
    void whatWasStruckOutComesBackAsItWasWritten() {
        model.record("soaked 25 min ago");
        var written = effective();
        history.undo();
        assertEquals(List.of(), effective());
        history.redo();
        assertEquals(written.get(0).at(), effective().get(0).at());
        assertEquals(written.get(0).report(), effective().get(0).report());
        history.redo();
        assertEquals(1, effective().size(), "there is nothing more to bring back");
        model.record("drained 5.1 kg");
        model.record("correct " + effective().get(2).number() + " 5.2 kg");
        var corrected = effective().get(2).report();
        history.undo();
        history.redo();
        assertEquals(corrected, effective().get(2).report(), "as it counted, not as it was first written");
    }

    private List<Entry> effective() {
        return model.shownProperty().get().orElseThrow().batch().journal().effective();
    }

    @Test
    void aNewPlanIsKeptWhenItIsAccepted() throws Exception {
        model.record("soaked");
        model.planRest();
        String before = Files.readString(file);
        model.accept();
        assertTrue(model.proposalProperty().get().isEmpty());
        assertTrue(!Files.readString(file).equals(before), "the batch knows its journal now");
    }

    @Test
    void aPlanMadeBeforeSomebodyElseChangedTheBatchIsNotWrittenOverTheirs() throws Exception {
        model.record("soaked");
        model.planRest();
        BatchAtHand terminal = open(file);
        terminal.recordLine("note: from the terminal", UNITS, NOW);
        BatchAtHand again = open(file);
        again.accept((Replanned) again.replan(NOW), Optional.empty(), CalendarManner.usual(UNITS), NOW);
        String theirs = Files.readString(file);
        model.accept();
        assertEquals(theirs, Files.readString(file));
        Reply reply = model.replyProperty().get();
        assertEquals(Reply.Outcome.FAILED, reply.outcome());
        assertTrue(reply.doubts().get(0).contains("changed by another window or terminal"), reply.doubts()::toString);
        assertTrue(model.proposalProperty().get().isPresent(), "what was offered is not lost");
    }

    @Test
    void undoTakesBackThePlanThatWasAcceptedAndThenWhatWasWrittenDown() throws Exception {
        model.record("soaked");
        String told = Files.readString(file);
        model.planRest();
        model.accept();
        String accepted = Files.readString(file);
        history.undo();
        assertEquals(told, Files.readString(file), "the plan before is back");
        assertEquals(1, effective().size(), "what was written down stays");
        history.redo();
        assertEquals(accepted, Files.readString(file));
        history.undo();
        history.undo();
        assertEquals(List.of(), effective());
        assertEquals("", history.undoProperty().get());
    }

    @Test
    void aPlanThatSomebodyElseChangedSinceIsNotTakenBack() throws Exception {
        model.record("soaked");
        model.planRest();
        model.accept();
        BatchAtHand terminal = open(file);
        terminal.recordLine("note: from the terminal", UNITS, NOW);
        BatchAtHand again = open(file);
        again.accept((Replanned) again.replan(NOW), Optional.empty(), CalendarManner.usual(UNITS), NOW);
        String theirs = Files.readString(file);
        history.undo();
        assertEquals(theirs, Files.readString(file));
        assertEquals(Reply.Outcome.FAILED, model.replyProperty().get().outcome());
        assertEquals("", history.redoProperty().get(), "it cannot be done again either");
    }

    @Test
    void aClosedBatchIsOpenedAgainAndClosedAgain() throws Exception {
        List<Act> acts = DemoPlan.plan().acts();
        JournalFile.append(
                JournalFile.beside(file),
                open(file).told().id(),
                journal -> acts.stream()
                        .filter(act -> act.kind() != ActKind.DEROOT)
                        .map(act -> new JournalFile.Draft(
                                act.startsAt(), act.startsAt(), Optional.empty(), Report.Did.of(act.kind())))
                        .toList());
        now = acts.get(acts.size() - 1).endsAt().plus(Duration.ofHours(1));
        FinishViewModel finish =
                new FinishViewModel(model, new Threads(Runnable::run, Runnable::run, Runnable::run), () -> now, UNITS);
        model.read();
        String under = Files.readString(file);
        List<Entry> before = effective();
        Lessons.Known knew = open(file).lessons().known();
        finish.finish(new FinishViewModel.Typed("3.9 kg", "", "turn oftener"));
        assertTrue(open(file).finishedAt().isPresent(), finish.wrongProperty().get()::toString);
        for (int times = 0; times < 2; times++) {
            history.undo();
            assertEquals(under, Files.readString(file));
            assertEquals(before, effective());
            assertEquals(knew, open(file).lessons().known());
            assertEquals(List.of(), finish.toldProperty().get());
            history.redo();
            assertTrue(open(file).finishedAt().isPresent());
            assertTrue(effective().stream().anyMatch(entry -> entry.report().equals(new Report.Noted("turn oftener"))));
        }
    }

    /** Wet malt is asked about before it is closed; a closed batch that was put right is closed again. */
    @Test
    void wetMaltIsAskedAboutAndACorrectedBatchIsClosedAgain() throws Exception {
        List<Act> acts = DemoPlan.plan().acts();
        Act load = acts.stream()
                .filter(act -> act.kind() == ActKind.LOAD)
                .findFirst()
                .orElseThrow();
        JournalFile.append(
                JournalFile.beside(file),
                open(file).told().id(),
                journal -> acts.stream()
                        .filter(act -> !act.startsAt().isAfter(load.startsAt()))
                        .map(act -> new JournalFile.Draft(
                                act.startsAt(), act.startsAt(), Optional.empty(), Report.Did.of(act.kind())))
                        .toList());
        now = load.startsAt().plus(Duration.ofHours(2));
        FinishViewModel finish =
                new FinishViewModel(model, new Threads(Runnable::run, Runnable::run, Runnable::run), () -> now, UNITS);
        model.read();
        model.record("off the kiln");
        assertTrue(
                model.replyProperty().get().doubts().get(0).contains("Off the kiln at about"),
                model.replyProperty()::toString);
        List<Entry> before = effective();
        FinishViewModel.Typed wet = new FinishViewModel.Typed("5.0 kg", "", "");
        finish.finish(wet);
        assertEquals(Optional.of(wet), finish.askedProperty().get());
        assertTrue(
                finish.wrongProperty().get().get(FinishViewModel.Field.WHOLE).contains("Off the kiln at about"),
                finish.wrongProperty().get()::toString);
        assertEquals(before, effective(), "nothing was written");
        finish.finish(wet);
        assertTrue(open(file).finishedAt().isPresent(), "the same again closes it");
        assertFalse(finish.changedProperty().get());
        now = now.plus(Duration.ofDays(1));
        model.record("correct 0 3.9 kg"
                .replace(
                        "0",
                        String.valueOf(effective().get(effective().size() - 1).number())));
        assertTrue(finish.changedProperty().get());
        finish.finish(new FinishViewModel.Typed("", "", ""));
        assertFalse(finish.changedProperty().get());
        assertTrue(
                finish.toldProperty().get().get(0).startsWith("3.900 kg"),
                finish.toldProperty().get()::toString);
    }

    @Test
    void anEntryIsStruckWhereTheBatchCannotBeInterpreted() throws Exception {
        model.record("soaked");
        BatchAtHand dark = BatchAtHand.open(file, StyleLibrary.builtIn(), new Continuation(null));
        assertThrows(NullPointerException.class, () -> dark.where(NOW), "the test needs one that cannot");
        dark.recordLine("void 1", UNITS, NOW);
        assertEquals(List.of(), open(file).journal().effective());
    }

    @Test
    void whatIsWrittenDownIsListedTheLastFirstAndStruckThere() {
        EntriesViewModel entries =
                new EntriesViewModel(model, new Threads(Runnable::run, Runnable::run, Runnable::run), UNITS);
        model.record("soaked");
        model.record("drained");
        assertEquals(
                List.of(2, 1),
                entries.linesProperty().get().stream()
                        .map(EntriesViewModel.Line::number)
                        .toList());
        entries.strike(1);
        assertEquals(
                List.of(2),
                entries.linesProperty().get().stream()
                        .map(EntriesViewModel.Line::number)
                        .toList());
    }

    @Test
    void anEntryThatWasStruckComesBack() {
        model.record("soaked");
        model.record("drained");
        model.strike(1);
        assertEquals(1, effective().size());
        history.undo();
        assertEquals(2, effective().size());
        history.redo();
        assertEquals(List.of(2), effective().stream().map(Entry::number).toList());
    }
}
