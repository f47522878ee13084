package piecewright.desktop.plan;

import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import piecewright.desktop.shell.UndoHistory;

/** A value whose changes can be taken back and made again by the history of the window. */
public final class Undoable<T> {
    private final ReadOnlyObjectWrapper<T> value;
    private final UndoHistory history;
    private final String words;
    private Runnable taken = () -> {};

    /**
     * @param words what a change of it is, as the history says it
     */
    public Undoable(T first, UndoHistory history, String words) {
        this.value = new ReadOnlyObjectWrapper<>(first);
        this.history = history;
        this.words = words;
    }

    public T get() {
        return value.get();
    }

    public ReadOnlyObjectProperty<T> valueProperty() {
        return value.getReadOnlyProperty();
    }

    /** Done before a change is taken back or made again. */
    void whenTaken(Runnable first) {
        taken = first;
    }

    /** A change to the same value is none. */
    public void change(T changed) {
        T before = value.get();
        if (changed.equals(before)) return;
        history.did(new Change(before, changed));
        value.set(changed);
    }

    private final class Change implements UndoHistory.Step {
        private final T before;
        private final T after;

        Change(T before, T after) {
            this.before = before;
            this.after = after;
        }

        @Override
        public String words() {
            return words;
        }

        @Override
        public void undo() {
            taken.run();
            value.set(before);
        }

        @Override
        public void redo() {
            taken.run();
            value.set(after);
        }
    }
}
