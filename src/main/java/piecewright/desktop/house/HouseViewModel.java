package piecewright.desktop.house;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicInteger;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyStringProperty;
import javafx.beans.property.ReadOnlyStringWrapper;
import piecewright.app.Workspace.Kept;
import piecewright.desktop.plan.Undoable;
import piecewright.desktop.plan.WishViewModel.Threads;
import piecewright.desktop.shell.UndoHistory;
import piecewright.house.House;
import piecewright.house.NightActs;
import piecewright.house.Person;
import piecewright.store.HouseText;
import piecewright.store.HouseText.Flag;
import piecewright.store.HouseText.Thing;
import piecewright.store.StoreException;
import piecewright.text.DisplayUnits;
import piecewright.text.UnreadableException;
import piecewright.text.WindowWords;

/** A household whose hours are painted and whose places and kit are typed; every change is kept in its file. */
public final class HouseViewModel {
    private static final int MOST_DAYS = 60;

    private final Threads threads;
    private final DisplayUnits units;
    private final HouseFigures figures;
    private final Undoable<Shown> shown;
    private final ReadOnlyStringWrapper note = new ReadOnlyStringWrapper("");
    private final AtomicInteger latest = new AtomicInteger();
    private String onDisk;

    /** A household, whose week is painted, and that week. */
    record Shown(HouseText text, House house, String person, PaintedWeek week) {
        Path file() {
            return text.file();
        }

        Optional<Person> who() {
            return house.people().stream()
                    .filter(each -> each.name().equals(person))
                    .findFirst();
        }

        /** Where that person stands in the file. */
        int personIndex() {
            return house.people().stream().map(Person::name).toList().indexOf(person);
        }
    }

    private interface Change {
        HouseText of(HouseText text) throws StoreException, UnreadableException;
    }

    public HouseViewModel(Kept<House> first, Threads threads, DisplayUnits units, UndoHistory history)
            throws StoreException {
        this.threads = threads;
        this.units = units;
        this.figures = new HouseFigures(units);
        HouseText text = HouseText.read(first.file());
        this.onDisk = text.text();
        this.shown = new Undoable<>(shown(text, ""), history, WindowWords.say("undo.of.house"));
        shown.valueProperty().addListener((property, before, now) -> keep(now));
    }

    /** The household of a text; the first person where there is none of that name. */
    private static Shown shown(HouseText text, String person) throws StoreException {
        House house = text.house();
        Person who = house.people().stream()
                .filter(each -> each.name().equals(person))
                .findFirst()
                .orElse(house.people().get(0));
        return new Shown(text, house, who.name(), PaintedWeek.of(who.week()));
    }

    /** The same household changed: somebody who came is looked at, somebody who was renamed still is. */
    private static Shown shown(HouseText text, Shown before) throws StoreException {
        List<Person> people = text.house().people();
        int had = before.house().people().size();
        if (people.size() > had)
            return shown(text, people.get(people.size() - 1).name());
        boolean same = people.size() == had;
        return shown(text, same ? people.get(before.personIndex()).name() : before.person());
    }

    ReadOnlyObjectProperty<Shown> shownProperty() {
        return shown.valueProperty();
    }

    /** What went wrong with the file; empty text when nothing did. */
    ReadOnlyStringProperty noteProperty() {
        return note.getReadOnlyProperty();
    }

    DisplayUnits units() {
        return units;
    }

    HouseFigures figures() {
        return figures;
    }

    void choose(Kept<House> kept) {
        telling(() -> shown.change(opened(kept.file(), "")));
    }

    /** Shows what another program wrote into the file since. */
    public void reread() {
        telling(() -> {
            Shown now = shown.get();
            HouseText there = HouseText.read(now.file());
            if (there.text().equals(onDisk)) return;
            onDisk = there.text();
            shown.change(shown(there, now.person()));
        });
    }

    private Shown opened(Path file, String person) throws StoreException {
        HouseText text = HouseText.read(file);
        onDisk = text.text();
        return shown(text, person);
    }

    private interface Task {
        void run() throws StoreException;
    }

    private void telling(Task task) {
        try {
            task.run();
            note.set("");
        } catch (StoreException failed) {
            note.set(String.valueOf(failed.getMessage()));
        }
    }

    void choosePerson(String person) {
        Shown now = shown.get();
        now.house().people().stream()
                .filter(each -> each.name().equals(person))
                .findFirst()
                .ifPresent(
                        each -> shown.change(new Shown(now.text(), now.house(), person, PaintedWeek.of(each.week()))));
    }

