package piecewright.desktop.colour;

import java.time.Duration;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.concurrent.atomic.AtomicInteger;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.beans.property.ReadOnlyStringProperty;
import javafx.beans.property.ReadOnlyStringWrapper;
import piecewright.app.ColourChoice;
import piecewright.colour.ColourBand;
import piecewright.colour.EnzymeBand;
import piecewright.desktop.colour.ColourField.Barred;
import piecewright.desktop.colour.ColourField.Point;
import piecewright.desktop.plan.Undoable;
import piecewright.desktop.plan.WishViewModel.Threads;
import piecewright.desktop.shell.UndoHistory;
import piecewright.house.House;
import piecewright.process.kiln.OvenLimit;
import piecewright.style.MaltStyle;
import piecewright.text.ColourPage;
import piecewright.text.DisplayUnits;
import piecewright.text.QuantityFormat;
import piecewright.text.QuantityParser;
import piecewright.text.UnreadableException;
import piecewright.text.WindowWords;

/** A colour sought on the map of a style and a kit. */
public final class ColourViewModel {
    private static final double DARKEST_EBC = 1600;

    private final List<MaltStyle> styles;
    private final DisplayUnits units;
    private final Threads threads;
    private final QuantityFormat quantities;
    private final Undoable<Sought> sought;
    private final ReadOnlyObjectWrapper<Optional<Shown>> shown = new ReadOnlyObjectWrapper<>(Optional.empty());
    private final ReadOnlyObjectWrapper<Ways> ways = new ReadOnlyObjectWrapper<>(Ways.nothing());
    private final ReadOnlyStringWrapper note = new ReadOnlyStringWrapper("");
    private final AtomicInteger latest = new AtomicInteger();

    /**
     * What is asked.
     *
     * @param point chosen cure; where there is none yet the one that gives the colour in the style's middle hours
     */
    public record Sought(MaltStyle style, House house, double colourEbc, Optional<Point> point) {
        Sought withPoint(Point changed, double changedEbc) {
            return new Sought(style, house, changedEbc, Optional.of(changed));
        }
    }

    /** The field of what is asked, and where on it the chosen cure lies. */
    record Shown(Sought sought, ColourField field, Optional<Point> point) {}

    public ColourViewModel(
            List<MaltStyle> styles, Sought first, Threads threads, DisplayUnits units, UndoHistory history) {
        this.styles = List.copyOf(styles);
        this.units = units;
        this.threads = threads;
        this.quantities = new QuantityFormat(units);
        this.sought = new Undoable<>(first, history, WindowWords.say("undo.of.colour"));
        sought.valueProperty().addListener((property, before, now) -> changed(before, now));
        ask();
    }

    public ReadOnlyObjectProperty<Sought> soughtProperty() {
        return sought.valueProperty();
    }

    ReadOnlyObjectProperty<Optional<Shown>> shownProperty() {
        return shown.getReadOnlyProperty();
    }

    /** How each style reaches the colour. */
    ReadOnlyObjectProperty<Ways> waysProperty() {
        return ways.getReadOnlyProperty();
    }

    /**
     * How styles come to the colour or do not, a sentence each.
     *
     * @param own of the style that is asked for
     */
    record Ways(String own, List<String> reached, List<String> unreached) {
        Ways {
            reached = List.copyOf(reached);
            unreached = List.copyOf(unreached);
        }

        static Ways nothing() {
            return new Ways("", List.of(), List.of());
        }
    }

    /** What is wrong with the colour as typed; empty text when nothing is. */
    ReadOnlyStringProperty noteProperty() {
        return note.getReadOnlyProperty();
    }

    List<MaltStyle> styles() {
        return styles;
    }

    /** By how much one key moves the time: a quarter of an hour of a cure, a minute of a roast. */
    double stepHours() {
        boolean roast = shown.get().filter(now -> now.field().isRoast()).isPresent();
        return roast ? 1 / 60.0 : 0.25;
    }

    void chooseStyle(MaltStyle style) {
        sought.change(new Sought(style, sought.get().house(), sought.get().colourEbc(), Optional.empty()));
    }

    public void chooseHouse(House house) {
        sought.change(new Sought(sought.get().style(), house, sought.get().colourEbc(), Optional.empty()));
    }

    /** A colour as somebody types it, on any scale. */
    void typeColour(String typed) {
        try {
            double colourEbc = QuantityParser.forPerson(units).colourEbc(typed);
            if (!(colourEbc > 0 && colourEbc <= DARKEST_EBC)) {
                note.set(WindowWords.say("colour.range", quantities.colour(DARKEST_EBC)));
                return;
            }
            seek(colourEbc);
        } catch (UnreadableException unreadable) {
            note.set(String.valueOf(unreadable.getMessage()));
        }
    }

    /** Looks for a colour, EBC. */
    void seek(double colourEbc) {
        note.set("");
        sought.change(new Sought(sought.get().style(), sought.get().house(), colourEbc, Optional.empty()));
    }

    /** Takes a point of the map; the colour becomes what it gives. */
    void choose(Point point) {
        shown.get().ifPresent(known -> {
            Point on = known.field().onMap(point);
            sought.change(sought.get().withPoint(on, known.field().colourEbc(on)));
        });
    }

    /** Moves the chosen point by a quarter hour or a degree. */
    void nudge(double byHours, double byC) {
        shown.get().flatMap(Shown::point).ifPresent(at -> choose(new Point(at.hours() + byHours, at.heatC() + byC)));
    }

