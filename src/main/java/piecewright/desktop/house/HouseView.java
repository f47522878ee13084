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
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import org.controlsfx.control.SegmentedButton;
import piecewright.app.Workspace.Kept;
import piecewright.house.AirTemperature;
import piecewright.house.Heater;
import piecewright.house.House;
import piecewright.house.Kit;
import piecewright.house.Person;
import piecewright.house.Place;
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
    private final VBox facts = new VBox(12);
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
        HBox.setHgrow(week, Priority.ALWAYS);
        facts.setMinWidth(300);
        facts.setPrefWidth(340);
        HBox both = new HBox(24, week, facts);
        VBox.setVgrow(both, Priority.ALWAYS);
        root.getChildren().addAll(head(), both);
        scroll.setFitToWidth(true);
        scroll.setFitToHeight(true);
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
        HBox line = new HBox(12, brushes, hint);
        line.getStyleClass().add("led");
        return line;
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
        facts(shown.house());
    }

    private void facts(House shown) {
        facts.getChildren().clear();
        VBox places = card("house.places");
        for (Place place : shown.places()) {
            places.getChildren().add(fact(place.name(), air(place.air())));
        }
        places.getChildren().add(fact(WindowWords.say("house.water"), quantities.temperature(shown.steepWaterC())));
        VBox kit = card("house.kit");
        kit(shown.kit(), kit);
        facts.getChildren().addAll(places, kit);
    }

    private static VBox card(String key) {
        Label title = new Label(WindowWords.say(key));
        title.getStyleClass().add("strong");
        VBox card = new VBox(6, title);
        card.getStyleClass().add("card");
        return card;
    }

    private void kit(Kit kit, VBox card) {
        kit.vessels()
                .forEach(vessel -> card.getChildren().add(fact(vessel.name(), quantities.volume(vessel.volumeL()))));
        kit.trays().forEach(trays -> card.getChildren().add(fact(trays.name(), quantities.area(trays.totalAreaM2()))));
        kit.boxes().forEach(box -> card.getChildren().add(fact(box.name(), quantities.volume(box.volumeL()))));
        for (Heater heater : kit.heaters()) {
            String range = WindowWords.say(
                    heater.control().safeUnattended() ? "house.heater.safe" : "house.heater.watched",
                    quantities.temperature(heater.air().range().lowC()),
                    quantities.temperature(heater.air().range().highC()));
            card.getChildren().add(fact(heater.name(), range));
        }
        card.getChildren()
                .add(fact(
                        WindowWords.say("house.scale"),
                        WindowWords.say(
                                "house.scale.is",
                                quantities.mass(kit.scale().stepG() / 1000),
                                quantities.roughMass(kit.scale().capacityKg()))));
    }

    private String air(AirTemperature air) {
        if (air instanceof AirTemperature.Constant constant) return quantities.temperature(constant.airC());
        double low = Double.POSITIVE_INFINITY;
        double high = Double.NEGATIVE_INFINITY;
        String key = "house.air.daily";
        if (air instanceof AirTemperature.Daily daily) {
            low = daily.lowC();
            high = daily.highC();
        } else if (air instanceof AirTemperature.Dated dated) {
            for (AirTemperature.Daily daily : dated.days().values()) {
                low = Math.min(low, daily.lowC());
                high = Math.max(high, daily.highC());
            }
        } else if (air instanceof AirTemperature.Logged logged) {
            key = "house.air.logged";
            for (AirTemperature.Reading reading : logged.readings()) {
                low = Math.min(low, reading.airC());
                high = Math.max(high, reading.airC());
            }
        }
        return WindowWords.say(key, quantities.temperature(low), quantities.temperature(high));
    }

    private static Node fact(String name, String figure) {
        Label words = new Label(name);
        words.setWrapText(true);
        Label value = new Label(figure);
        value.setWrapText(true);
        value.getStyleClass().add("body-2");
        value.setMinHeight(Region.USE_PREF_SIZE);
        return new VBox(words, value);
    }
}
