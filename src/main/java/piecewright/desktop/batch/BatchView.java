package piecewright.desktop.batch;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import javafx.animation.PauseTransition;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.ProgressBar;
import javafx.scene.control.ScrollPane;
import javafx.scene.control.TextField;
import javafx.scene.control.ToggleButton;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import javafx.scene.text.Text;
import javafx.util.Duration;
import piecewright.desktop.act.ActSheet;
import piecewright.desktop.batch.BatchViewModel.Shown;
import piecewright.desktop.batch.Proposal.Moved;
import piecewright.desktop.paint.Signs;
import piecewright.desktop.paint.Wrapped;
import piecewright.desktop.shell.Side;
import piecewright.desktop.timeline.PlanTimeline;
import piecewright.text.DisplayUnits;
import piecewright.text.WindowWords;

/** A piece under way on its timeline; beside it the act, what happened, and what would move. */
public final class BatchView {
    private final BatchViewModel model;
    private final PlanTimeline timeline;
    private final ActSheet sheet;
    private final VBox root = new VBox();
    private final ScrollPane scroll = new ScrollPane(root);
    private final Side side = new Side("batch-side");
    private final Label title = new Label();
    private final Label stands = new Label();
    private final Label calendarNote = new Label();
    private final VBox said = new VBox(4);
    private final TextField line = new TextField();
    private final VBox form = new VBox(8);

    private final ToggleButton otherLook = new ToggleButton();
    private Optional<OtherLook> other = Optional.empty();

    /** Another way to look at a piece that some pieces have, in place of the timeline. */
    public record OtherLook(String words, Node node, Predicate<Optional<Shown>> has) {}

    private final List<Offered> panels = new ArrayList<>();
    private final HBox offered = new HBox(8);
    private Optional<Proposal> lateOf = Optional.empty();
    private Node late = new VBox();

    /**
     * A sheet that may lie beside a piece in place of the chosen act.
     *
     * @param id of the button that brings it
     * @param has whether a piece has it
     * @param fit tells it that it will be shown
     */
    public record Panel(String id, String words, Node node, Predicate<Optional<Shown>> has, Runnable fit) {
        Panel(String id, String words, Node node, Predicate<Optional<Shown>> has) {
            this(id, words, node, has, () -> {});
        }
    }

    private record Offered(Panel panel, ToggleButton way) {}

    /** Whether the act that is next now is to be shown. */
    private boolean follow;

    public BatchView(BatchViewModel model, DisplayUnits units) {
        this.model = model;
        this.timeline = new PlanTimeline(units);
        this.sheet = new ActSheet(units);
        scroll.setFitToWidth(true);
        scroll.setFitToHeight(true);
        scroll.setHbarPolicy(ScrollPane.ScrollBarPolicy.NEVER);
        scroll.getStyleClass().add("middle-scroll");
        root.getStyleClass().add("middle");
        root.setId("batch-view");
        title.getStyleClass().add("title");
        title.setId("batch-title");
        stands.setId("batch-stands");
        stands.getStyleClass().add("card");
        stands.setWrapText(true);
        stands.setMaxWidth(Double.MAX_VALUE);
        stands.setMinHeight(Region.USE_PREF_SIZE);
        calendarNote.setId("batch-calendar-note");
        calendarNote.setWrapText(true);
        calendarNote.getStyleClass().add("caption");
        calendarNote.setMinHeight(Region.USE_PREF_SIZE);
        HBox.setHgrow(calendarNote, Priority.ALWAYS);
        HBox told = new HBox(12, calendarNote, button("batch.one-calendar", "batch-one-calendar", model::oneCalendar));
        told.visibleProperty().bind(calendarNote.textProperty().isNotEmpty());
        told.managedProperty().bind(told.visibleProperty());
        VBox.setVgrow(timeline, Priority.ALWAYS);
        root.getChildren().addAll(head(), stands, progress(), told, timeline);
        form();
        timeline.selectedActProperty().addListener((act, before, now) -> showAct());
        model.shownProperty().addListener((shown, before, now) -> show());
        model.proposalProperty().addListener((proposal, before, now) -> show());
        model.bandsProperty().addListener((bands, before, now) -> banded());
        model.replyProperty().addListener((reply, before, now) -> reply(now));
        model.calendarNoteProperty().addListener((note, before, now) -> calendarNote.setText(now));
        show();
    }

    public Node node() {
        return scroll;
    }

    /** Offers another look at the pieces that have it. */
    public void offer(OtherLook look) {
        other = Optional.of(look);
        otherLook.setText(look.words());
        show();
    }

