package piecewright.desktop;

import java.nio.file.Path;
import java.time.Clock;
import java.time.DayOfWeek;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.temporal.TemporalAdjusters;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import javafx.scene.Node;
import piecewright.app.Drafting;
import piecewright.app.Workspace.Kept;
import piecewright.desktop.act.ActSheet;
import piecewright.desktop.plan.ChanceView;
import piecewright.desktop.plan.ChanceViewModel;
import piecewright.desktop.plan.Choices;
import piecewright.desktop.plan.Drafted;
import piecewright.desktop.plan.Wish;
import piecewright.desktop.plan.WishView;
import piecewright.desktop.plan.WishViewModel;
import piecewright.desktop.shell.Side;
import piecewright.desktop.timeline.BandWriter;
import piecewright.desktop.timeline.PieceChart;
import piecewright.desktop.timeline.PlanTimeline;
import piecewright.ensemble.Members;
import piecewright.ensemble.Sureness;
import piecewright.plan.Obstacle;
import piecewright.plan.PlanRequest;
import piecewright.plan.Watch;
import piecewright.remedy.Remedy;
import piecewright.store.SavedWindow.SavedWish;
import piecewright.style.MaltStyle;

/** The screen of the sentence with its timeline and its sheet. */
final class Planning {
    /** Judgement: time enough for the slowest usual piece with its rest. */
    private static final int DAYS_AHEAD = 45;

    private static final double FIRST_KG = 4;

    private final WishViewModel wish;
    private final WishView view;
    private final PlanTimeline timeline;
    private final ActSheet sheet;
    private final ChanceViewModel chance;
    private final Side side = new Side("plan-side");

    /** What this screen asks of the others. */
    interface Asked {
        void changed();

        void keep(Drafted drafted);
    }

    Planning(Desk.Around around, Choices choices, Optional<SavedWish> left, Asked asked) {
        LocalDate today = LocalDate.now(around.setting().clock());
        Wish first = left.flatMap(saved -> restored(saved, choices, today)).orElseGet(() -> firstWish(choices, today));
        WishViewModel.Person person = new WishViewModel.Person(today, around.units());
        this.wish = new WishViewModel(first, answers(around), around.threads(), person, around.history());
        this.chance = new ChanceViewModel(wish, chances(around.setting()), around.threads());
        this.timeline = new PlanTimeline(around.units());
        this.view = new WishView(wish, timeline, around.units(), asked::keep);
        this.sheet = new ActSheet(around.units());
        side.show(List.of(new ChanceView(chance, around.units()).node(), sheet.node()), sheet.node());
        chance.sureProperty().addListener((sure, before, now) -> now.ifPresent(this::banded));
        timeline.selectedActProperty().addListener((act, before, now) -> showAct());
        wish.draftedProperty().addListener((drafted, before, now) -> drafted(now));
        wish.wishProperty().addListener((wished, before, now) -> asked.changed());
        drafted(wish.draftedProperty().get());
    }

    private void banded(ChanceViewModel.Sure sure) {
        PieceChart chart = sure.drafted().chart();
        timeline.chartProperty()
                .set(Optional.of(
                        chart.withBands(BandWriter.bands(chart, sure.drafted().plan(), sure.sureness()))));
    }

    private static ChanceViewModel.Answers chances(Setting setting) {
        return new ChanceViewModel.Answers() {
            @Override
            public Sureness sure(Drafted drafted) {
                PlanRequest request = drafted.wish().request();
                return setting.sure()
                        .chances(request, drafted.plan(), setting.clock().instant(), Members.USUAL);
            }

            @Override
            public Sureness helped(Drafted drafted, Sureness sure) {
                PlanRequest request = drafted.wish().request();
                return setting.sure()
                        .helped(request, drafted.plan(), setting.clock().instant(), sure);
            }
        };
    }

    private static WishViewModel.Answers answers(Desk.Around around) {
        Drafting drafting = new Drafting(around.setting().planner(), around.library());
        Clock clock = around.setting().clock();
        return new WishViewModel.Answers() {
            @Override
            public Drafting.Answer answer(Wish wish, Watch watch) {
                boolean alone = wish.company() == Wish.Company.ALONE;
                List<Path> others = alone ? List.of() : around.workspace().batchFiles();
                Drafting.Asked asked = new Drafting.Asked(
                        wish.planWish(LocalDate.now(clock)), wish.malt().colourEbc(), others);
                return drafting.answer(asked, LocalDateTime.now(clock), watch);
            }

            @Override
            public List<Remedy> remedies(PlanRequest request, List<Obstacle> obstacles, Watch watch) {
                return drafting.remedies(request, obstacles, watch);
            }
        };
    }

    Node node() {
        return view.node();
    }

    Node sheet() {
        return side;
    }

    void focus() {
        view.focus();
    }

    void now(Instant instant) {
        timeline.nowProperty().set(instant);
    }

    /** Wishes for another style in that colour, in that house where there is one. */
    void take(MaltStyle style, double colourEbc, Optional<Path> house) {
        Wish now = wish.wishProperty().get();
        wish.change(
                now.withStyle(style).withColourEbc(OptionalDouble.of(colourEbc)).withHouse(house.orElse(now.house())));
    }

    /** Offers what there is. */
    void offer(Choices choices) {
        view.choices(choices);
    }

    /** Offers what there is now; the answer is asked again, for a file of it may have changed. */
    void choices(Choices choices) {
        offer(choices);
        wish.ask();
    }

    SavedWish saved() {
        Wish now = wish.wishProperty().get();
        return new SavedWish(
                now.style().key(),
                now.maltKg(),
                now.malt().colourEbc(),
                now.readyBy(),
                now.lot().toString(),
                now.house().toString());
    }

    private static Optional<Wish> restored(SavedWish saved, Choices choices, LocalDate today) {
        Optional<MaltStyle> style = choices.styles().stream()
                .filter(each -> each.key().equals(saved.styleKey()))
                .findFirst();
        Path lot = Path.of(saved.lot());
        Path house = Path.of(saved.house());
        boolean there = choices.lots().stream().map(Kept::file).anyMatch(lot::equals)
                && choices.houses().stream().map(Kept::file).anyMatch(house::equals);
        return style.filter(known -> there && !saved.readyBy().isBefore(today))
                .map(known -> new Wish(
                        new Wish.Malt(known, saved.maltKg(), saved.colourEbc()),
                        saved.readyBy(),
                        lot,
                        house,
                        Wish.Company.BESIDE_OTHERS));
    }

    private static Wish firstWish(Choices choices, LocalDate today) {
        LocalDate saturday = today.plusDays(DAYS_AHEAD).with(TemporalAdjusters.nextOrSame(DayOfWeek.SATURDAY));
        MaltStyle style = choices.firstStyle();
        Path lot = choices.firstLot();
        Path house = choices.houses().get(0).file();
        return new Wish(Wish.Malt.of(style, FIRST_KG), saturday, lot, house, Wish.Company.BESIDE_OTHERS);
    }

    private void drafted(Optional<Drafted> drafted) {
        drafted.ifPresent(shown -> {
            boolean gone =
                    shown.chart().act(timeline.selectedActProperty().get()).isEmpty();
            if (gone)
                timeline.selectedActProperty().set(shown.chart().acts().get(0).id());
        });
        showAct();
    }

    private void showAct() {
        sheet.show(
                wish.draftedProperty().get().map(Drafted::plan),
                timeline.selectedActProperty().get());
    }
}
