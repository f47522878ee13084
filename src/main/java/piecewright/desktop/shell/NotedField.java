package piecewright.desktop.shell;

import javafx.scene.control.Label;
import javafx.scene.control.TextField;
import javafx.scene.layout.VBox;

/** A field with its name above it, and below it what is wrong with what was typed, which stays as it was. */
public final class NotedField {
    private final TextField field = new TextField();
    private final Label note = new Label();
    private final VBox node;

    public NotedField(String id, String name) {
        Label label = new Label(name);
        label.getStyleClass().add("caption");
        label.setWrapText(true);
        label.setLabelFor(field);
        field.setId(id);
        field.setAccessibleText(name);
        note.setId(id + "-note");
        note.setWrapText(true);
        note.setMinHeight(Label.USE_PREF_SIZE);
        note.getStyleClass().add("field-note");
        note.managedProperty().bind(note.textProperty().isNotEmpty());
        note.visibleProperty().bind(note.managedProperty());
        node = new VBox(2, label, field, note);
    }

    public VBox node() {
        return node;
    }

    public TextField field() {
        return field;
    }

    /** Whether something typed is wrong. */
    public boolean isWrong() {
        return !note.getText().isEmpty();
    }

    /** Tells what is wrong, or nothing. */
    public void say(String wrong) {
        note.setText(wrong);
        field.setAccessibleHelp(wrong);
    }
}