    /** Offers a sheet beside the pieces that have it. */
    public void offer(Panel panel) {
        ToggleButton way = new ToggleButton(panel.words());
        way.setId(panel.id());
        way.setMinWidth(Region.USE_PREF_SIZE);
        way.managedProperty().bind(way.visibleProperty());
        offered.getStyleClass().setAll("led");
        way.setOnAction(event -> {
            panels.stream().map(Offered::way).filter(each -> each != way).forEach(each -> each.setSelected(false));
            placeSide();
        });
        panels.add(new Offered(panel, way));
        offered.getChildren().add(way);
        show();
    }

    /** What lies beside: what would move, else the sheet that was asked for, else the act and its form. */
    private void placeSide() {
        Optional<Shown> shown = model.shownProperty().get();
        for (Offered each : panels) {
            each.way().setVisible(each.panel().has().test(shown));
            if (!each.way().isVisible()) each.way().setSelected(false);
        }
        Optional<Panel> asked = panels.stream()
                .filter(each -> each.way().isSelected())
                .map(Offered::panel)
                .findFirst();
        Optional<Proposal> proposal = model.proposalProperty().get();
        if (proposal.isPresent()) {
            if (!proposal.equals(lateOf)) late = late(proposal.get());
            side.show(List.of(late), late);
        } else if (asked.isPresent()) {
            asked.get().fit().run();
            side.show(List.of(asked.get().node()), asked.get().node());
        } else side.show(List.of(sheet.node(), form), sheet.node());
        lateOf = proposal;
    }

    private void placeLook() {
        boolean has = other.filter(look -> look.has().test(model.shownProperty().get()))
                .isPresent();
        otherLook.setVisible(has);
        boolean shown = has && otherLook.isSelected();
        Node look = shown ? other.get().node() : timeline;
        if (!root.getChildren().contains(look)) {
            root.getChildren().set(root.getChildren().size() - 1, look);
        }
    }

    /** The sheet: the act and its form, or what would move. */
    public Node side() {
        return side;
    }

    public void focus() {
        line.requestFocus();
    }

    public PlanTimeline timeline() {
        return timeline;
    }

    private Node head() {
        title.setWrapText(true);
        title.setMinHeight(Region.USE_PREF_SIZE);
        title.setMaxWidth(Double.MAX_VALUE);
        HBox.setHgrow(title, Priority.ALWAYS);
        offered.setMinWidth(Region.USE_PREF_SIZE);
        otherLook.setId("batch-other-look");
        otherLook.setMinWidth(Region.USE_PREF_SIZE);
        otherLook.managedProperty().bind(otherLook.visibleProperty());
        otherLook.setVisible(false);
        otherLook.setOnAction(event -> placeLook());
        HBox head = new HBox(
                8,
                title,
                otherLook,
                offered,
                button("batch.ran-long", "batch-ran-long", model::planRest),
                button("batch.calendar", "batch-calendar", model::calendar));
        head.getStyleClass().add("head");
        return head;
    }

    /** Shown when planning the rest takes longer than a moment. */
    private Node progress() {
        ProgressBar bar = new ProgressBar();
        bar.getStyleClass().add("thin-progress");
        bar.setAccessibleText(WindowWords.say("batch.planning"));
        HBox line = new HBox(
                8, bar, new Label(WindowWords.say("batch.planning")), button("stop", "batch-stop", model::stop));
        line.getStyleClass().add("progress-line");
        line.setVisible(false);
        line.managedProperty().bind(line.visibleProperty());
        PauseTransition patience = new PauseTransition(Duration.millis(300));
        patience.setOnFinished(event -> line.setVisible(model.planningProperty().get()));
        model.planningProperty().addListener((planning, before, now) -> {
            if (now) patience.playFromStart();
            else line.setVisible(false);
        });
        return line;
    }

    private static Button button(String words, String id, Runnable action) {
        Button button = new Button(WindowWords.say(words));
        button.setId(id);
        button.setMinWidth(Region.USE_PREF_SIZE);
        button.setOnAction(event -> action.run());
        return button;
    }

    private void form() {
        Label name = new Label(WindowWords.say("batch.happened"));
        name.getStyleClass().add("strong");
        Label hint = new Label(WindowWords.say("batch.happened.hint"));
        hint.setWrapText(true);
        hint.getStyleClass().add("caption");
        line.setId("batch-line");
        line.setAccessibleText(WindowWords.say("batch.happened"));
        line.setPromptText(WindowWords.say("batch.happened.prompt"));
        line.setOnAction(event -> send());
        name.setLabelFor(line);
        Button record = button("batch.record", "batch-record", this::send);
        record.getStyleClass().add("best");
        Button back = button("batch.strike", "batch-strike", model::strikeLast);
        said.setId("batch-said");
        form.getChildren().addAll(name, line, new HBox(8, record, back), said, hint);
        form.getStyleClass().add("record-form");
        form.setId("batch-form");
    }

