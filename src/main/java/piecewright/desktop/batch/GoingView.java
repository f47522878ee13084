package piecewright.desktop.batch;

import java.nio.file.Path;
import java.util.List;
import java.util.function.BiConsumer;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import javafx.scene.shape.Line;
import javafx.scene.shape.Polyline;
import piecewright.desktop.batch.GoingViewModel.Going;
import piecewright.desktop.batch.GoingViewModel.Piece;
import piecewright.desktop.batch.GoingViewModel.Soon;
import piecewright.desktop.batch.GoingViewModel.Stage;
import piecewright.text.WindowWords;

/** The next 48 hours of all pieces, and below a sentence for each piece with the outline of its moisture. */
public final class GoingView {
    private static final double OUTLINE_WIDTH = 150;
    private static final double OUTLINE_HEIGHT = 22;
    private static final int MOST_SOON = 7;

    private final VBox root;
    private final BiConsumer<Path, String> open;

    /**
     * @param root where it is shown
     * @param open opens a batch at an act; at none for empty text
     */
    public GoingView(VBox root, GoingViewModel model, BiConsumer<Path, String> open) {
        this.root = root;
        this.open = open;
        root.setSpacing(4);
        root.setId("going");
        model.goingProperty().addListener((going, before, now) -> show(now));
        show(model.goingProperty().get());
    }

    private void show(Going going) {
        root.getChildren().clear();
        if (!going.soon().isEmpty()) root.getChildren().add(section("going.soon"));
        List<Soon> soon = going.soon();
        String day = "";
        for (int i = 0; i < Math.min(MOST_SOON, soon.size()); i++) {
            if (!soon.get(i).when().day().equals(day)) root.getChildren().add(day(soon.get(i)));
            day = soon.get(i).when().day();
            root.getChildren().add(soon(i, soon.get(i)));
        }
        if (soon.size() > MOST_SOON) {
            Label more = new Label(WindowWords.say("going.more", Integer.toString(soon.size() - MOST_SOON)));
            more.getStyleClass().add("caption");
            root.getChildren().add(more);
        }
        pieces("going.pieces", going.pieces(), Stage.UNDER_WAY);
        pieces("going.finished", going.pieces(), Stage.CLOSED);
        for (String refusal : going.refusals()) {
            Label words = new Label(refusal);
            words.setWrapText(true);
            words.getStyleClass().add("rail-note");
            root.getChildren().add(words);
        }
    }

    private void pieces(String key, List<Piece> all, Stage stage) {
        if (all.stream().noneMatch(piece -> piece.stage() == stage)) return;
        root.getChildren().add(section(key));
        for (int i = 0; i < all.size(); i++) {
            if (all.get(i).stage() == stage) root.getChildren().add(piece(i, all.get(i)));
        }
    }

    private static Node section(String key) {
        Label label = new Label(WindowWords.say(key));
        label.getStyleClass().add("section");
        return label;
    }

    private Node soon(int index, Soon act) {
        Label title = new Label(act.title());
        title.getStyleClass().add("strong");
        Label piece = new Label(act.piece());
        piece.getStyleClass().add("caption");
        Label when = new Label(act.when().clock());
        when.setMinWidth(Region.USE_PREF_SIZE);
        when.getStyleClass().add("body-2");
        title.setWrapText(true);
        title.setMaxWidth(Double.MAX_VALUE);
        HBox.setHgrow(title, Priority.ALWAYS);
        VBox words = new Lines(new HBox(6, title, when), piece);
        String spoken = act.title() + ", " + act.piece() + ", " + act.when().moment();
        return row("soon-" + index, words, spoken, act.file(), act.actId());
    }

    private static Node day(Soon act) {
        Label label = new Label(act.when().day());
        label.getStyleClass().addAll("caption", "going-day");
        return label;
    }

    private Node piece(int index, Piece piece) {
        Label title = new Label(piece.title());
        title.getStyleClass().add("strong");
        title.setWrapText(true);
        Label sentence = new Label(piece.sentence());
        sentence.setWrapText(true);
        sentence.getStyleClass().add("caption");
        VBox words = new Lines(title, sentence);
        if (piece.stage() == Stage.UNDER_WAY) words.getChildren().add(outline(piece));
        return row("piece-" + index, words, piece.title() + ". " + piece.sentence(), piece.file(), "");
    }

    private Node row(String id, VBox words, String spoken, Path file, String actId) {
        Button row = new Button();
        row.setGraphic(words);
        row.setId(id);
        row.setMaxWidth(Double.MAX_VALUE);
        row.getStyleClass().add("going-row");
        row.setAccessibleText(spoken);
        words.setMaxWidth(Double.MAX_VALUE);
        words.prefWidthProperty().bind(root.widthProperty().subtract(18));
        row.setOnAction(event -> open.accept(file, actId));
        return row;
    }

    /** Lines as high as they are at the width they get, whoever asks; a button asks without a width. */
    private static final class Lines extends VBox {
        Lines(Node... lines) {
            super(2, lines);
        }

        @Override
        protected double computePrefHeight(double width) {
            return super.computePrefHeight(width < 0 ? getPrefWidth() : width);
        }

        @Override
        protected double computeMinHeight(double width) {
            return computePrefHeight(width);
        }
    }

    private static Node outline(Piece piece) {
        Polyline line = new Polyline();
        line.getStyleClass().add("outline");
        List<Double> moisture = piece.moisture();
        for (int i = 0; i < moisture.size(); i++) {
            line.getPoints()
                    .addAll(
                            OUTLINE_WIDTH * i / Math.max(1, moisture.size() - 1),
                            OUTLINE_HEIGHT * (1 - moisture.get(i) / 50));
        }
        double x = OUTLINE_WIDTH * piece.doneRatio();
        Line now = new Line(x, 0, x, OUTLINE_HEIGHT);
        now.getStyleClass().add("outline-now");
        return new javafx.scene.layout.Pane(line, now);
    }
}
