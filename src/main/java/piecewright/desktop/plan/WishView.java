package piecewright.desktop.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.TreeMap;
import javafx.animation.PauseTransition;
import javafx.beans.binding.Bindings;
import javafx.collections.ListChangeListener;
import javafx.geometry.Bounds;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.ProgressBar;
import javafx.scene.control.ScrollPane;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Pane;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import javafx.util.Duration;
import piecewright.desktop.paint.Signs;
import piecewright.desktop.timeline.PlanTimeline;
import piecewright.remedy.Change;
import piecewright.remedy.Remedy;
import piecewright.text.DisplayUnits;
import piecewright.text.MomentFormat;
import piecewright.text.QuantityFormat;
import piecewright.text.RemedyWords;
import piecewright.text.WindowWords;

/** Making a plan: the sentence, what is wrong with it, the verdict, the piece along time. */
public final class WishView {
    private final WishViewModel model;
    private final DisplayUnits units;
    private final KeepsPlans keeping;
    private final SentenceView sentence;
    private final PlanTimeline timeline;
    private final VBox root = new VBox();
    private final ScrollPane scroll = new ScrollPane(root);
    private final ChecksView checks;
    private final VBox notes = new VBox();
    private final FlowPane verdict = new FlowPane();
    private final HBox progress;
    private final Label stale = new Label(WindowWords.say("wish.stale"));

    /** What is done with a plan that is kept. */
    public interface KeepsPlans {
        void keep(Drafted drafted);
    }

    public WishView(WishViewModel model, PlanTimeline timeline, DisplayUnits units, KeepsPlans keeping) {
        this.keeping = keeping;
        this.model = model;
        this.timeline = timeline;
        this.units = units;
        this.sentence = new SentenceView(model, units);
        this.progress = progress();
        this.checks = new ChecksView(units);
        root.getStyleClass().add("middle");
        root.setId("wish-view");
        verdict.getStyleClass().add("verdict");
        verdict.setId("verdict");
        notes.getStyleClass().add("notes");
        notes.managedProperty().bind(Bindings.isNotEmpty(notes.getChildren()));
        stale.getStyleClass().add("stale");
        VBox.setVgrow(timeline, Priority.ALWAYS);
        scroll.setFitToWidth(true);
        scroll.setFitToHeight(true);
        scroll.setHbarPolicy(ScrollPane.ScrollBarPolicy.NEVER);
        scroll.getStyleClass().add("middle-scroll");
        root.getChildren().addAll(head(), sentence.node(), notes, verdict, checks.node(), progress, stale, timeline);
        listen();
    }

    public Node node() {
        return scroll;
    }

    /** Puts the caret where somebody begins. */
    public void focus() {
        sentence.word(Problem.Word.AMOUNT).ifPresent(Node::requestFocus);
    }

    public void choices(Choices choices) {
        sentence.choices(choices);
    }

    private Node head() {
        Label title = new Label(WindowWords.say("wish.title"));
        title.getStyleClass().add("title");
        Region gap = new Region();
        HBox.setHgrow(gap, Priority.ALWAYS);
        Button undo = button("undo", model.history()::undo);
        undo.disableProperty().bind(model.history().undoProperty().isEmpty());
        Button redo = button("redo", model.history()::redo);
        redo.disableProperty().bind(model.history().redoProperty().isEmpty());
        Button keep = button("keep", () -> model.draftedProperty().get().ifPresent(keeping::keep));
        keep.getStyleClass().add("best");
        keep.disableProperty().bind(model.currentProperty().not());
        HBox head = new HBox(8, title, gap, undo, redo, keep);
        head.getStyleClass().add("head");
        return head;
    }

    private static Button button(String key, Runnable action) {
        Button button = new Button(WindowWords.say(key));
        button.setId(key);
        button.setOnAction(event -> action.run());
        button.setMinWidth(Region.USE_PREF_SIZE);
        return button;
    }

    private HBox progress() {
        ProgressBar bar = new ProgressBar();
        bar.getStyleClass().add("thin-progress");
        bar.setAccessibleText(WindowWords.say("working"));
        HBox line = new HBox(8, bar, new Label(WindowWords.say("working")), button("stop", model::stop));
        line.getStyleClass().add("progress-line");
        line.setVisible(false);
        line.managedProperty().bind(line.visibleProperty());
        return line;
    }

    private void listen() {
        PauseTransition patience = new PauseTransition(Duration.millis(300));
        patience.setOnFinished(
                event -> progress.setVisible(model.workingProperty().get()));
        model.workingProperty().addListener((working, before, now) -> {
            if (now) patience.playFromStart();
            else progress.setVisible(false);
        });
        model.draftedProperty().addListener((drafted, before, now) -> showDrafted(now));
        model.currentProperty().addListener((current, before, now) -> showCurrent());
        model.workingProperty().addListener((working, before, now) -> showCurrent());
        model.problems().addListener((ListChangeListener<Problem>) change -> showNotes());
        model.remedies().addListener((ListChangeListener<Remedy>) change -> showNotes());
        model.seekingProperty().addListener((seeking, before, now) -> showNotes());
        model.typedProperty().addListener((typed, before, now) -> showNotes());
        root.layoutBoundsProperty().addListener((bounds, before, now) -> placeStems());
        showDrafted(model.draftedProperty().get());
        showCurrent();
    }