    private void send() {
        if (!line.getText().isBlank()) model.record(line.getText());
    }

    /** What was typed stays until it was understood and kept. */
    private void reply(Reply reply) {
        said.getChildren().clear();
        if (reply.outcome() == Reply.Outcome.KEPT) line.clear();
        for (String sentence : reply.sentences()) {
            said.getChildren().add(new HBox(6, Signs.good(), Wrapped.words("body-2", sentence)));
        }
        for (String doubt : reply.doubts()) {
            said.getChildren().add(new HBox(6, Signs.caution(), Wrapped.words("body-2", doubt)));
        }
        if (reply.outcome() == Reply.Outcome.KEPT) follow = true;
        FlowPane choices = new FlowPane(6, 6);
        for (String choice : reply.choices()) {
            Button button = new Button(choice);
            button.setOnAction(event -> {
                line.setText(choice);
                line.requestFocus();
                line.end();
            });
            choices.getChildren().add(button);
        }
        if (!reply.choices().isEmpty()) said.getChildren().add(choices);
        placeSide();
    }

    private void show() {
        Optional<Shown> shown = model.shownProperty().get();
        Optional<Proposal> proposal = model.proposalProperty().get();
        if (shown.isEmpty()) {
            title.setText(
                    model.file().map(file -> String.valueOf(file.getFileName())).orElse(""));
            stands.setText("");
        }
        shown.ifPresent(batch -> {
            title.setText(WindowWords.say(
                    "batch.title",
                    batch.plan().subject().title(),
                    batch.plan().subject().lot()));
            stands.setText(String.join(" ", batch.sentences()));
            timeline.nowProperty().set(batch.where().now());
            if (follow
                    || batch.chart().act(timeline.selectedActProperty().get()).isEmpty()) {
                follow = false;
                String next = batch.where().next().act().map(act -> act.id()).orElse("");
                timeline.selectedActProperty().set(next);
            }
        });
        timeline.ghostProperty().set(proposal.flatMap(Proposal::chart).flatMap(chart -> shown.map(Shown::chart)));
        proposal.flatMap(Proposal::chart)
                .ifPresent(chart -> timeline.chartProperty().set(Optional.of(chart)));
        banded();
        placeSide();
        placeLook();
        showAct();
    }

    private void banded() {
        boolean proposed =
                model.proposalProperty().get().flatMap(Proposal::chart).isPresent();
        if (proposed) return;
        timeline.chartProperty()
                .set(model.shownProperty()
                        .get()
                        .map(batch ->
                                batch.chart().withBands(model.bandsProperty().get())));
    }

    private void showAct() {
        Optional<Shown> shown = model.shownProperty().get();
        sheet.show(shown.map(Shown::plan), timeline.selectedActProperty().get());
    }

    private Node late(Proposal proposal) {
        VBox list = new VBox(8);
        list.getStyleClass().add("sheet");
        list.setId("batch-moves");
        boolean possible = proposal.chart().isPresent();
        Label head = Wrapped.words("title", WindowWords.say(possible ? "batch.moves" : "batch.no-plan"));
        list.getChildren().add(head);
        proposal.sentences().forEach(sentence -> list.getChildren().add(Wrapped.words("body", sentence)));
        proposal.moves().forEach(move -> list.getChildren().add(row(move)));
        Button keep = button("batch.keep-old", "batch-keep-old", model::keepOld);
        if (possible) {
            Button accept = button("batch.accept", "batch-accept", model::accept);
            accept.getStyleClass().add("best");
            list.getChildren().add(new HBox(8, accept, keep));
        } else {
            list.getChildren().add(keep);
        }
        return list;
    }

    private static Node row(Moved move) {
        Text from = new Text(move.from());
        from.setStrikethrough(true);
        from.getStyleClass().add("moved-from");
        boolean dropped = move.to().isEmpty();
        Label to = new Label(dropped ? WindowWords.say("batch.dropped") : move.to());
        to.getStyleClass().add(dropped ? "moved-dropped" : "moved-to");
        Label arrow = new Label(move.from().isEmpty() ? WindowWords.say("batch.new") : "→");
        FlowPane when = new FlowPane(6, 0, from, arrow, to);
        if (move.from().isEmpty()) when.getChildren().remove(from);
        VBox row = new VBox(2, Wrapped.words("strong", move.title()), when, Wrapped.words("caption", move.because()));
        row.getStyleClass().add("move-row");
        return row;
    }
}
