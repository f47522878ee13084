package piecewright.desktop.plan;

import java.util.List;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.control.TitledPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import piecewright.desktop.paint.Wrapped;
import piecewright.plan.Check;
import piecewright.plan.Plan;
import piecewright.text.DisplayUnits;
import piecewright.text.MomentFormat;
import piecewright.text.WindowWords;
import piecewright.text.Wording;

/** The tests of lot and kit that come before the first act: a line that opens to when, what to do and what it buys. */
final class ChecksView {
    private final DisplayUnits units;
    private final VBox rows = new VBox(10);
    private final TitledPane pane = new TitledPane("", rows);

    ChecksView(DisplayUnits units) {
        this.units = units;
        pane.setId("checks");
        pane.getStyleClass().add("checks");
        pane.setExpanded(false);
        pane.setAnimated(false);
        pane.setMinHeight(Region.USE_PREF_SIZE);
        pane.setMinWidth(0);
        pane.managedProperty().bind(pane.visibleProperty());
        pane.setVisible(false);
    }

    Node node() {
        return pane;
    }

    void show(Plan plan) {
        List<Check> checks = plan.checks();
        pane.setVisible(!checks.isEmpty());
        rows.getChildren().clear();
        if (checks.isEmpty()) return;
        Wording wording = new Wording(units, plan.subject().zone());
        MomentFormat moments = new MomentFormat(plan.subject().zone(), units.locale());
        pane.setText(WindowWords.say(
                "checks.title",
                Integer.toString(checks.size()),
                moments.moment(checks.get(0).startsAt())));
        for (Check check : checks) rows.getChildren().add(row(check, wording, moments));
    }

    private static Node row(Check check, Wording wording, MomentFormat moments) {
        Label when = Wrapped.words("strong", moments.moment(check.startsAt()));
        when.setMinWidth(Region.USE_PREF_SIZE);
        VBox what = new VBox(
                2,
                Wrapped.words("strong", wording.checkTitle(check)),
                Wrapped.words("body", wording.checkToDo(check)),
                Wrapped.words("caption", wording.checkGain(check)));
        HBox.setHgrow(what, Priority.ALWAYS);
        return new HBox(16, when, what);
    }
}