    void paint(PaintedWeek week) {
        Shown now = shown.get();
        if (week.equals(now.week())) return;
        note.set(changed(text -> text.withWeek(now.person(), week.hours())));
    }

    /** One value as somebody types it; what is wrong with it, or nothing. */
    String type(String pointer, HouseField field, String typed) {
        return changed(text -> {
            if (typed.isBlank() && field.need() == HouseField.Need.OPTIONAL) return text.without(pointer);
            return switch (field.kind()) {
                case NAME, PLACE -> text.withText(pointer, typed.strip());
                default -> text.withNumber(pointer, figures.read(field.kind(), typed));
            };
        });
    }

    String set(String pointer, Flag flag) {
        return changed(text -> text.withFlag(pointer, flag));
    }

    /** How warm a place is, day in day out, or from a logger's file; what is wrong with it, or nothing. */
    String typeAir(int place, String typed) {
        return changed(text -> {
            HouseFigures.Air air = figures.air(typed);
            return text.withAir(place, air.figures(), air.loggerCsv());
        });
    }

    String typeWater(String typed) {
        return changed(text -> text.withNumber("/steepWaterC", figures.read(HouseField.Kind.TEMPERATURE, typed)));
    }

    /** One more thing of a kind. */
    String add(Thing thing, String name) {
        return changed(text -> text.added(thing, name));
    }

    String remove(String pointer) {
        return changed(text -> text.without(pointer));
    }

    /** Hours of each of some dated days, such as "07:30-22:30"; none for away. */
    String except(LocalDate first, LocalDate last, String typed) {
        if (last.isBefore(first) || first.plusDays(MOST_DAYS).isBefore(last)) {
            return WindowWords.say("house.days-range", Integer.toString(MOST_DAYS));
        }
        List<String> hours = typed.isBlank() ? List.of() : List.of(typed.strip().split("\\s*,\\s*"));
        return changed(text -> {
            HouseText changed = text;
            for (LocalDate day = first; !day.isAfter(last); day = day.plusDays(1)) {
                changed = changed.withException(shown.get().personIndex(), day, hours);
            }
            return changed;
        });
    }

    /** What is typed of the nights. */
    enum Night {
        MOST,
        FROM,
        UNTIL
    }

    /** One figure of the nights as somebody types it; what is wrong with it, or nothing. */
    String typeNight(Night what, String typed) {
        return changed(
                text -> text.withNights(figures.nights(shown.get().house().nights(), what, typed)));
    }

    String shownNight(Night what) {
        NightActs nights = shown.get().house().nights();
        return switch (what) {
            case MOST -> Integer.toString(nights.most());
            case FROM -> nights.from().toString();
            case UNTIL -> nights.until().toString();
        };
    }

    private String changed(Change change) {
        try {
            Shown now = shown.get();
            HouseText text = change.of(now.text());
            if (!text.equals(now.text())) shown.change(shown(text, now));
            return "";
        } catch (StoreException refused) {
            return String.valueOf(refused.getMessage()).replace(shown.get().file() + ": ", "");
        } catch (UnreadableException unreadable) {
            return String.valueOf(unreadable.getMessage());
        }
    }

    private void keep(Shown now) {
        if (now.text().text().equals(onDisk)) return;
        onDisk = now.text().text();
        int ticket = latest.incrementAndGet();
        threads.background().execute(() -> {
            if (ticket != latest.get()) return;
            String trouble = "";
            try {
                now.text().write();
            } catch (StoreException failed) {
                trouble = String.valueOf(failed.getMessage());
            }
            String sentence = trouble;
            threads.ui().execute(() -> note.set(sentence));
        });
    }

    /** Values of a thing by their keys, for a summary. */
    Map<String, String> words(Thing thing, int index) {
        Map<String, String> words = new java.util.LinkedHashMap<>();
        for (HouseField field : HouseField.of(thing)) {
            words.put(field.key(), shownValue(thing.list() + "/" + index + "/" + field.key(), field));
        }
        return words;
    }

    /** A value as it is shown: a figure in the person's unit, a text as it was written. */
    String shownValue(String pointer, HouseField field) {
        HouseText text = shown.get().text();
        String written = text.value(pointer).orElse("");
        return text.isNumber(pointer) ? figures.shown(field.kind(), Double.parseDouble(written)) : written;
    }
}
