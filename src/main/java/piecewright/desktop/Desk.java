package piecewright.desktop;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import javafx.beans.property.SimpleBooleanProperty;
import javafx.scene.Node;
import javafx.scene.Parent;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.layout.VBox;
import piecewright.app.Workspace;
import piecewright.app.Workspace.Kept;
import piecewright.desktop.colour.ColourView;
import piecewright.desktop.colour.ColourViewModel;
import piecewright.desktop.grain.GrainView;
import piecewright.desktop.grain.GrainViewModel;
import piecewright.desktop.house.HouseView;
import piecewright.desktop.house.HouseViewModel;
import piecewright.desktop.learned.LearnedView;
import piecewright.desktop.learned.LearnedViewModel;
import piecewright.desktop.learned.LearnedViewModel.Subject;
import piecewright.desktop.plan.Choices;
import piecewright.desktop.plan.Drafted;
import piecewright.desktop.plan.WishViewModel;
import piecewright.desktop.shell.Looks;
import piecewright.desktop.shell.Rail;
import piecewright.desktop.shell.Shell;
import piecewright.desktop.shell.UndoHistory;
import piecewright.store.SavedWindow.SavedWish;
import piecewright.store.StoreException;
import piecewright.store.StyleLibrary;
import piecewright.style.MaltStyle;
import piecewright.text.DisplayUnits;
import piecewright.text.WindowWords;

/** All screens of one workspace in one person's units, and what connects them. */
final class Desk {
    private static final double FIRST_KG = 4;

    private final Workspace workspace;
    private Optional<Planning> planning = Optional.empty();
    private final Optional<SavedWish> left;
    private final Asks asks;
    private final Around around;
    private Choices known;
    private Optional<ColourScreen> colours = Optional.empty();
    private Optional<GrainScreen> grains = Optional.empty();
    private Optional<HouseScreen> houses = Optional.empty();
    private Optional<LearnedScreen> learned = Optional.empty();
    private final Node empty;
    private final Rail rail;
    private final Batches batches;
    private final Shell shell;
    private final SimpleBooleanProperty demo = new SimpleBooleanProperty();
    private final SimpleBooleanProperty demoGone = new SimpleBooleanProperty();
    private Rail.Place place = Rail.Place.PLAN;

    /** What surrounds a desk. */
    record Around(
            Setting setting,
            Workspace workspace,
            StyleLibrary library,
            DisplayUnits units,
            WishViewModel.Threads threads,
            UndoHistory history) {}

    /** What a desk asks of the window. */
    interface Asks extends Rail.Wishes {
        /** Something worth remembering changed. */
        void changed();

        void bringDemo();
    }

    Desk(Around around, Optional<SavedWish> left, Asks asks) throws StoreException {
        this.around = around;
        this.workspace = around.workspace();
        Choices choices = choices();
        this.known = choices;
        this.left = left;
        this.asks = asks;
        this.empty = empty(asks);
        this.rail = new Rail(asks, around.history());
        around.history().from(this::whereabouts);
        this.batches = new Batches(around, rail.going(), looked());
        this.shell = new Shell(rail);
        rail.demoIs(demo);
        rail.demoIsGone(demoGone);
        batches.read();
        demoIs();
        boolean underWay = workspace.lacksDemoBatch() || !workspace.batchFiles().isEmpty();
        go(underWay ? Rail.Place.BATCH : Rail.Place.PLAN);
    }

    private Batches.Looked looked() {
        return new Batches.Looked() {
            @Override
            public void at() {
                go(Rail.Place.BATCH);
                asks.changed();
            }

            @Override
            public void none() {
                if (place == Rail.Place.BATCH) go(Rail.Place.PLAN);
            }
        };
    }

    private Planning.Asked asked() {
        return new Planning.Asked() {
            @Override
            public void changed() {
                asks.changed();
            }

            @Override
            public void keep(Drafted drafted) {
                Optional<String> trouble = batches.keep(drafted);
                if (trouble.isPresent()) rail.tell(trouble.get());
                else go(Rail.Place.BATCH);
            }
        };
    }

