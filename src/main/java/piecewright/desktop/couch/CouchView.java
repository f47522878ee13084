package piecewright.desktop.couch;

import java.time.Instant;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.TextField;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import piecewright.desktop.batch.BatchViewModel;
import piecewright.desktop.batch.BatchViewModel.Shown;
import piecewright.desktop.batch.Reply;
import piecewright.desktop.timeline.Trace;
import piecewright.text.DisplayUnits;
import piecewright.text.MomentFormat;
import piecewright.text.QuantityFormat;
import piecewright.text.WindowWords;

/** A couch: what its thermometer will show in a sentence and as a curve, and a field for what it shows now. */
public final class CouchView {
    private final BatchViewModel model;
    private final ForetellsCouch forecast;
    private final DisplayUnits units;
    private final QuantityFormat quantities;
    private final VBox root = new VBox(12);
    private final Label words = new Label();
    private final TextField reading = new TextField();
    private final CouchChart chart;

    public CouchView(BatchViewModel model, ForetellsCouch forecast, DisplayUnits units) {
        this.model = model;
        this.forecast = forecast;
        this.units = units;
        this.quantities = new QuantityFormat(units);
        this.chart = new CouchChart(units);
        words.setId("couch-words");
        words.setWrapText(true);
        words.setMinHeight(Region.USE_PREF_SIZE);
        VBox.setVgrow(chart, Priority.ALWAYS);
        VBox.setVgrow(root, Priority.ALWAYS);
        root.setId("couch-view");
        root.getChildren().addAll(words, entry(), chart);
        model.shownProperty().addListener((shown, before, now) -> show(now));
        model.replyProperty().addListener((reply, before, now) -> {
            if (now.outcome() == Reply.Outcome.KEPT) reading.clear();
        });
        show(model.shownProperty().get());
    }

    public Node node() {
        return root;
    }

    /** Whether the piece that is looked at has a couch. */
    public boolean has(Optional<Shown> shown) {
        return shown.flatMap(forecast::of).isPresent();
    }

    private Node entry() {
        Label name = new Label(WindowWords.say("couch.thermometer"));
        name.setMinWidth(Region.USE_PREF_SIZE);
        name.setLabelFor(reading);
        reading.setId("couch-reading");
        reading.setPrefColumnCount(12);
        reading.setPromptText(WindowWords.say("couch.prompt"));
        reading.setAccessibleText(WindowWords.say("couch.thermometer"));
        reading.setOnAction(event -> record());
        Button record = new Button(WindowWords.say("batch.record"));
        record.setId("couch-record");
        record.setMinWidth(Region.USE_PREF_SIZE);
        record.setOnAction(event -> record());
        Label hint = new Label(WindowWords.say("couch.hint"));
        hint.setWrapText(true);
        hint.getStyleClass().add("caption");
        HBox line = new HBox(8, name, reading, record, hint);
        line.getStyleClass().add("led");
        return line;
    }

    private void record() {
        String typed = reading.getText().strip();
        if (typed.isEmpty()) return;
        model.record(WindowWords.say("couch.line", typed));
    }

    private void show(Optional<Shown> shown) {
        Optional<CouchCurve> couch = shown.flatMap(forecast::of);
        couch.ifPresent(curve -> {
            ZoneId zone = shown.get().batch().zone();
            Instant now = shown.get().where().now();
            String told = String.join(" ", sentences(curve, new MomentFormat(zone, units.locale())));
            words.setText(told);
            chart.show(curve, zone, now, told);
        });
    }

    /** While the heap lies in its box what it will do is said above, with where the piece stands. */
    private List<String> sentences(CouchCurve curve, MomentFormat moments) {
        List<String> told = new ArrayList<>();
        Trace.Point peak = curve.peak();
        if (curve.peakBand().isEmpty()) {
            String warm = quantities.temperature(CouchCurve.WARM_C);
            told.add(curve.reaches(CouchCurve.WARM_C)
                    .map(at -> WindowWords.say("couch.says-warm", warm, moments.moment(at)))
                    .orElseGet(() -> WindowWords.say("couch.says-cold", warm)));
            told.add(WindowWords.say(
                    "couch.says-peak", quantities.temperature(peak.figure()), moments.moment(peak.at())));
            curve.drops().ifPresent(at -> told.add(WindowWords.say("couch.says-drop", moments.moment(at))));
        }
        told.add(WindowWords.say("couch.says-break", moments.moment(curve.broken())));
        if (!curve.read().isEmpty()) {
            Trace.Point last = curve.read().get(curve.read().size() - 1);
            told.add(WindowWords.say(
                    "couch.says-read", quantities.temperature(last.figure()), moments.moment(last.at())));
            if (last.figure() >= curve.limitC()) told.add(WindowWords.say("couch.says-spread"));
        }
        return told;
    }
}
