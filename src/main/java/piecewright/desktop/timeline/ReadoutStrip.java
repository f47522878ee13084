package piecewright.desktop.timeline;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import javafx.scene.control.Label;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;

/** The figures of all lanes at one instant, at the foot: values never float over data. */
final class ReadoutStrip {
    private final FlowPane pane = new FlowPane();
    private final Map<String, Label> figures = new HashMap<>();
    private final Map<String, Label> bands = new HashMap<>();

    ReadoutStrip() {
        pane.getStyleClass().add("readout");
        pane.setId("readout");
    }

    Region pane() {
        return pane;
    }

    void show(Optional<Readout> readout) {
        List<Readout.Entry> entries = readout.map(Readout::entries).orElse(List.of());
        boolean another = !entries.stream()
                .map(Readout.Entry::key)
                .collect(Collectors.toSet())
                .equals(figures.keySet());
        if (another) {
            pane.getChildren().clear();
            figures.clear();
            bands.clear();
        }
        for (Readout.Entry entry : entries) {
            figures.computeIfAbsent(entry.key(), key -> added(entry)).setText(entry.figure());
            bands.computeIfAbsent(entry.key(), key -> new Label()).setText(entry.band());
        }
    }

    private Label added(Readout.Entry entry) {
        Label name = new Label(entry.name());
        name.getStyleClass().add("caption");
        Label figure = new Label();
        figure.setId("readout-" + entry.key());
        figure.getStyleClass().addAll("readout-figure", "readout-" + entry.key());
        name.setLabelFor(figure);
        Label band = bands.computeIfAbsent(entry.key(), key -> new Label());
        band.getStyleClass().add("caption");
        band.managedProperty().bind(band.textProperty().isNotEmpty());
        HBox line = new HBox(6, figure, band);
        line.getStyleClass().add("led");
        pane.getChildren().add(new VBox(name, line));
        return figure;
    }
}