    private ColourScreen colours(Around around, Choices choices) {
        MaltStyle style = choices.firstStyle();
        var usual = style.finish().colour();
        double middleEbc = (usual.lowEbc() + usual.highEbc()) / 2;
        ColourViewModel.Sought first =
                new ColourViewModel.Sought(style, choices.houses().get(0).thing(), middleEbc, Optional.empty());
        ColourViewModel model =
                new ColourViewModel(choices.styles(), first, around.threads(), around.units(), around.history());
        return new ColourScreen(model, new ColourView(model, this::plan));
    }

    /** Brings a colour that was found into the sentence. */
    private void plan(ColourViewModel.Sought sought) {
        Optional<Path> house = known.houses().stream()
                .filter(kept -> kept.thing().equals(sought.house()))
                .map(Kept::file)
                .findFirst();
        go(Rail.Place.PLAN);
        planning.ifPresent(screen -> screen.take(sought.style(), sought.colourEbc(), house));
    }

    private static GrainScreen grains(Around around, Choices choices) {
        GrainViewModel.Asked first =
                new GrainViewModel.Asked(choices.firstLot(), Map.of(), choices.firstStyle(), FIRST_KG, 0, 0);
        WishViewModel.Person person =
                new WishViewModel.Person(LocalDate.now(around.setting().clock()), around.units());
        GrainViewModel model = new GrainViewModel(choices.styles(), first, around.threads(), person, around.history());
        return new GrainScreen(model, new GrainView(model));
    }

    private record GrainScreen(GrainViewModel model, GrainView view) {}

    private Optional<HouseScreen> houses(Choices choices) {
        try {
            HouseViewModel model =
                    new HouseViewModel(choices.houses().get(0), around.threads(), around.units(), around.history());
            return Optional.of(new HouseScreen(model, new HouseView(model)));
        } catch (StoreException vanished) {
            tell(String.valueOf(vanished.getMessage()));
            return Optional.empty();
        }
    }

    private LearnedScreen learned() {
        LearnedViewModel model = new LearnedViewModel(
                batches.opener(), around.threads(), around.setting().clock()::instant, around.units());
        LearnedView view = new LearnedView(model);
        batches.going().goingProperty().addListener((going, before, now) -> view.pieces(now.pieces()));
        view.pieces(batches.going().goingProperty().get().pieces());
        return new LearnedScreen(model, view);
    }

    /** Every lot and house there is to learn of. */
    private List<Subject> subjects() {
        Stream<Subject> lots = known.lots().stream()
                .sorted(Comparator.comparing(kept -> !kept.file().equals(known.firstLot())))
                .map(kept ->
                        new Subject(Subject.Kind.LOT, kept.file(), kept.thing().name()));
        Stream<Subject> homes = known.houses().stream()
                .map(kept -> new Subject(
                        Subject.Kind.HOUSE, kept.file(), kept.thing().name()));
        return Stream.concat(lots, homes).toList();
    }

    private record LearnedScreen(LearnedViewModel model, LearnedView view) {}

    private record HouseScreen(HouseViewModel model, HouseView view) {}

    private record ColourScreen(ColourViewModel model, ColourView view) {}

    /** One sentence and one button. */
    private static Node empty(Asks asks) {
        Label sentence = new Label(WindowWords.say("empty"));
        sentence.setWrapText(true);
        sentence.getStyleClass().add("lead");
        Button demo = new Button(WindowWords.say("empty.demo"));
        demo.setId("empty-demo");
        demo.getStyleClass().add("best");
        demo.setOnAction(event -> asks.bringDemo());
        VBox box = new VBox(16, sentence, demo);
        box.getStyleClass().add("empty");
        return box;
    }

    Parent node() {
        return shell.node();
    }

    void dress(Looks looks) {
        shell.dress(looks);
    }

    void tell(String sentence) {
        rail.tell(sentence);
    }

    /** The file of the piece that is looked at. */
    Optional<Path> lookedAt() {
        return batches.lookedAt();
    }

