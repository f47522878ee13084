package piecewright.desktop.batch;

import java.util.List;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import piecewright.desktop.paint.Wrapped;
import piecewright.text.WindowWords;

/** The sheet with what is written down of a batch, each entry with a button that strikes it. */
public final class EntriesView {
    private final EntriesViewModel model;
    private final VBox root = new VBox(10);
    private final VBox list = new VBox(8);

    public EntriesView(EntriesViewModel model) {
        this.model = model;
        root.getStyleClass().add("sheet");
        root.setId("entries");
        root.getChildren().addAll(Wrapped.words("title", WindowWords.say("entries.title")), list);
        model.linesProperty().addListener((lines, before, now) -> show(now));
        show(model.linesProperty().get());
    }

    /** This sheet as one of those that a batch offers. */
    public BatchView.Panel panel() {
        return new BatchView.Panel("batch-entries", WindowWords.say("entries.way"), root, shown -> model.has());
    }

    private void show(List<EntriesViewModel.Line> lines) {
        list.getChildren().setAll(lines.stream().map(this::row).toList());
        if (lines.isEmpty()) list.getChildren().add(Wrapped.words("body-2", WindowWords.say("entries.none")));
    }

    private Node row(EntriesViewModel.Line line) {
        Label words = Wrapped.words("body", line.words());
        HBox.setHgrow(words, Priority.ALWAYS);
        Button strike = new Button(WindowWords.say("entries.strike"));
        strike.setId("entries-strike-" + line.number());
        strike.setAccessibleText(WindowWords.say("entries.strike.spoken", Integer.toString(line.number())));
        strike.setMinWidth(Region.USE_PREF_SIZE);
        strike.setOnAction(event -> model.strike(line.number()));
        HBox row = new HBox(8, words, strike);
        row.getStyleClass().add("led");
        return row;
    }
}