    private void showCurrent() {
        boolean aside =
                !model.currentProperty().get() && !model.workingProperty().get();
        stale.setVisible(aside && model.draftedProperty().get().isPresent());
        stale.setManaged(stale.isVisible());
        timeline.setOpacity(model.currentProperty().get() ? 1 : 0.45);
        verdict.setOpacity(timeline.getOpacity());
    }

    private void showDrafted(Optional<Drafted> drafted) {
        timeline.chartProperty().set(drafted.map(Drafted::chart));
        verdict.getChildren().clear();
        drafted.ifPresent(shown -> {
            checks.show(shown.plan());
            for (Drafted.Figure figure : shown.verdict()) verdict.getChildren().add(figure(figure));
        });
    }

    private static Node figure(Drafted.Figure figure) {
        Label value = new Label(figure.figure());
        value.getStyleClass().add("verdict-figure");
        value.setId("verdict-" + figure.key());
        Label under = new Label(figure.under());
        under.getStyleClass().add("caption");
        VBox box = new VBox(value, under);
        box.getStyleClass().add("verdict-box");
        return box;
    }

    private void showNotes() {
        notes.getChildren().clear();
        List<Problem> troubles = new ArrayList<>();
        new TreeMap<>(model.typedProperty().get()).forEach((word, why) -> troubles.add(new Problem(word, why)));
        troubles.forEach(typed -> note(typed, List.of()));
        List<Problem> problems = model.problems();
        troubles.addAll(problems);
        for (Problem problem : problems) {
            note(problem, problem == problems.get(0) ? model.remedies() : List.of());
        }
        if (model.seekingProperty().get()) notes.getChildren().add(new Label(WindowWords.say("remedy.seeking")));
        sentence.trouble(troubles);
        placeStems();
    }

    private void note(Problem problem, List<Remedy> remedies) {
        Label words = new Label(problem.sentence());
        words.setWrapText(true);
        words.setMinHeight(Region.USE_PREF_SIZE);
        words.setId("problem-" + problem.word().name().toLowerCase(java.util.Locale.ROOT));
        HBox.setHgrow(words, Priority.ALWAYS);
        HBox card = new HBox(12, Signs.caution(), words);
        VBox helps = new VBox(6);
        for (Remedy remedy : remedies) helps.getChildren().add(remedy(remedy));
        if (!helps.getChildren().isEmpty()) card.getChildren().add(helps);
        card.getStyleClass().add("problem-card");
        Region stem = new Region();
        stem.getStyleClass().add("stem");
        stem.setUserData(problem.word());
        stem.setManaged(false);
        Pane stemmed = new Pane(stem);
        stemmed.getStyleClass().add("stem-space");
        notes.getChildren().add(new VBox(stemmed, card));
    }

    private Node remedy(Remedy remedy) {
        if (!WishViewModel.ofTheSentence(remedy)) {
            Label words =
                    new Label(new RemedyWords(units, remedy.plan().subject().zone()).sentence(remedy));
            words.setWrapText(true);
            words.setMaxWidth(280);
            words.setMinHeight(Region.USE_PREF_SIZE);
            words.getStyleClass().add("caption");
            return words;
        }
        Button take = new Button(remedyWords(remedy.change()));
        take.setId("remedy");
        take.setMinWidth(Region.USE_PREF_SIZE);
        take.getStyleClass().add("best");
        take.setOnAction(event -> {
            focus();
            model.take(remedy);
        });
        Label checked = new Label(WindowWords.say(
                "remedy.checked", Integer.toString(remedy.plan().acts().size())));
        checked.getStyleClass().add("caption");
        checked.setMinWidth(Region.USE_PREF_SIZE);
        HBox line = new HBox(4, Signs.good(), checked);
        return new VBox(4, take, line);
    }

    private String remedyWords(Change change) {
        if (change instanceof Change.LaterDay later) {
            MomentFormat moments = new MomentFormat(java.time.ZoneOffset.UTC, units.locale());
            return WindowWords.say("remedy.ready-later", moments.day(later.readyBy()));
        }
        double kg = ((Change.SmallerPiece) change).massKg();
        return WindowWords.say("remedy.smaller", new QuantityFormat(units).roughMass(kg));
    }

    /** Each note hangs on a stem from its word. */
    private void placeStems() {
        for (Node note : notes.getChildren()) {
            if (!(note instanceof VBox)) continue;
            Region stem = (Region)
                    ((Pane) ((VBox) note).getChildren().get(0)).getChildren().get(0);
            sentence.word((Problem.Word) stem.getUserData()).ifPresent(word -> {
                Bounds bounds = word.localToScene(word.getBoundsInLocal());
                double x = notes.sceneToLocal(bounds.getMinX() + 18, 0).getX();
                stem.resizeRelocate(x, 0, 2, 10);
            });
        }
    }
}
