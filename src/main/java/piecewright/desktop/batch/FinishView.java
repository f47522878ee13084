package piecewright.desktop.batch;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import piecewright.desktop.batch.BatchViewModel.Shown;
import piecewright.desktop.batch.FinishViewModel.Field;
import piecewright.desktop.batch.FinishViewModel.Typed;
import piecewright.desktop.paint.Signs;
import piecewright.desktop.paint.Wrapped;
import piecewright.desktop.shell.NotedField;
import piecewright.text.WindowWords;

/** The sheet on which a piece is closed: weight, colour, a note; afterwards what came of it. */
public final class FinishView {
    private final FinishViewModel model;
    private final VBox root = new VBox(10);
    private final NotedField weight = new NotedField("finish-weight", WindowWords.say("finish.weight"));
    private final NotedField colour = new NotedField("finish-colour", WindowWords.say("finish.colour"));
    private final NotedField note = new NotedField("finish-note", WindowWords.say("finish.note"));
    private final Label whole = Wrapped.words("body");
    private final Button close = new Button();

    public FinishView(FinishViewModel model) {
        this.model = model;
        root.getStyleClass().add("sheet");
        root.setId("finish");
        whole.setId("finish-refused");
        whole.getStyleClass().add("field-note");
        weight.field().setPromptText(WindowWords.say("finish.weight.prompt"));
        colour.field().setPromptText(WindowWords.say("finish.colour.prompt"));
        for (NotedField each : List.of(weight, colour, note)) each.field().setOnAction(event -> close());
        close.setId("finish-close");
        close.getStyleClass().add("best");
        close.setMinWidth(Region.USE_PREF_SIZE);
        close.setOnAction(event -> close());
        model.askedProperty().addListener((asked, before, now) -> name());
        name();
        model.wrongProperty().addListener((wrong, before, now) -> wrong(now));
        model.ofProperty().addListener((of, before, now) -> {
            for (NotedField each : List.of(weight, colour, note)) each.field().clear();
        });
        model.toldProperty().addListener((told, before, now) -> show());
        model.changedProperty().addListener((changed, before, now) -> {
            name();
            show();
        });
        show();
    }

    /** This sheet as one of those that a piece offers. */
    public BatchView.Panel panel() {
        return new BatchView.Panel("batch-finish", WindowWords.say("finish.way"), root, FinishView::has);
    }

    private static boolean has(Optional<Shown> shown) {
        return shown.filter(FinishViewModel::isMalt).isPresent();
    }

    private void close() {
        model.finish(new Typed(
                weight.field().getText(), colour.field().getText(), note.field().getText()));
    }

    private void name() {
        boolean asked = model.askedProperty().get().isPresent();
        boolean again = model.changedProperty().get();
        close.setText(WindowWords.say(asked ? "finish.anyway" : again ? "finish.again" : "finish.close"));
    }

    private void wrong(Map<Field, String> wrong) {
        weight.say(wrong.getOrDefault(Field.WEIGHT, ""));
        colour.say(wrong.getOrDefault(Field.COLOUR, ""));
        whole.setText(wrong.getOrDefault(Field.WHOLE, ""));
        whole.setVisible(!whole.getText().isEmpty());
        whole.setManaged(whole.isVisible());
    }

    private void show() {
        List<String> told = model.toldProperty().get();
        Label title = Wrapped.words("title");
        root.getChildren().setAll(title);
        if (told.isEmpty()) {
            title.setText(WindowWords.say("finish.title"));
            Label hint = Wrapped.words("body-2");
            hint.setText(WindowWords.say("finish.hint"));
            root.getChildren().addAll(hint, weight.node(), colour.node(), note.node(), whole, close);
            wrong(model.wrongProperty().get());
            return;
        }
        title.setText(WindowWords.say("finish.closed"));
        VBox sentences = new VBox(8);
        sentences.setId("finish-told");
        for (String sentence : told) {
            Label words = Wrapped.words("body");
            words.setText(sentence);
            sentences.getChildren().add(new HBox(8, Signs.good(), words));
        }
        Label after = Wrapped.words("caption");
        after.setText(WindowWords.say("finish.after"));
        root.getChildren().addAll(sentences, after);
        if (!model.changedProperty().get()) return;
        wrong(model.wrongProperty().get());
        root.getChildren().addAll(whole, close);
    }
}
