package piecewright.desktop.timeline;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import javafx.beans.property.ObjectProperty;
import javafx.beans.property.SimpleObjectProperty;
import javafx.beans.property.SimpleStringProperty;
import javafx.beans.property.StringProperty;
import javafx.css.CssMetaData;
import javafx.css.Styleable;
import javafx.scene.AccessibleAttribute;
import javafx.scene.AccessibleRole;
import javafx.scene.control.Control;
import javafx.scene.control.Skin;
import piecewright.desktop.paint.Inked;
import piecewright.desktop.paint.Inks;
import piecewright.text.DisplayUnits;
import piecewright.text.WindowWords;

/** One piece along one time axis. Arrows step from act to act, + and − zoom, dragging pans. */
public final class PlanTimeline extends Control implements Inked {
    private static final List<CssMetaData<? extends Styleable, ?>> META = Inks.and(Control.getClassCssMetaData());

    private final DisplayUnits units;
    private final ObjectProperty<Optional<PieceChart>> chart = new SimpleObjectProperty<>(Optional.empty());
    private final ObjectProperty<Optional<PieceChart>> ghost = new SimpleObjectProperty<>(Optional.empty());
    private final StringProperty selectedAct = new SimpleStringProperty("");
    private final ObjectProperty<Instant> now = new SimpleObjectProperty<>(Instant.EPOCH);
    private final Inks inks = new Inks(this, this::inksChanged);
    private final ObjectProperty<Integer> inkRound = new SimpleObjectProperty<>(0);

    public PlanTimeline(DisplayUnits units) {
        this.units = units;
        getStyleClass().addAll("timeline", "inked");
        setId("timeline");
        setFocusTraversable(true);
        setAccessibleRole(AccessibleRole.SLIDER);
        setAccessibleText(WindowWords.say("timeline.spoken"));
    }

    /** The piece; empty while there is none. */
    public ObjectProperty<Optional<PieceChart>> chartProperty() {
        return chart;
    }

    /** The plan as it stood before, drawn dashed behind the piece; empty while there is none. */
    public ObjectProperty<Optional<PieceChart>> ghostProperty() {
        return ghost;
    }

    /** Id of the chosen act; empty text for none. */
    public StringProperty selectedActProperty() {
        return selectedAct;
    }

    /** Where the now-line stands. */
    public ObjectProperty<Instant> nowProperty() {
        return now;
    }

    /** A reader is told which of how many acts is chosen. */
    @Override
    public Object queryAccessibleAttribute(AccessibleAttribute attribute, Object... parameters) {
        int acts = chart.get().map(shown -> shown.acts().size()).orElse(1);
        return switch (attribute) {
            case VALUE ->
                (double) chart.get()
                        .map(shown -> shown.indexOf(selectedAct.get()).orElse(0))
                        .orElse(0);
            case MIN_VALUE -> 0.0;
            case MAX_VALUE -> acts - 1.0;
            default -> super.queryAccessibleAttribute(attribute, parameters);
        };
    }

    DisplayUnits units() {
        return units;
    }

    /** Changes whenever the theme does. */
    ObjectProperty<Integer> inkRoundProperty() {
        return inkRound;
    }

    private void inksChanged() {
        inkRound.set(inkRound.get() + 1);
    }

    @Override
    public Inks inks() {
        return inks;
    }

    @Override
    protected Skin<?> createDefaultSkin() {
        return new PlanTimelineSkin(this);
    }

    @Override
    public List<CssMetaData<? extends Styleable, ?>> getControlCssMetaData() {
        return META;
    }
}
