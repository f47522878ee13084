package piecewright.desktop.plan;

import java.util.Optional;
import javafx.animation.PauseTransition;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.ProgressBar;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import javafx.util.Duration;
import piecewright.desktop.paint.Wrapped;
import piecewright.desktop.plan.ChanceViewModel.Sure;
import piecewright.plan.Plan;
import piecewright.text.DisplayUnits;
import piecewright.text.SurenessWords;
import piecewright.text.WindowWords;

/** How sure the plan is: a dot for each way it may go, the same in words, and what would help. */
public final class ChanceView {
    private final ChanceViewModel model;
    private final DisplayUnits units;
    private final VBox root = new VBox(6);
    private final Label title = Wrapped.words("section");
    private final ChanceDots dots = new ChanceDots();
    private final Label words = Wrapped.words("body-2");
    private final HBox progress;

    public ChanceView(ChanceViewModel model, DisplayUnits units) {
        this.model = model;
        this.units = units;
        this.progress = progress();
        words.setId("chance-words");
        root.setId("chance");
        root.getStyleClass().add("chance");
        root.getChildren().addAll(title, dots, words, progress);
        root.managedProperty().bind(root.visibleProperty());
        PauseTransition patience = new PauseTransition(Duration.millis(300));
        patience.setOnFinished(event -> progress.setVisible(busy()));
        model.workingProperty().addListener((working, before, now) -> busy(patience));
        model.helpingProperty().addListener((helping, before, now) -> busy(patience));
        model.sureProperty().addListener((sure, before, now) -> show());
        show();
    }

    public Node node() {
        return root;
    }

    private boolean busy() {
        return model.workingProperty().get() || model.helpingProperty().get();
    }

    private void busy(PauseTransition patience) {
        if (busy()) patience.playFromStart();
        else progress.setVisible(false);
    }

    private HBox progress() {
        ProgressBar bar = new ProgressBar();
        bar.getStyleClass().add("thin-progress");
        bar.getStyleClass().add("short-progress");
        bar.setAccessibleText(WindowWords.say("chance.working"));
        Label what = new Label();
        what.getStyleClass().add("caption");
        what.setWrapText(true);
        what.setMinHeight(Region.USE_PREF_SIZE);
        what.textProperty()
                .bind(javafx.beans.binding.Bindings.when(model.helpingProperty())
                        .then(WindowWords.say("chance.helping"))
                        .otherwise(WindowWords.say("chance.working")));
        Button stop = new Button(WindowWords.say("stop"));
        stop.setId("chance-stop");
        stop.setMinWidth(Region.USE_PREF_SIZE);
        stop.getStyleClass().add("quiet");
        stop.setOnAction(event -> model.stop());
        HBox line = new HBox(8, bar, what, stop);
        HBox.setHgrow(what, javafx.scene.layout.Priority.ALWAYS);
        line.getStyleClass().add("progress-line");
        line.setVisible(false);
        line.managedProperty().bind(line.visibleProperty());
        return line;
    }

    private void show() {
        Optional<Sure> sure = model.sureProperty().get();
        root.setVisible(sure.isPresent() || busy());
        dots.setVisible(sure.isPresent());
        dots.setManaged(sure.isPresent());
        title.setText(WindowWords.say("chance.title"));
        words.setText("");
        words.setManaged(sure.isPresent());
        sure.ifPresent(this::tell);
    }

    private void tell(Sure sure) {
        int members = sure.sureness().members();
        double soft = sure.sureness().verdict().softFraction();
        Plan plan = sure.drafted().plan();
        title.setText(WindowWords.say("chance.tries", Integer.toString(members)));
        String told = new SurenessWords(units, plan.subject().zone()).verdict(plan, sure.sureness());
        words.setText(told);
        dots.show(members, (int) Math.round(members * soft), told);
    }
}