    /** Moves along the curve of the colour sought. */
    void slide(double byHours) {
        shown.get()
                .ifPresent(known -> known.point().ifPresent(at -> {
                    double hours = known.field()
                            .onMap(new Point(at.hours() + byHours, at.heatC()))
                            .hours();
                    OptionalDouble heatC = known.field().heatC(sought.get().colourEbc(), hours);
                    heatC.ifPresent(c -> sought.change(sought.get()
                            .withPoint(new Point(hours, c), sought.get().colourEbc())));
                }));
    }

    private void changed(Sought before, Sought now) {
        boolean sameField = before.style().equals(now.style()) && before.house().equals(now.house());
        if (sameField && shown.get().isPresent()) {
            shown.set(Optional.of(shown(now, shown.get().get().field())));
            if (now.colourEbc() != before.colourEbc()) askOthers(latest.incrementAndGet(), now);
        } else {
            ask();
        }
    }

    private static Shown shown(Sought now, ColourField field) {
        if (now.point().isPresent()) return new Shown(now, field, now.point());
        ColourField.Usual usual = field.usual();
        double middle = (usual.leastHours() + usual.mostHours()) / 2;
        return new Shown(now, field, nearest(Contour.of(field, now.colourEbc()), middle));
    }

    /** The point of a curve whose hours are nearest. */
    private static Optional<Point> nearest(Contour contour, double hours) {
        return contour.points().stream().min(Comparator.comparingDouble(point -> Math.abs(point.hours() - hours)));
    }

    private void ask() {
        int ticket = latest.incrementAndGet();
        Sought asked = sought.get();
        threads.background().execute(() -> {
            if (ticket != latest.get()) return;
            ColourField field = ColourField.of(asked.style(), asked.house());
            threads.ui().execute(() -> {
                if (ticket == latest.get()) shown.set(Optional.of(shown(asked, field)));
            });
        });
        askOthers(ticket, asked);
    }

    private void askOthers(int ticket, Sought asked) {
        threads.background().execute(() -> {
            if (ticket != latest.get()) return;
            ColourChoice choice = ColourChoice.of(asked.colourEbc(), styles, Optional.of(asked.house()));
            Ways found = ways(choice, asked.style());
            threads.ui().execute(() -> {
                if (ticket == latest.get()) ways.set(found);
            });
        });
    }

    private Ways ways(ColourChoice choice, MaltStyle asked) {
        ColourPage page = new ColourPage(units);
        String own = "";
        List<String> reached = new ArrayList<>();
        List<String> unreached = new ArrayList<>();
        for (ColourChoice.Way way : choice.ways()) {
            String sentence = page.way(way.style().title(), way.reach())
                    .replaceAll("\\s+", " ")
                    .strip();
            if (way.style().equals(asked)) own = sentence;
            else if (way.reach().isReached()) reached.add(sentence);
            else unreached.add(sentence);
        }
        return new Ways(own, reached, unreached);
    }

    /** What the chosen cure gives, or why nothing on the map does. */
    String verdict() {
        if (shown.get().isEmpty()) return WindowWords.say("working");
        Shown now = shown.get().get();
        if (now.point().isEmpty()) {
            return WindowWords.say(
                    "colour.out",
                    quantities.colour(now.sought().colourEbc()),
                    now.sought().style().title());
        }
        Point at = now.point().get();
        double colourEbc = now.field().colourEbc(at);
        ColourBand band = now.field().band(colourEbc);
        if (now.field().isRoast()) {
            return WindowWords.say(
                    "colour.verdict.roast",
                    hours(at.hours()),
                    quantities.temperature(at.heatC()),
                    quantities.colour(colourEbc),
                    quantities.colour(band.lowEbc()),
                    quantities.colour(band.highEbc()));
        }
        EnzymeBand enzymes = EnzymeBand.of(now.field().enzymeFraction(at));
        return WindowWords.say(
                "colour.verdict",
                hours(at.hours()),
                quantities.temperature(at.heatC()),
                quantities.colour(colourEbc),
                quantities.colour(band.lowEbc()),
                quantities.colour(band.highEbc()),
                quantities.percent(enzymes.lowFraction()),
                quantities.percent(enzymes.highFraction()),
                quantities.percent(now.field().enzymeFraction(at)));
    }

    /** Why the chosen cure is out of the question; empty text when it is not. */
    String warning() {
        Optional<Barred> barred =
                shown.get().flatMap(now -> now.point().flatMap(at -> now.field().barred(at)));
        return barred.map(why -> barredWords(why, shown.get().get().field())).orElse("");
    }

    String barredWords(Barred why, ColourField field) {
        return switch (why) {
            case TOO_HOT -> WindowWords.say("colour.barred.hot", quantities.temperature(OvenLimit.CEILING_C));
            case KIT_TOO_COOL -> tooCool(field);
            case STAYS_MOIST -> WindowWords.say("colour.barred.moist");
            case NOT_THE_STYLE ->
                WindowWords.say(
                        field.isRoast() ? "colour.barred.style.roast" : "colour.barred.style",
                        field.style().title());
        };
    }

    private String tooCool(ColourField field) {
        if (!(field.hottestC() > 0)) return WindowWords.say("colour.barred.no-oven");
        String hottest = quantities.temperature(field.hottestC());
        return WindowWords.say(field.isRoast() ? "colour.barred.oven" : "colour.barred.kit", hottest);
    }

    String hours(double hours) {
        return quantities.time(Duration.ofMinutes(Math.round(hours * 60)));
    }

    DisplayUnits units() {
        return units;
    }

    QuantityFormat quantities() {
        return quantities;
    }
}
