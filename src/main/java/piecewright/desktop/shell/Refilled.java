package piecewright.desktop.shell;

import javafx.scene.control.TextInputControl;

/**
 * A field that shows a value which may change under somebody's hands: what they are typing is never replaced by an
 * answer that comes meanwhile, and what stands there already keeps its caret and what is selected.
 */
public final class Refilled {
    private final TextInputControl field;
    private String shown = "";

    public Refilled(TextInputControl field) {
        this.field = field;
    }

    /** Shows the value, unless something else is being typed. */
    public void show(String text) {
        boolean typing = field.isFocused() && !field.getText().equals(shown);
        if (typing) return;
        shown = text;
        if (!field.getText().equals(text)) field.setText(text);
    }

    /** Takes what was typed for the value it showed, so that the next one is shown. */
    public void taken() {
        shown = field.getText();
    }
}
