package piecewright.desktop.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import javafx.collections.ListChangeListener;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import piecewright.app.Drafting.Answer;
import piecewright.app.PlanWish;
import piecewright.app.ReadWish;
import piecewright.desktop.plan.Problem.Word;
import piecewright.desktop.shell.UndoHistory;
import piecewright.plan.ModelParameters;
import piecewright.plan.Obstacle;
import piecewright.plan.Plan;
import piecewright.plan.PlanRequest;
import piecewright.plan.PlanRequest.Amount;
import piecewright.plan.PlanRequest.When;
import piecewright.plan.PlanResult;
import piecewright.plan.Planner;
import piecewright.plan.Watch;
import piecewright.remedy.Change;
import piecewright.remedy.Remedy;
import piecewright.store.HouseFile;
import piecewright.store.LotFile;
import piecewright.store.StyleLibrary;
import piecewright.text.DisplayUnits;

/** The sentence without a toolkit: its answers come when the test lets them. */
class WishViewModelTest {
    private static final LocalDate TODAY = LocalDate.of(2027, 3, 1);
    private static final Path LOT = Path.of("demo-data/lots/two-row-barley.json");
    private static final Path HOUSE = Path.of("demo-data/houses/cool-garage.json");

    private final Deque<Runnable> background = new ArrayDeque<>();
    private final Deque<Runnable> aside = new ArrayDeque<>();
    private WishViewModel model;

    /** Refuses every wish for a day of its own, so that answers can be told apart. */
    private final class Refusing implements WishViewModel.Answers {
        @Override
        public Answer answer(Wish wished, Watch watch) {
            PlanWish wish = wished.planWish(TODAY);
            try {
                LocalDate day = ((When.ReadyBy) wish.when()).day();
                boolean heavy = ((Amount.FinishedMalt) wish.amount()).maltKg() > 50;
                Instant readyBy = Instant.parse(day + "T00:00:00Z");
                Obstacle obstacle = heavy
                        ? new Obstacle.VesselTooSmall(200, 30)
                        : new Obstacle.TooSoon(readyBy, Duration.ofHours(5));
                return new Answer.Read(ReadWish.of(wish), new PlanResult.NotPossible(List.of(obstacle)));
            } catch (piecewright.store.StoreException unreadable) {
                return new Answer.Unreadable(String.valueOf(unreadable.getMessage()));
            }
        }

        @Override
        public List<Remedy> remedies(PlanRequest request, List<Obstacle> obstacles, Watch watch) {
            return offered;
        }
    }

    private List<Remedy> offered = List.of();

    /** A change of which only its existence counts here. */
    private static Remedy remedy() throws Exception {
        PlanRequest request = new PlanRequest(
                StyleLibrary.builtIn().style("pale"),
                LotFile.read(LOT),
                HouseFile.read(HOUSE),
                new Amount.FinishedMalt(4),
                new When.ReadyBy(TODAY.plusDays(60), TODAY));
        Plan plan = new Planner(ModelParameters.defaults()).plan(request).match(PlanResult.Planned::plan, not -> {
            throw new AssertionError(not.obstacles().toString());
        });
        return new Remedy(new Change.SmallerPiece(4), request, plan);
    }

    /** As when a file of the workspace changed that had no part in the answer: nothing goes from under a finger. */
    @Test
    void theSameRefusalAskedAgainLeavesWhatHelpsWhereItIs() throws Exception {
        offered = List.of(remedy());
        model.typeAmount("60 kg");
        background.removeLast().run();
        aside.removeLast().run();
        assertEquals(offered, List.copyOf(model.remedies()));
        List<Integer> changes = new ArrayList<>();
        model.remedies().addListener((ListChangeListener<Remedy>) change -> changes.add(1));
        model.problems().addListener((ListChangeListener<Problem>) change -> changes.add(1));
        model.ask();
        background.removeLast().run();
        assertEquals(List.of(), changes);
        assertFalse(model.workingProperty().get());
        model.typeAmount("70 kg");
        background.removeLast().run();
        assertEquals(List.of(), List.copyOf(model.remedies()));
    }

    private final UndoHistory history = new UndoHistory();

