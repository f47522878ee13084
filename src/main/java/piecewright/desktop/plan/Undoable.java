package piecewright.desktop.plan;

import java.util.ArrayDeque;
import java.util.Deque;
import javafx.beans.property.ReadOnlyBooleanProperty;
import javafx.beans.property.ReadOnlyBooleanWrapper;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;

/** A value whose changes can be taken back and made again. */
public final class Undoable<T> {
    private static final int MOST = 200;

    private final ReadOnlyObjectWrapper<T> value;
    private final Deque<T> before = new ArrayDeque<>();
    private final Deque<T> after = new ArrayDeque<>();
    private final ReadOnlyBooleanWrapper undoable = new ReadOnlyBooleanWrapper();
    private final ReadOnlyBooleanWrapper redoable = new ReadOnlyBooleanWrapper();

    public Undoable(T first) {
        this.value = new ReadOnlyObjectWrapper<>(first);
    }

    public T get() {
        return value.get();
    }

    public ReadOnlyObjectProperty<T> valueProperty() {
        return value.getReadOnlyProperty();
    }

    public ReadOnlyBooleanProperty undoableProperty() {
        return undoable.getReadOnlyProperty();
    }

    public ReadOnlyBooleanProperty redoableProperty() {
        return redoable.getReadOnlyProperty();
    }

    /** A change to the same value is none. */
    public void change(T changed) {
        if (changed.equals(value.get())) return;
        before.push(value.get());
        if (before.size() > MOST) before.removeLast();
        after.clear();
        show(changed);
    }

    public void undo() {
        if (before.isEmpty()) return;
        after.push(value.get());
        show(before.pop());
    }

    public void redo() {
        if (after.isEmpty()) return;
        before.push(value.get());
        show(after.pop());
    }

    private void show(T shown) {
        value.set(shown);
        undoable.set(!before.isEmpty());
        redoable.set(!after.isEmpty());
    }
}
