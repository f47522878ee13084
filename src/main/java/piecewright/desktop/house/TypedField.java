package piecewright.desktop.house;

import java.util.function.Supplier;
import java.util.function.UnaryOperator;
import javafx.scene.control.Label;
import javafx.scene.control.TextField;
import javafx.scene.layout.VBox;

/** A value typed in place, its name above it and what is wrong with it below; what was typed stays until it is right. */
final class TypedField {
    private final TextField field = new TextField();
    private final Label note = new Label();
    private final Supplier<String> shown;
    private final UnaryOperator<String> typed;
    private final VBox node;

    /**
     * @param shown the value as it stands
     * @param typed takes a text and tells what is wrong with it, or nothing
     */
    TypedField(String id, String name, Supplier<String> shown, UnaryOperator<String> typed) {
        this.shown = shown;
        this.typed = typed;
        Label label = new Label(name);
        label.getStyleClass().add("caption");
        label.setWrapText(true);
        label.setLabelFor(field);
        field.setId(id);
        field.setAccessibleText(name);
        field.setText(shown.get());
        field.setOnAction(event -> take());
        field.focusedProperty().addListener((focused, before, now) -> {
            if (!now && !field.getText().equals(shown.get())) take();
        });
        note.setId(id + "-note");
        note.setWrapText(true);
        note.getStyleClass().add("field-note");
        note.managedProperty().bind(note.textProperty().isNotEmpty());
        node = new VBox(2, label, field, note);
    }

    VBox node() {
        return node;
    }

    private void take() {
        String wrong = typed.apply(field.getText());
        note.setText(wrong);
        if (!wrong.isEmpty()) field.setAccessibleHelp(wrong);
        if (wrong.isEmpty()) field.setText(shown.get());
    }

    /** Shows the value as it stands now, unless something wrong is being typed. */
    void update() {
        if (note.getText().isEmpty() && !field.isFocused()) field.setText(shown.get());
    }
}
