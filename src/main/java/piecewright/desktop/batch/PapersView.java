package piecewright.desktop.batch;

import java.nio.file.Path;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import javafx.application.Platform;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.TextField;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import piecewright.desktop.batch.PapersViewModel.Paper;
import piecewright.desktop.paint.Signs;
import piecewright.desktop.paint.Wrapped;
import piecewright.desktop.shell.NotedField;
import piecewright.text.WindowWords;

/** The sheet from which papers of a piece are written: the bench sheet for the garage, pictures to show. */
public final class PapersView {
    private final PapersViewModel model;
    private final VBox root = new VBox(10);
    private final NotedField folder = new NotedField("papers-folder", WindowWords.say("papers.folder"));
    private final VBox written = new VBox(4);
    private final Map<Paper, Button> buttons = new EnumMap<>(Paper.class);

    public PapersView(PapersViewModel model) {
        this.model = model;
        root.getStyleClass().add("sheet");
        root.setId("papers");
        Label title = Wrapped.words("title", WindowWords.say("papers.title"));
        root.getChildren().addAll(title, Wrapped.words("body-2", WindowWords.say("papers.hint")), folder.node());
        for (Paper paper : Paper.values()) {
            String key = paper.name().toLowerCase(Locale.ROOT).replace('_', '-');
            Button button = new Button(WindowWords.say("papers." + key));
            button.setId("papers-" + key);
            button.setMinWidth(Region.USE_PREF_SIZE);
            button.managedProperty().bind(button.visibleProperty());
            button.setOnAction(event -> model.write(paper, folder.field().getText()));
            buttons.put(paper, button);
            root.getChildren().add(button);
        }
        written.setId("papers-written");
        root.getChildren().add(written);
        model.wrongProperty().addListener((wrong, before, now) -> folder.say(now));
        model.writtenProperty().addListener((files, before, now) -> show(now));
    }

    /** This sheet as one of those that a piece offers. */
    public BatchView.Panel panel() {
        return new BatchView.Panel("batch-papers", WindowWords.say("papers.way"), root, Optional::isPresent, this::fit);
    }

    private void fit() {
        folder.field().setPromptText(model.folder());
        boolean couch = model.hasCouch();
        buttons.forEach((paper, button) -> button.setVisible(couch || !paper.isOfCouch()));
    }

    /** Paths to be read, and marked to be copied. */
    private void show(List<Path> files) {
        written.getChildren().clear();
        for (int i = 0; i < files.size(); i++) {
            TextField path = new TextField(files.get(i).toString());
            path.setId("papers-file-" + i);
            path.setEditable(false);
            path.setAccessibleText(
                    WindowWords.say("papers.written.spoken", files.get(i).toString()));
            HBox.setHgrow(path, Priority.ALWAYS);
            Platform.runLater(path::end);
            HBox line = new HBox(6, Signs.good(), path);
            line.getStyleClass().add("led");
            written.getChildren().add(line);
        }
    }
}
