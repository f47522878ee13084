package piecewright.desktop.grain;

import java.util.Locale;
import javafx.geometry.HPos;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.layout.ColumnConstraints;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.StackPane;
import piecewright.purchase.Waterfall;
import piecewright.text.QuantityFormat;
import piecewright.text.WindowWords;

/** Where the weight goes between the grain and the malt: one bar under the other, each as long as its kilograms. */
final class WaterfallView {
    private static final double FULL = 320;

    private final QuantityFormat quantities;
    private final GridPane grid = new GridPane();

    WaterfallView(QuantityFormat quantities) {
        this.quantities = quantities;
        grid.getStyleClass().add("waterfall");
        grid.setId("waterfall");
        ColumnConstraints names = new ColumnConstraints();
        ColumnConstraints figures = new ColumnConstraints();
        figures.setHalignment(HPos.RIGHT);
        ColumnConstraints bars = new ColumnConstraints();
        bars.setHgrow(Priority.ALWAYS);
        grid.getColumnConstraints().addAll(names, figures, bars);
    }

    Node node() {
        return grid;
    }

    void show(Waterfall fall) {
        grid.getChildren().clear();
        double largest = fall.grainKg();
        row(WindowWords.say("grain.fall.grain"), fall.grainKg(), 0, largest, "fall-whole");
        double left = fall.grainKg();
        for (Waterfall.Item item : fall.items()) {
            if (Math.abs(item.lostKg()) < 0.0005) continue;
            left -= item.lostKg();
            String key = item.loss().name().toLowerCase(Locale.ROOT).replace('_', '-');
            row(WindowWords.say("grain.fall." + key), -item.lostKg(), left, largest, "fall-loss");
        }
        row(WindowWords.say("grain.fall.malt"), fall.usefulMaltKg(), 0, largest, "fall-whole");
        row(WindowWords.say("grain.fall.scale"), fall.scaleMaltKg(), 0, largest, "fall-beside");
    }

    private void row(String name, double kg, double fromKg, double largestKg, String style) {
        int row = grid.getRowCount();
        Label words = new Label(name);
        Label figure = new Label((kg < 0 ? "− " : "") + quantities.mass(Math.abs(kg)));
        figure.getStyleClass().add(style.equals("fall-loss") ? "body-2" : "strong");
        Region bar = new Region();
        bar.getStyleClass().addAll("fall-bar", style);
        double width = Math.max(2, FULL * Math.abs(kg) / largestKg);
        bar.setMinSize(width, 12);
        bar.setMaxSize(width, 12);
        StackPane place = new StackPane(bar);
        place.setAlignment(javafx.geometry.Pos.CENTER_LEFT);
        StackPane.setMargin(bar, new javafx.geometry.Insets(0, 0, 0, FULL * Math.max(0, fromKg) / largestKg));
        grid.addRow(row, words, figure, place);
    }
}
