package piecewright.desktop.colour;

import java.util.ArrayList;
import java.util.List;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.MenuButton;
import javafx.scene.control.MenuItem;
import javafx.scene.control.ScrollPane;
import javafx.scene.control.TextField;
import javafx.scene.control.TitledPane;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import piecewright.app.Workspace.Kept;
import piecewright.desktop.paint.Signs;
import piecewright.desktop.shell.Refilled;
import piecewright.house.House;
import piecewright.style.MaltStyle;
import piecewright.text.WindowWords;

/** Choosing a colour: a sentence, the map, what the chosen cure gives, and what other styles would do. */
public final class ColourView {
    private final ColourViewModel model;
    private final VBox root = new VBox();
    private final ScrollPane scroll = new ScrollPane(root);
    private final MenuButton style = new MenuButton();
    private final MenuButton house = new MenuButton();
    private final TextField colour = new TextField();
    private final Refilled colourShown = new Refilled(colour);
    private final HBox verdict = new HBox(10);
    private final Label note = new Label();
    private final VBox others = new VBox(6);
    private final VBox unreached = new VBox(6);
    private final TitledPane unreachedPane = new TitledPane("", unreached);
    private final Label formula = new Label();
    private final Label across = new Label();
    private final ColourMap map;

    /** Told that a style is to be planned in the colour it is sought in. */
    public interface Planned {
        void plan(ColourViewModel.Sought sought);
    }

    public ColourView(ColourViewModel model, Planned planned) {
        this.model = model;
        this.map = new ColourMap(model);
        VBox.setVgrow(map, Priority.ALWAYS);
        root.getStyleClass().add("middle");
        root.setId("colour-view");
        Node head = head(planned);
        note.getStyleClass().add("field-note");
        note.setWrapText(true);
        note.managedProperty().bind(note.visibleProperty());
        verdict.getStyleClass().add("verdict");
        across.setWrapText(true);
        across.setMinHeight(Region.USE_PREF_SIZE);
        across.getStyleClass().add("axis-name");
        formula.getStyleClass().add("caption");
        formula.setWrapText(true);
        formula.setMinHeight(Region.USE_PREF_SIZE);
        root.getChildren().addAll(head, sentence(), note, verdict, map, across, formula, others, beer(), unreachedPane);
        unreachedPane.setId("colour-unreached");
        unreachedPane.setAnimated(false);
        unreachedPane.setExpanded(false);
        unreachedPane.setMinHeight(Region.USE_PREF_SIZE);
        unreachedPane.getStyleClass().add("thing");
        scroll.setFitToWidth(true);
        scroll.setFitToHeight(true);
        scroll.setHbarPolicy(ScrollPane.ScrollBarPolicy.NEVER);
        scroll.getStyleClass().add("middle-scroll");
        model.soughtProperty().addListener((sought, before, now) -> show());
        model.shownProperty().addListener((shown, before, now) -> show());
        model.noteProperty().addListener((typed, before, now) -> show());
        model.waysProperty().addListener((ways, before, now) -> ways(now));
        show();
    }

    private Node head(Planned planned) {
        Label title = new Label(WindowWords.say("colour.title"));
        title.getStyleClass().add("title");
        Region gap = new Region();
        HBox.setHgrow(gap, Priority.ALWAYS);
        Button plan = new Button(WindowWords.say("colour.plan"));
        plan.setId("colour-plan");
        plan.setMinWidth(Region.USE_PREF_SIZE);
        plan.getStyleClass().add("best");
        plan.setOnAction(event -> planned.plan(model.soughtProperty().get()));
        HBox head = new HBox(8, title, gap, plan);
        head.getStyleClass().add("head");
        return head;
    }

    private Node beer() {
        return new BeerView(new BeerViewModel(model.units()), model::seek).node();
    }

    public Node node() {
        return scroll;
    }

    private Node sentence() {
        word(style, "colour-style");
        word(house, "colour-house");
        word(colour, "colour-sought");
        colour.setPrefColumnCount(7);
        colour.setOnAction(event -> typed());
        colour.focusedProperty().addListener((focused, before, now) -> {
            if (!now && !colour.getText().equals(shownColour())) typed();
        });
        for (MaltStyle each : model.styles()) {
            MenuItem item = new MenuItem(each.title());
            item.setOnAction(event -> model.chooseStyle(each));
            style.getItems().add(item);
        }
        FlowPane pane = new FlowPane(10, 8);
        pane.getStyleClass().add("sentence");
        pane.getChildren().addAll(led("i-want", style), led("of-about", colour), led("from", house));
        return pane;
    }

    private void typed() {
        colourShown.taken();
        model.typeColour(colour.getText());
        show();
    }

    private static void word(javafx.scene.control.Control control, String id) {
        control.setId(id);
        control.getStyleClass().add("word");
        control.setAccessibleText(WindowWords.say(id.replaceFirst("-", ".spoken.")));
    }

    private static HBox led(String key, Node control) {
        Label label = new Label(WindowWords.say("colour." + key));
        label.getStyleClass().add("said");
        HBox pair = new HBox(8, label, control);
        pair.getStyleClass().add("led");
        return pair;
    }

    public void houses(List<Kept<House>> houses) {
        house.getItems().clear();
        for (Kept<House> kept : houses) {
            MenuItem item = new MenuItem(kept.thing().name());
            item.setMnemonicParsing(false);
            item.setOnAction(event -> model.chooseHouse(kept.thing()));
            house.getItems().add(item);
        }
    }

    private String shownColour() {
        return model.quantities().colour(model.soughtProperty().get().colourEbc());
    }

    private void show() {
        note.setText(model.noteProperty().get());
        note.setVisible(!note.getText().isEmpty());
        ColourViewModel.Sought sought = model.soughtProperty().get();
        boolean roast = model.shownProperty()
                .get()
                .filter(shown -> shown.field().isRoast())
                .isPresent();
        across.setText(WindowWords.say(roast ? "colour.across.roast" : "colour.across"));
        formula.setText(WindowWords.say(roast ? "colour.formula.roast" : "colour.formula"));
        style.setText(sought.style().title());
        house.setText(sought.house().name());
        if (!note.isVisible()) colourShown.show(shownColour());
        String warning = model.warning();
        Label words = new Label(model.verdict());
        words.setId("colour-verdict");
        words.setWrapText(true);
        words.getStyleClass().add("verdict-figure");
        words.setMinHeight(Region.USE_PREF_SIZE);
        VBox sentences = new VBox(4, words);
        HBox.setHgrow(sentences, Priority.ALWAYS);
        if (!warning.isEmpty()) {
            Label why = new Label(warning);
            why.setId("colour-warning");
            why.setWrapText(true);
            sentences.getChildren().add(new HBox(8, Signs.caution(), why));
        }
        verdict.getChildren().setAll(Signs.corn(sought.colourEbc()), sentences);
    }

    private void ways(ColourViewModel.Ways ways) {
        others.getChildren().setAll(sentences(ways.reached()));
        unreached.getChildren().setAll(sentences(ways.unreached()));
        unreachedPane.setText(WindowWords.say(
                "colour.unreached", Integer.toString(ways.unreached().size())));
        show();
    }

    private static List<Label> sentences(List<String> ways) {
        List<Label> labels = new ArrayList<>();
        for (String way : ways) {
            Label sentence = new Label(way);
            sentence.setWrapText(true);
            sentence.setMinHeight(Region.USE_PREF_SIZE);
            sentence.getStyleClass().add("body-2");
            labels.add(sentence);
        }
        return labels;
    }
}
