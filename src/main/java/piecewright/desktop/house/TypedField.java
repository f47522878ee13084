package piecewright.desktop.house;

import java.util.function.Supplier;
import java.util.function.UnaryOperator;
import javafx.scene.control.TextField;
import javafx.scene.layout.VBox;
import piecewright.desktop.shell.NotedField;

/** A value typed in place and kept as soon as it is right. */
final class TypedField {
    private final NotedField noted;
    private final Supplier<String> shown;
    private final UnaryOperator<String> typed;

    /**
     * @param shown the value as it stands
     * @param typed takes a text and tells what is wrong with it, or nothing
     */
    TypedField(String id, String name, Supplier<String> shown, UnaryOperator<String> typed) {
        this.noted = new NotedField(id, name);
        this.shown = shown;
        this.typed = typed;
        TextField field = noted.field();
        field.setText(shown.get());
        field.setOnAction(event -> take());
        field.focusedProperty().addListener((focused, before, now) -> {
            if (!now && !field.getText().equals(shown.get())) take();
        });
    }

    VBox node() {
        return noted.node();
    }

    private void take() {
        String wrong = typed.apply(noted.field().getText());
        noted.say(wrong);
        if (wrong.isEmpty()) noted.field().setText(shown.get());
    }

    /** Shows the value as it stands now, unless something wrong is being typed. */
    void update() {
        if (!noted.isWrong() && !noted.field().isFocused()) noted.field().setText(shown.get());
    }
}