    @BeforeEach
    void begin() throws Exception {
        Wish first = new Wish(
                Wish.Malt.of(StyleLibrary.builtIn().style("pale"), 4),
                TODAY.plusDays(40),
                LOT,
                HOUSE,
                Wish.Company.BESIDE_OTHERS);
        model = new WishViewModel(
                first,
                new Refusing(),
                new WishViewModel.Threads(background::add, aside::add, Runnable::run),
                new WishViewModel.Person(TODAY, DisplayUnits.metric()),
                history);
    }

    private String problem() {
        return model.problems().get(0).sentence();
    }

    @Test
    void onlyTheLatestAnswerIsShown() {
        model.chooseReadyBy(LocalDate.of(2027, 3, 20));
        model.chooseReadyBy(LocalDate.of(2027, 3, 21));
        background.removeLast().run();
        background.removeLast().run();
        background.removeLast().run();
        assertTrue(problem().contains("21 Mar"), problem());
        assertFalse(model.workingProperty().get());
    }

    @Test
    void aStoppedAnswerIsNeverShown() {
        model.stop();
        background.removeLast().run();
        assertEquals(List.of(), model.problems());
        assertFalse(model.workingProperty().get());
    }

    @Test
    void aProblemStandsUnderTheWordThatCausesIt() {
        background.removeLast().run();
        assertEquals(Word.READY_BY, model.problems().get(0).word());
        model.typeAmount("60 kg");
        background.removeLast().run();
        assertEquals(Word.AMOUNT, model.problems().get(0).word());
    }

    @Test
    void bothFamiliesOfUnitsAreReadAndNonsenseIsToldWithItsMend() {
        model.typeAmount("8 lb");
        assertEquals(3.629, model.wishProperty().get().maltKg(), 0.001);
        model.typeAmount("much");
        assertEquals(3.629, model.wishProperty().get().maltKg(), 0.001);
        assertTrue(typed(Word.AMOUNT).contains("write it like"), typed(Word.AMOUNT));
        model.typeAmount("4000 kg");
        assertTrue(typed(Word.AMOUNT).contains("at most"));
    }

    private String typed(Word word) {
        return model.typedProperty().get().getOrDefault(word, "");
    }

    /** EBC = SRM × 25 ÷ 12.7, as the colour page of the references has it. */
    @Test
    void aColourIsReadOnAnyScaleAndNothingMeansTheUsualOne() {
        model.typeColour("9 SRM");
        assertEquals(17.7, model.wishProperty().get().malt().colourEbc().orElseThrow(), 0.1);
        model.typeColour("brownish");
        assertFalse(typed(Word.COLOUR).isEmpty());
        model.typeAmount("5 kg");
        assertFalse(typed(Word.COLOUR).isEmpty(), "what is wrong with one word stays when another is right");
        model.typeColour(" ");
        assertTrue(model.wishProperty().get().malt().colourEbc().isEmpty());
        assertEquals("", typed(Word.COLOUR));
    }

    @Test
    void anotherStyleComesInTheColourUsualForIt() throws Exception {
        model.typeColour("3.2 EBC");
        model.change(model.wishProperty().get().withStyle(StyleLibrary.builtIn().style("vienna")));
        assertTrue(model.wishProperty().get().malt().colourEbc().isEmpty());
        history.undo();
        assertEquals(3.2, model.wishProperty().get().malt().colourEbc().orElseThrow());
    }

    @Test
    void everyChangeIsTakenBackAndMadeAgain() {
        model.typeAmount("5 kg");
        model.chooseReadyBy(LocalDate.of(2027, 5, 1));
        history.undo();
        history.undo();
        assertEquals(4, model.wishProperty().get().maltKg());
        assertEquals("", history.undoProperty().get());
        history.redo();
        assertEquals(5, model.wishProperty().get().maltKg());
        assertEquals(TODAY.plusDays(40), model.wishProperty().get().readyBy());
        assertFalse(history.redoProperty().get().isEmpty());
    }

    @Test
    void aDayThatIsOverIsNotTaken() {
        model.chooseReadyBy(TODAY.minusDays(1));
        assertEquals(TODAY.plusDays(40), model.wishProperty().get().readyBy());
        assertTrue(typed(Word.READY_BY).contains("over"), typed(Word.READY_BY));
    }

    @Test
    void aFileThatIsGoneIsToldAndTheSentenceStays() {
        model.change(model.wishProperty().get().withLot(Path.of("gone.json")));
        background.removeLast().run();
        assertTrue(problem().contains("gone.json"), problem());
        assertEquals(Path.of("gone.json"), model.wishProperty().get().lot());
    }
}
