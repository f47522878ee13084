package piecewright.desktop.house;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.CheckBox;
import javafx.scene.control.ChoiceBox;
import javafx.scene.control.Label;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import piecewright.desktop.house.HouseField.Kind;
import piecewright.house.Place;
import piecewright.store.HouseText.Flag;
import piecewright.store.HouseText.Thing;
import piecewright.text.WindowWords;

/** Every value of one place or piece of kit, to be typed, chosen or ticked. */
final class ThingEditor {
    private final HouseViewModel model;
    private final Thing thing;
    private final int index;
    private final VBox node = new VBox(8);
    private final List<Runnable> updates = new ArrayList<>();

    ThingEditor(HouseViewModel model, Thing thing, int index) {
        this.model = model;
        this.thing = thing;
        this.index = index;
        node.getStyleClass().add("thing-editor");
        FlowPane fields = new FlowPane(12, 8);
        for (HouseField field : HouseField.of(thing)) fields.getChildren().add(control(field));
        if (thing == Thing.PLACE) fields.getChildren().add(1, air());
        Button remove = new Button(WindowWords.say("house.remove"));
        remove.setId(id("remove"));
        remove.getStyleClass().add("quiet");
        Label note = new Label();
        note.setWrapText(true);
        note.getStyleClass().add("field-note");
        note.managedProperty().bind(note.textProperty().isNotEmpty());
        remove.setOnAction(event -> note.setText(model.remove(pointer(""))));
        node.getChildren().addAll(fields, remove, note);
    }

    Node node() {
        return node;
    }

    void update() {
        updates.forEach(Runnable::run);
    }

    private String pointer(String key) {
        return thing.list() + "/" + index + (key.isEmpty() ? "" : "/" + key);
    }

    private String id(String key) {
        return "house" + pointer(key).replace('/', '-');
    }

    private Node control(HouseField field) {
        return switch (field.kind()) {
            case FLAG -> flag(field);
            case PLACE -> place(field);
            default -> typed(field);
        };
    }

    private Node typed(HouseField field) {
        String pointer = pointer(field.key());
        TypedField typed = new TypedField(
                id(field.key()),
                WindowWords.say(field.words()),
                () -> model.shownValue(pointer, field),
                text -> model.type(pointer, field, text));
        updates.add(typed::update);
        typed.node().getStyleClass().add(field.kind() == Kind.NAME ? "wide-field" : "narrow-field");
        return typed.node();
    }

    private Node air() {
        TypedField typed = new TypedField(
                id("air"), WindowWords.say("house.field.air"), this::shownAir, text -> model.typeAir(index, text));
        updates.add(typed::update);
        typed.node().getStyleClass().add("wide-field");
        return typed.node();
    }

    private String shownAir() {
        List<Place> places = model.shownProperty().get().house().places();
        if (index >= places.size()) return "";
        Optional<String> logger = model.shownProperty().get().text().value(pointer("air/loggerCsv"));
        return model.figures().shown(places.get(index).air(), logger);
    }

    private Node flag(HouseField field) {
        String pointer = pointer(field.key());
        CheckBox box = new CheckBox(WindowWords.say(field.words()));
        box.setId(id(field.key()));
        box.setWrapText(true);
        Runnable update = () -> box.setSelected(model.shownProperty()
                .get()
                .text()
                .value(pointer)
                .filter("true"::equals)
                .isPresent());
        update.run();
        updates.add(update);
        box.setOnAction(event -> model.set(pointer, box.isSelected() ? Flag.YES : Flag.NO));
        box.getStyleClass().add("wide-field");
        return box;
    }

    private Node place(HouseField field) {
        String pointer = pointer(field.key());
        ChoiceBox<String> choice = new ChoiceBox<>();
        choice.setId(id(field.key()));
        choice.setAccessibleText(WindowWords.say(field.words()));
        choice.setMaxWidth(Double.MAX_VALUE);
        choice.getItems()
                .setAll(model.shownProperty().get().house().places().stream()
                        .map(Place::name)
                        .toList());
        Runnable update = () -> choice.setValue(model.shownValue(pointer, field));
        update.run();
        updates.add(update);
        choice.setOnAction(event -> {
            String chosen = choice.getValue();
            if (chosen != null && !chosen.equals(model.shownValue(pointer, field))) {
                model.type(pointer, field, chosen);
            }
        });
        Label label = new Label(WindowWords.say(field.words()));
        label.getStyleClass().add("caption");
        label.setMinHeight(Region.USE_PREF_SIZE);
        VBox box = new VBox(2, label, choice);
        box.getStyleClass().add("narrow-field");
        return box;
    }
}
