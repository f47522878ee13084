package piecewright.desktop.learned;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.MenuButton;
import javafx.scene.control.MenuItem;
import javafx.scene.control.ScrollPane;
import javafx.scene.layout.ColumnConstraints;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import piecewright.desktop.batch.GoingViewModel.Piece;
import piecewright.desktop.learned.LearnedViewModel.Row;
import piecewright.desktop.learned.LearnedViewModel.Shown;
import piecewright.desktop.learned.LearnedViewModel.Subject;
import piecewright.text.WindowWords;

/** What batches taught: every unknown of a lot or a house before any batch and now, and the pieces there are to learn from. */
public final class LearnedView {
    private final LearnedViewModel model;
    private final VBox root = new VBox();
    private final ScrollPane scroll = new ScrollPane(root);
    private final MenuButton subject = new MenuButton();
    private final Label from = new Label();
    private final GridPane rows = new GridPane();
    private final VBox pieces = new VBox(6);
    private final VBox lessons = new VBox(4);
    private final Label note = new Label();
    private final CompareView compare;

    public LearnedView(LearnedViewModel model) {
        this.model = model;
        this.compare = new CompareView(model);
        root.getStyleClass().add("middle");
        root.setId("learned-view");
        from.setWrapText(true);
        from.setId("learned-from");
        from.getStyleClass().add("body-2");
        from.setMinHeight(Region.USE_PREF_SIZE);
        rows.getStyleClass().add("learned-rows");
        rows.getColumnConstraints().addAll(column(Priority.NEVER), column(Priority.ALWAYS), column(Priority.NEVER));
        note.setWrapText(true);
        note.setId("learned-note");
        note.getStyleClass().add("field-note");
        note.managedProperty().bind(note.textProperty().isNotEmpty());
        lessons.setId("learned-lessons");
        root.getChildren().addAll(head(), from, bars(), rows, section("learned.pieces"), pieces, lessons);
        root.getChildren().addAll(section("learned.compare"), compare.node(), note);
        scroll.setFitToWidth(true);
        scroll.getStyleClass().add("middle-scroll");
        model.subjectsProperty().addListener((subjects, before, now) -> subjects(now));
        model.shownProperty().addListener((shown, before, now) -> show(now));
        model.lessonsProperty().addListener((told, before, now) -> lessons(now));
        model.noteProperty().addListener((text, before, now) -> note.setText(now));
        subjects(model.subjectsProperty().get());
        show(model.shownProperty().get());
    }

    public Node node() {
        return scroll;
    }

    private static ColumnConstraints column(Priority grows) {
        ColumnConstraints column = new ColumnConstraints();
        column.setHgrow(grows);
        return column;
    }

    private static Node bars() {
        Label bars = caption(WindowWords.say("learned.bars"));
        bars.setWrapText(true);
        bars.setMinHeight(Region.USE_PREF_SIZE);
        return bars;
    }

    private Node head() {
        Label title = new Label(WindowWords.say("learned.title"));
        title.getStyleClass().add("title");
        Label of = new Label(WindowWords.say("learned.of"));
        of.getStyleClass().add("said");
        subject.setId("learned-subject");
        subject.getStyleClass().add("word");
        subject.setAccessibleText(WindowWords.say("learned.spoken.subject"));
        FlowPane head = new FlowPane(10, 8, title, of, subject);
        head.getStyleClass().add("sentence");
        return head;
    }

    private static Node section(String key) {
        Label label = new Label(WindowWords.say(key));
        label.getStyleClass().add("lead");
        label.setPadding(new javafx.geometry.Insets(12, 0, 0, 0));
        return label;
    }

    private void subjects(List<Subject> there) {
        subject.getItems().clear();
        for (Subject each : there) {
            MenuItem item = new MenuItem(each.name());
            item.setMnemonicParsing(false);
            item.setOnAction(event -> model.choose(each));
            subject.getItems().add(item);
        }
    }

    private void show(Optional<Shown> shown) {
        rows.getChildren().clear();
        if (shown.isEmpty()) return;
        subject.setText(shown.get().subject().name());
        from.setText(shown.get().from());
        int number = 1;
        for (Row row : shown.get().rows()) {
            IntervalBar bar = new IntervalBar(row, number);
            GridPane.setHgrow(bar, Priority.ALWAYS);
            Label title = new Label(row.title());
            title.setWrapText(true);
            title.getStyleClass().add("learned-trait");
            VBox words = new VBox(caption(row.beforeWords()), strong(row.nowWords()));
            words.setMinWidth(Region.USE_PREF_SIZE);
            rows.addRow(number, title, bar, words);
            number++;
        }
    }

    private static Label caption(String words) {
        Label label = new Label(words);
        label.getStyleClass().add("caption");
        return label;
    }

    private static Label strong(String words) {
        Label label = new Label(words);
        label.getStyleClass().add("strong");
        return label;
    }

    /** Offers pieces to learn from. */
    public void pieces(List<Piece> there) {
        compare.pieces(there);
        pieces.getChildren().clear();
        if (there.isEmpty()) pieces.getChildren().add(caption(WindowWords.say("learned.no-pieces")));
        for (int i = 0; i < there.size(); i++) pieces.getChildren().add(piece(there.get(i), i));
    }

    private Node piece(Piece piece, int number) {
        Label title = new Label(WindowWords.say(
                "batch.title",
                piece.title(),
                String.valueOf(piece.file().getFileName()).replaceFirst("\\.json$", "")));
        Label sentence = caption(piece.sentence());
        Button learn = new Button(WindowWords.say("learned.learn"));
        learn.setId("learned-learn-" + number);
        learn.setAccessibleText(WindowWords.say("learned.learn.spoken", piece.title()));
        learn.setMinWidth(Region.USE_PREF_SIZE);
        Path file = piece.file();
        learn.setOnAction(event -> model.learn(file));
        VBox words = new VBox(title, sentence);
        HBox.setHgrow(words, Priority.ALWAYS);
        HBox row = new HBox(12, words, learn);
        row.getStyleClass().addAll("led", "card");
        return row;
    }

    private void lessons(List<String> told) {
        lessons.getChildren().clear();
        for (String sentence : told) {
            Label label = new Label(sentence);
            label.setWrapText(true);
            label.setMinHeight(Region.USE_PREF_SIZE);
            lessons.getChildren().add(label);
        }
    }
}
