package piecewright.desktop.house;

import java.time.DayOfWeek;
import java.time.Duration;
import java.time.format.TextStyle;
import java.util.List;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.control.MenuButton;
import javafx.scene.control.MenuItem;
import javafx.scene.control.ScrollPane;
import javafx.scene.control.ToggleButton;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import org.controlsfx.control.SegmentedButton;
import piecewright.app.Workspace.Kept;
import piecewright.house.House;
import piecewright.house.Person;
import piecewright.text.QuantityFormat;
import piecewright.text.WindowWords;

/** A household: somebody's usual week to paint on, its places and its kit. */
public final class HouseView {
    private final HouseViewModel model;
    private final QuantityFormat quantities;
    private final VBox root = new VBox();
    private final ScrollPane scroll = new ScrollPane(root);
    private final MenuButton house = new MenuButton();
    private final MenuButton person = new MenuButton();
    private final WeekGrid grid;
    private final Label gaps = new Label();
    private final Label note = new Label();

    public HouseView(HouseViewModel model) {
        this.model = model;
        this.quantities = new QuantityFormat(model.units());
        this.grid = new WeekGrid(model);
        root.getStyleClass().add("middle");
        root.setId("house-view");
        note.getStyleClass().add("field-note");
        note.setWrapText(true);
        gaps.setWrapText(true);
        gaps.setId("house-gaps");
        gaps.setMinHeight(Region.USE_PREF_SIZE);
        gaps.getStyleClass().add("body-2");
        VBox week = new VBox(8, brushes(), grid, gaps, note);
        VBox.setVgrow(grid, Priority.ALWAYS);
        VBox facts = new VBox(12, new FactsView(model).node(), new DaysView(model).node());
        SideBySide both = new SideBySide(week, facts);
        VBox.setVgrow(both, Priority.ALWAYS);
        root.getChildren().addAll(head(), both);
        scroll.setFitToWidth(true);
        scroll.setFitToHeight(true);
        scroll.setHbarPolicy(ScrollPane.ScrollBarPolicy.NEVER);
        scroll.getStyleClass().add("middle-scroll");
        model.shownProperty().addListener((shown, before, now) -> show());
        model.noteProperty().addListener((text, before, now) -> note.setText(now));
        show();
    }

    public Node node() {
        return scroll;
    }

    public void houses(List<Kept<House>> there) {
        house.getItems().clear();
        for (Kept<House> kept : there) {
            MenuItem item = new MenuItem(kept.thing().name());
            item.setMnemonicParsing(false);
            item.setOnAction(event -> model.choose(kept));
            house.getItems().add(item);
        }
    }

    private Node head() {
        Label title = new Label(WindowWords.say("house.title"));
        title.getStyleClass().add("title");
        house.setId("house-choice");
        house.getStyleClass().add("word");
        house.setAccessibleText(WindowWords.say("house.spoken.choice"));
        person.setId("house-person");
        person.getStyleClass().add("word");
        person.setAccessibleText(WindowWords.say("house.spoken.person"));
        Label hours = new Label(WindowWords.say("house.hours-of"));
        hours.getStyleClass().add("said");
        FlowPane head = new FlowPane(10, 8, title, house, hours, person);
        head.getStyleClass().add("sentence");
        return head;
    }

    private Node brushes() {
        ToggleButton free = new ToggleButton(WindowWords.say("house.brush.free"));
        free.setId("brush-free");
        free.setSelected(true);
        free.setMinWidth(Region.USE_PREF_SIZE);
        free.setOnAction(event -> grid.brushFree());
        ToggleButton away = new ToggleButton(WindowWords.say("house.brush.away"));
        away.setId("brush-away");
        away.setMinWidth(Region.USE_PREF_SIZE);
        away.setOnAction(event -> grid.brushAway());
        SegmentedButton brushes = new SegmentedButton(free, away);
        brushes.setMinWidth(Region.USE_PREF_SIZE);
        Label hint = new Label(WindowWords.say("house.hint"));
        hint.setWrapText(true);
        hint.getStyleClass().add("caption");
        hint.setMinHeight(Region.USE_PREF_SIZE);
        return new VBox(6, brushes, hint);
    }

    private void show() {
        HouseViewModel.Shown shown = model.shownProperty().get();
        house.setText(shown.house().name());
        person.setText(shown.person());
        person.getItems().clear();
        for (Person each : shown.house().people()) {
            MenuItem item = new MenuItem(each.name());
            item.setMnemonicParsing(false);
            item.setOnAction(event -> model.choosePerson(each.name()));
            person.getItems().add(item);
        }
        StringBuilder words = new StringBuilder();
        for (DayOfWeek day : DayOfWeek.values()) {
            if (!words.isEmpty()) words.append(" · ");
            words.append(day.getDisplayName(TextStyle.SHORT, model.units().locale()))
                    .append(' ')
                    .append(quantities.time(
                            Duration.ofMinutes(15L * shown.week().longestAway(day))));
        }
        gaps.setText(WindowWords.say("house.gaps", words.toString()));
    }
}
