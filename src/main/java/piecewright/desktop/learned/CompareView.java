package piecewright.desktop.learned;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.control.MenuButton;
import javafx.scene.control.MenuItem;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import piecewright.desktop.batch.GoingViewModel.Piece;
import piecewright.desktop.paint.Wrapped;
import piecewright.text.WindowWords;

/** Two finished pieces held against each other: a sentence for every difference. */
final class CompareView {
    private final LearnedViewModel model;
    private final MenuButton first = choice("first");
    private final MenuButton second = choice("second");
    private final VBox told = new VBox(8);
    private final VBox node = new VBox(8);
    private Optional<Path> firstFile = Optional.empty();
    private Optional<Path> secondFile = Optional.empty();

    CompareView(LearnedViewModel model) {
        this.model = model;
        Label with = new Label(WindowWords.say("learned.compare.with"));
        with.getStyleClass().add("said");
        FlowPane sentence = new FlowPane(10, 8, first, with, second);
        sentence.getStyleClass().add("sentence");
        told.setId("compared");
        node.getChildren().addAll(sentence, told);
        model.comparedProperty().addListener((compared, before, now) -> tell(now));
        tell(Optional.empty());
    }

    Node node() {
        return node;
    }

    private static MenuButton choice(String which) {
        MenuButton button = new MenuButton(WindowWords.say("learned.compare.choose"));
        button.setId("compare-" + which);
        button.getStyleClass().add("word");
        button.setAccessibleText(WindowWords.say("learned.compare.spoken." + which));
        return button;
    }

    /** Offers these pieces; a list that says the same stays as it is, somebody may be choosing from it. */
    void pieces(List<Piece> there) {
        List<String> names = there.stream().map(CompareView::name).toList();
        if (names.equals(first.getItems().stream().map(MenuItem::getText).toList())) return;
        first.getItems().clear();
        second.getItems().clear();
        for (Piece piece : there) {
            first.getItems().add(item(piece, first, () -> firstFile = Optional.of(piece.file())));
            second.getItems().add(item(piece, second, () -> secondFile = Optional.of(piece.file())));
        }
    }

    private static String name(Piece piece) {
        String file = String.valueOf(piece.file().getFileName()).replaceFirst("\\.json$", "");
        return WindowWords.say("batch.title", piece.title(), file);
    }

    private MenuItem item(Piece piece, MenuButton button, Runnable chosen) {
        MenuItem item = new MenuItem(name(piece));
        item.setMnemonicParsing(false);
        item.setOnAction(event -> {
            button.setText(item.getText());
            chosen.run();
            firstFile.ifPresent(one -> secondFile.ifPresent(other -> model.compare(one, other)));
        });
        return item;
    }

    private void tell(Optional<Compared> compared) {
        told.getChildren().clear();
        if (compared.isEmpty())
            told.getChildren().add(Wrapped.words("caption", WindowWords.say("learned.compare.hint")));
        compared.ifPresent(found -> told.getChildren()
                .addAll(
                        inputs(found.inputs()),
                        Wrapped.words("strong", found.verdict()),
                        outcomes(found.outcomes()),
                        Wrapped.words("caption", WindowWords.say("learned.compare.courses")),
                        new CourseChart(found.courses())));
    }

    /** What went in otherwise, one under the other so that it can be held against each other. */
    private static Node inputs(List<Compared.Input> inputs) {
        GridPane grid = new GridPane();
        grid.getStyleClass().add("compared");
        int row = 0;
        for (Compared.Input input : inputs) {
            grid.addRow(
                    row++,
                    Wrapped.words("caption", input.name()),
                    Wrapped.words("strong", input.first()),
                    Wrapped.words("body", "≠"),
                    Wrapped.words("strong", input.second()));
        }
        return grid;
    }

    private static Node outcomes(List<Compared.Outcome> outcomes) {
        VBox rows = new VBox(4);
        for (int i = 0; i < outcomes.size(); i++) {
            Label sentence = Wrapped.words("body", outcomes.get(i).sentence());
            HBox.setHgrow(sentence, Priority.ALWAYS);
            OutcomeBar bar = new OutcomeBar(outcomes.get(i), i);
            bar.setMinWidth(Region.USE_PREF_SIZE);
            HBox row = new HBox(16, bar, sentence);
            row.getStyleClass().add("led");
            rows.getChildren().add(row);
        }
        return rows;
    }
}