    /** Looks at the piece of that file, if it is still there. */
    void lookAt(Path batch) {
        if (Files.exists(batch)) batches.lookAt(batch);
    }

    /** True when nobody is busy on another screen yet: there is none, or the pieces are looked at. */
    boolean waits() {
        return place == Rail.Place.BATCH || !known.complete();
    }

    Rail.Place place() {
        return place;
    }

    /** Puts the caret where somebody types; until there is such a place no button has it, least of all by chance. */
    void focus() {
        // what scrolls holds nothing before it is dressed, and what is held by nothing cannot have the caret
        shell.node().applyCss();
        shell.node().layout();
        shell.node().requestFocus();
        if (place == Rail.Place.BATCH) batches.focus();
        else planning.ifPresent(Planning::focus);
    }

    /** The way back to the screen that is shown. */
    private Runnable whereabouts() {
        Rail.Place shown = place;
        return () -> {
            if (place != shown) go(shown);
        };
    }

    void now(Instant instant) {
        planning.ifPresent(screen -> screen.now(instant));
        batches.now(instant);
    }

    void go(Rail.Place chosen) {
        place = chosen;
        rail.mark(chosen);
        if (known.complete()) make(chosen);
        switch (chosen) {
            case BATCH -> shell.show(batches.node(), Optional.of(batches.side()));
            case COLOUR ->
                shell.show(colours.map(screen -> screen.view().node()).orElse(empty), Optional.empty());
            case GRAIN -> shell.show(grains.map(screen -> screen.view().node()).orElse(empty), Optional.empty());
            case HOUSE -> shell.show(houses.map(screen -> screen.view().node()).orElse(empty), Optional.empty());
            case LEARNED ->
                shell.show(learned.map(screen -> screen.view().node()).orElse(empty), Optional.empty());
            case PLAN -> shell.show(planning.map(Planning::node).orElse(empty), planning.map(Planning::sheet));
        }
    }

    /** Screens are made when they are first looked at, so that the window opens sooner. */
    private void make(Rail.Place chosen) {
        if (chosen == Rail.Place.PLAN && planning.isEmpty()) {
            planning = Optional.of(new Planning(around, known, left, asked()));
            planning.ifPresent(screen -> screen.now(around.setting().clock().instant()));
        }
        if (chosen == Rail.Place.COLOUR && colours.isEmpty()) colours = Optional.of(colours(around, known));
        if (chosen == Rail.Place.GRAIN && grains.isEmpty()) grains = Optional.of(grains(around, known));
        if (chosen == Rail.Place.HOUSE && houses.isEmpty()) houses = houses(known);
        if (chosen == Rail.Place.LEARNED && learned.isEmpty()) learned = Optional.of(learned());
        offer();
    }

    private void offer() {
        planning.ifPresent(screen -> screen.offer(known));
        houses.ifPresent(screen -> screen.view().houses(known.houses()));
        learned.ifPresent(screen -> screen.model().offer(subjects()));
        grains.ifPresent(screen -> screen.view().lots(known.lots()));
        colours.ifPresent(screen -> screen.view().houses(known.houses()));
    }

    /** True when what the workspace holds now needs another desk. */
    boolean outgrown() throws StoreException {
        return choices().complete() != known.complete();
    }

    /** Reads the workspace again. */
    void read() throws StoreException {
        known = choices();
        planning.ifPresent(screen -> screen.choices(known));
        houses.ifPresent(screen -> screen.model().reread());
        batches.read();
        offer();
        demoIs();
    }

    private void demoIs() {
        demo.set(workspace.hasDemo());
        demoGone.set(workspace.canRestoreDemo());
    }

    /** The sentence as it stands. */
    Optional<SavedWish> wish() {
        return planning.map(Planning::saved).or(() -> left);
    }

    private Choices choices() throws StoreException {
        Workspace.Contents contents = workspace.contents();
        return new Choices(around.library().all(), contents.lots(), contents.houses());
    }
}
