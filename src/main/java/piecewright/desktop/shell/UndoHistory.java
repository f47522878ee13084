package piecewright.desktop.shell;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.function.Supplier;
import javafx.beans.property.ReadOnlyStringProperty;
import javafx.beans.property.ReadOnlyStringWrapper;

/** All that was done in the window, the last first, to be taken back and done again: one history for all screens. */
public final class UndoHistory {
    private static final int MOST = 200;

    private final Deque<Placed> done = new ArrayDeque<>();
    private final Deque<Placed> undone = new ArrayDeque<>();
    private final ReadOnlyStringWrapper undo = new ReadOnlyStringWrapper("");
    private final ReadOnlyStringWrapper redo = new ReadOnlyStringWrapper("");
    private Supplier<Runnable> whereabouts = () -> () -> {};

    /** One thing that was done. */
    public interface Step {
        /** What it was, in a few words. */
        String words();

        void undo();

        void redo();

        /** True when it can be taken back after the screens were made anew, too. */
        default boolean outlivesScreens() {
            return false;
        }
    }

    /** A step, and the way back to the screen where it was done. */
    private record Placed(Step step, Runnable back) {}

    /** Tells how to come back to the screen that is shown; taking something back shows where it was done. */
    public void from(Supplier<Runnable> shown) {
        whereabouts = shown;
    }

    /** Something was done; what was taken back before cannot be done again any more. */
    public void did(Step step) {
        done.push(new Placed(step, whereabouts.get()));
        if (done.size() > MOST) done.removeLast();
        undone.clear();
        tell();
    }

    /** Takes back what was done last; nothing where nothing was done. */
    public void undo() {
        if (done.isEmpty()) return;
        Placed last = done.pop();
        undone.push(last);
        tell();
        last.back().run();
        last.step().undo();
    }

    /** Does again what was taken back last. */
    public void redo() {
        if (undone.isEmpty()) return;
        Placed last = undone.pop();
        done.push(last);
        tell();
        last.back().run();
        last.step().redo();
    }

    /** A step that could not be taken back or done again is neither any more. */
    public void forget(Step step) {
        done.removeIf(each -> each.step() == step);
        undone.removeIf(each -> each.step() == step);
        tell();
    }

    /** The screens are made anew: what belongs to the old ones goes. */
    public void screensMadeAnew() {
        done.removeIf(each -> !each.step().outlivesScreens());
        undone.removeIf(each -> !each.step().outlivesScreens());
        tell();
    }

    /** What would be taken back; empty text for nothing. */
    public ReadOnlyStringProperty undoProperty() {
        return undo.getReadOnlyProperty();
    }

    /** What would be done again; empty text for nothing. */
    public ReadOnlyStringProperty redoProperty() {
        return redo.getReadOnlyProperty();
    }

    private void tell() {
        undo.set(done.isEmpty() ? "" : done.peek().step().words());
        redo.set(undone.isEmpty() ? "" : undone.peek().step().words());
    }
}
