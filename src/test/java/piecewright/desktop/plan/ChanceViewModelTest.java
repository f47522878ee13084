package piecewright.desktop.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import piecewright.app.Drafting;
import piecewright.app.HowSure;
import piecewright.desktop.shell.UndoHistory;
import piecewright.desktop.timeline.BandWriter;
import piecewright.desktop.timeline.PieceChart;
import piecewright.desktop.timeline.Trace;
import piecewright.ensemble.Sureness;
import piecewright.plan.Act;
import piecewright.plan.ModelParameters;
import piecewright.plan.Obstacle;
import piecewright.plan.PlanRequest;
import piecewright.plan.Planner;
import piecewright.plan.Watch;
import piecewright.remedy.Remedy;
import piecewright.store.StyleLibrary;
import piecewright.text.DisplayUnits;

/** Bands and chance of the plan shown, without a toolkit: answers come when the test lets them. */
class ChanceViewModelTest {
    private static final LocalDate TODAY = LocalDate.of(2027, 3, 1);
    private static final Path LOT = Path.of("demo-data/lots/two-row-barley.json");
    private static final Path HOUSE = Path.of("demo-data/houses/cool-garage.json");
    private static final int MEMBERS = 20;

    private final Deque<Runnable> background = new ArrayDeque<>();
    private final Deque<Runnable> aside = new ArrayDeque<>();
    private WishViewModel wish;
    private ChanceViewModel model;

    private static final class Planned implements WishViewModel.Answers {
        private final Drafting drafting;

        Planned(StyleLibrary library) {
            drafting = new Drafting(new Planner(ModelParameters.defaults()), library);
        }

        @Override
        public Drafting.Answer answer(Wish wish, Watch watch) {
            Drafting.Asked asked =
                    new Drafting.Asked(wish.planWish(TODAY), wish.malt().colourEbc(), List.of());
            return drafting.answer(asked, LocalDateTime.of(2027, 3, 1, 8, 0), watch);
        }

        @Override
        public List<Remedy> remedies(PlanRequest request, List<Obstacle> obstacles, Watch watch) {
            return List.of();
        }
    }

    private static final class Sures implements ChanceViewModel.Answers {
        private final HowSure how = new HowSure(ModelParameters.defaults());

        @Override
        public Sureness sure(Drafted drafted) {
            return how.chances(
                    drafted.wish().request(), drafted.plan(), Instant.parse("2027-03-01T08:00:00Z"), MEMBERS);
        }

        @Override
        public Sureness helped(Drafted drafted, Sureness sure) {
            return sure;
        }
    }

    @BeforeEach
    void aSentence() throws Exception {
        StyleLibrary library = StyleLibrary.builtIn();
        Wish first = new Wish(
                Wish.Malt.of(library.style("pale"), 4),
                LocalDate.of(2027, 4, 17),
                LOT,
                HOUSE,
                Wish.Company.BESIDE_OTHERS);
        WishViewModel.Threads threads = new WishViewModel.Threads(background::add, aside::add, Runnable::run);
        wish = new WishViewModel(
                first,
                new Planned(library),
                threads,
                new WishViewModel.Person(TODAY, DisplayUnits.metric()),
                new UndoHistory());
        model = new ChanceViewModel(wish, new Sures(), threads);
    }

    private void work() {
        while (!background.isEmpty()) background.remove().run();
    }

    @Test
    void bandsFollowThePlanAndHelpFollowsTheBands() {
        background.remove().run();
        assertTrue(wish.currentProperty().get());
        assertTrue(model.workingProperty().get());
        work();
        assertEquals(
                MEMBERS, model.sureProperty().get().orElseThrow().sureness().members());
        assertTrue(model.helpingProperty().get());
        aside.remove().run();
        assertFalse(model.helpingProperty().get());
    }

    @Test
    void onlyTheLatestPlanIsFollowed() {
        background.remove().run();
        Runnable late = background.remove();
        wish.change(wish.wishProperty().get().withMaltKg(2));
        work();
        Drafted latest = wish.draftedProperty().get().orElseThrow();
        late.run();
        assertEquals(latest, model.sureProperty().get().orElseThrow().drafted());
    }

    @Test
    void whatWasStoppedIsNotShownWhenItComes() {
        background.remove().run();
        model.stop();
        assertFalse(model.workingProperty().get());
        work();
        assertEquals(Optional.empty(), model.sureProperty().get());
    }

    /** The edges are those the ensemble found at each act. */
    @Test
    void atEachActTheBandIsTheOneThatWasFoundThere() {
        work();
        ChanceViewModel.Sure sure = model.sureProperty().get().orElseThrow();
        PieceChart.Bands bands =
                BandWriter.bands(sure.drafted().chart(), sure.drafted().plan(), sure.sureness());
        Act drain = sure.drafted().plan().acts().get(1);
        double low =
                sure.sureness().act(drain.id()).orElseThrow().moistureFraction().p10();
        assertEquals(100 * low, bands.moisture().low().at(drain.startsAt()).orElseThrow(), 0.3);
        List<Trace.Point> lows = bands.moisture().low().points();
        for (int i = 0; i < lows.size(); i++) {
            assertTrue(lows.get(i).figure()
                    <= bands.moisture().high().points().get(i).figure());
        }
    }
}
