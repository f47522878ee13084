package piecewright.desktop.house;

import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicInteger;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyStringProperty;
import javafx.beans.property.ReadOnlyStringWrapper;
import piecewright.app.HouseHours;
import piecewright.app.Workspace.Kept;
import piecewright.desktop.plan.Undoable;
import piecewright.desktop.plan.WishViewModel.Threads;
import piecewright.house.House;
import piecewright.house.Person;
import piecewright.store.StoreException;
import piecewright.text.DisplayUnits;

/** A household whose usual weeks are painted; every stroke is kept in its file. */
public final class HouseViewModel {
    private final Threads threads;
    private final DisplayUnits units;
    private final Undoable<Shown> shown;
    private final ReadOnlyStringWrapper note = new ReadOnlyStringWrapper("");
    private final AtomicInteger latest = new AtomicInteger();

    /** A household, whose week is painted, and that week. */
    record Shown(Path file, House house, String person, PaintedWeek week) {
        Shown withWeek(PaintedWeek changed) {
            return new Shown(file, house, person, changed);
        }

        Optional<Person> who() {
            return house.people().stream()
                    .filter(each -> each.name().equals(person))
                    .findFirst();
        }
    }

    public HouseViewModel(Kept<House> first, Threads threads, DisplayUnits units) {
        this.threads = threads;
        this.units = units;
        this.shown = new Undoable<>(shown(first, first.thing().people().get(0).name()));
        shown.valueProperty().addListener((property, before, now) -> keep(before, now));
    }

    private static Shown shown(Kept<House> kept, String person) {
        PaintedWeek week = kept.thing().people().stream()
                .filter(each -> each.name().equals(person))
                .findFirst()
                .map(each -> PaintedWeek.of(each.week()))
                .orElseGet(() -> PaintedWeek.of(java.util.Map.of()));
        return new Shown(kept.file(), kept.thing(), person, week);
    }

    ReadOnlyObjectProperty<Shown> shownProperty() {
        return shown.valueProperty();
    }

    ReadOnlyStringProperty noteProperty() {
        return note.getReadOnlyProperty();
    }

    DisplayUnits units() {
        return units;
    }

    void choose(Kept<House> kept) {
        shown.change(shown(kept, kept.thing().people().get(0).name()));
    }

    void choosePerson(String person) {
        Shown now = shown.get();
        now.house().people().stream()
                .filter(each -> each.name().equals(person))
                .findFirst()
                .ifPresent(
                        each -> shown.change(new Shown(now.file(), now.house(), person, PaintedWeek.of(each.week()))));
    }

    void paint(PaintedWeek week) {
        shown.change(shown.get().withWeek(week));
    }

    public void undo() {
        shown.undo();
    }

    public void redo() {
        shown.redo();
    }

    private void keep(Shown before, Shown now) {
        boolean painted = before.file().equals(now.file())
                && before.person().equals(now.person())
                && !before.week().equals(now.week());
        if (!painted) return;
        int ticket = latest.incrementAndGet();
        threads.background().execute(() -> {
            if (ticket != latest.get()) return;
            String trouble = "";
            try {
                HouseHours.changed(now.file(), now.person(), now.week().hours());
            } catch (StoreException failed) {
                trouble = String.valueOf(failed.getMessage());
            }
            String sentence = trouble;
            threads.ui().execute(() -> note.set(sentence));
        });
    }
}
