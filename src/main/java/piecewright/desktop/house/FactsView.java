package piecewright.desktop.house;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.TitledPane;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import piecewright.desktop.house.HouseViewModel.Night;
import piecewright.house.AirTemperature;
import piecewright.house.House;
import piecewright.house.Person;
import piecewright.house.Place;
import piecewright.store.HouseText.Thing;
import piecewright.text.WindowWords;

/** Places and kit of a house: a line each, which opens to every value of it. */
final class FactsView {
    private final HouseViewModel model;
    private final VBox node = new VBox(12);
    private final List<Runnable> updates = new ArrayList<>();
    private String laidOut = "";
    private String open = "";

    FactsView(HouseViewModel model) {
        this.model = model;
        model.shownProperty().addListener((shown, before, now) -> show());
        show();
    }

    VBox node() {
        return node;
    }

    /** Lays everything out anew only where things came or went, so that what is being typed keeps the caret. */
    private void show() {
        String wanted = layout();
        if (!wanted.equals(laidOut)) {
            laidOut = wanted;
            updates.clear();
            node.getChildren().setAll(people(), places(), kit());
        }
        updates.forEach(Runnable::run);
    }

    private String layout() {
        HouseViewModel.Shown shown = model.shownProperty().get();
        StringBuilder words = new StringBuilder(shown.file().toString());
        for (Thing thing : Thing.values()) words.append(' ').append(shown.text().size(thing.list()));
        shown.house().places().forEach(place -> words.append('\n').append(place.name()));
        return words.toString();
    }

    private Node people() {
        VBox card = card("house.people", Thing.PERSON);
        things(card, Thing.PERSON);
        FlowPane nights = new FlowPane(12, 8);
        for (Night what : Night.values()) {
            String key = what.name().toLowerCase(Locale.ROOT);
            TypedField typed = new TypedField(
                    "house-night-" + key,
                    WindowWords.say("house.night." + key),
                    () -> model.shownNight(what),
                    text -> model.typeNight(what, text));
            typed.node().getStyleClass().add("third-field");
            updates.add(typed::update);
            nights.getChildren().add(typed.node());
        }
        Label hint = new Label(WindowWords.say("house.night.hint"));
        hint.setWrapText(true);
        hint.setMinHeight(Region.USE_PREF_SIZE);
        hint.getStyleClass().add("caption");
        card.getChildren().addAll(nights, hint);
        return card;
    }

    private Node places() {
        VBox card = card("house.places", Thing.PLACE);
        TypedField water = new TypedField(
                "house-water",
                WindowWords.say("house.water"),
                () -> model.figures()
                        .shown(
                                HouseField.Kind.TEMPERATURE,
                                model.shownProperty().get().house().steepWaterC()),
                model::typeWater);
        updates.add(water::update);
        things(card, Thing.PLACE);
        card.getChildren().add(water.node());
        return card;
    }

    private Node kit() {
        VBox card = card("house.kit", Thing.VESSEL, Thing.TRAYS, Thing.BOX, Thing.HEATER);
        for (Thing thing : List.of(Thing.VESSEL, Thing.TRAYS, Thing.BOX, Thing.HEATER)) things(card, thing);
        HBox scale = new HBox(12, scale("stepG"), scale("capacityKg"));
        card.getChildren().add(scale);
        return card;
    }

    private Node scale(String key) {
        String pointer = "/kit/scale/" + key;
        HouseField field = new HouseField(key, HouseField.Kind.FIGURE, HouseField.Need.NEEDED);
        TypedField typed = new TypedField(
                "house-scale-" + key,
                WindowWords.say(field.words()),
                () -> model.shownValue(pointer, field),
                text -> model.type(pointer, field, text));
        updates.add(typed::update);
        HBox.setHgrow(typed.node(), Priority.ALWAYS);
        return typed.node();
    }

    private VBox card(String key, Thing... kinds) {
        Label title = new Label(WindowWords.say(key));
        title.getStyleClass().add("strong");
        Region gap = new Region();
        HBox.setHgrow(gap, Priority.ALWAYS);
        HBox head = new HBox(4, title, gap);
        head.getStyleClass().add("led");
        for (Thing kind : kinds) head.getChildren().add(add(kind));
        VBox card = new VBox(6, head);
        card.getStyleClass().add("card");
        return card;
    }

    private Node add(Thing thing) {
        String key = thing.name().toLowerCase(Locale.ROOT);
        Button add = new Button(WindowWords.say("house.add." + key));
        add.setId("house-add-" + key);
        add.setAccessibleText(WindowWords.say("house.add.spoken", WindowWords.say("house.new." + key)));
        add.setMinWidth(Region.USE_PREF_SIZE);
        add.getStyleClass().add("quiet");
        add.setOnAction(event -> {
            int size = model.shownProperty().get().text().size(thing.list());
            open = thing.list() + "/" + size;
            model.add(thing, WindowWords.say("house.new." + key));
        });
        return add;
    }

    private void things(VBox card, Thing thing) {
        int size = model.shownProperty().get().text().size(thing.list());
        for (int index = 0; index < size; index++) card.getChildren().add(thing(thing, index));
    }

    private Node thing(Thing thing, int index) {
        String pointer = thing.list() + "/" + index;
        ThingEditor editor = new ThingEditor(model, thing, index);
        TitledPane pane = new TitledPane("", editor.node());
        pane.setId("thing" + pointer.replace('/', '-'));
        pane.setAnimated(false);
        pane.setExpanded(pointer.equals(open));
        pane.getStyleClass().add("thing");
        pane.expandedProperty().addListener((expanded, before, now) -> open = now ? pointer : "");
        updates.add(editor::update);
        updates.add(() -> pane.setText(summary(thing, index)));
        return pane;
    }

    private String summary(Thing thing, int index) {
        Map<String, String> words = model.words(thing, index);
        String name = words.getOrDefault("name", "");
        if (thing == Thing.PERSON) return WindowWords.say("house.line", name, week(index));
        if (thing == Thing.PLACE) return WindowWords.say("house.line", name, air(index));
        if (thing == Thing.HEATER) {
            return WindowWords.say("house.line", name, words.get("holdsC/0") + "–" + words.get("holdsC/1"));
        }
        String figures = words.entrySet().stream()
                .filter(each -> List.of("volumeL", "areaM2").contains(each.getKey()))
                .map(Map.Entry::getValue)
                .collect(Collectors.joining(", "));
        String count =
                Optional.ofNullable(words.get("count")).map(n -> n + " × ").orElse("");
        return WindowWords.say("house.line", name, count + figures);
    }

    /** Hours of somebody's usual week. */
    private String week(int index) {
        List<Person> people = model.shownProperty().get().house().people();
        if (index >= people.size()) return "";
        PaintedWeek week = PaintedWeek.of(people.get(index).week());
        return WindowWords.say("house.week-hours", Long.toString(Math.round(week.freeHours())));
    }

    private String air(int index) {
        House house = model.shownProperty().get().house();
        if (index >= house.places().size()) return "";
        Place place = house.places().get(index);
        if (!(place.air() instanceof AirTemperature.Logged logged)) {
            return model.figures().shown(place.air(), Optional.empty());
        }
        double low = logged.readings().stream()
                .mapToDouble(AirTemperature.Reading::airC)
                .min()
                .orElse(0);
        double high = logged.readings().stream()
                .mapToDouble(AirTemperature.Reading::airC)
                .max()
                .orElse(0);
        return WindowWords.say("house.air.logged", model.figures().span(low, high));
    }
}
