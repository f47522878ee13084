package piecewright.desktop.colour;

import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.TextField;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import piecewright.desktop.colour.BeerViewModel.Answer;
import piecewright.desktop.colour.BeerViewModel.Asked;
import piecewright.text.WindowWords;

/** A sentence that starts from the beer and ends with the colour its malt must have. */
final class BeerView {
    private final BeerViewModel model;
    private final TextField volume = field("beer-volume", 4);
    private final TextField beer = field("beer-colour", 5);
    private final TextField grist = field("beer-grist", 4);
    private final TextField share = field("beer-share", 3);
    private final TextField rest = field("beer-rest", 4);
    private final Label malt = new Label();
    private final Button take = new Button(WindowWords.say("beer.take"));
    private final Label note = new Label();
    private final VBox node = new VBox(4);

    /** Told of a colour that is to be looked for. */
    interface Taken {
        void colour(double maltEbc);
    }

    BeerView(BeerViewModel model, Taken taken) {
        this.model = model;
        malt.setId("beer-malt");
        malt.getStyleClass().add("strong");
        take.setId("beer-take");
        take.setMinWidth(Region.USE_PREF_SIZE);
        take.setOnAction(event -> model.answerProperty().get().maltEbc().ifPresent(taken::colour));
        note.setId("beer-note");
        note.setWrapText(true);
        note.getStyleClass().add("field-note");
        note.managedProperty().bind(note.textProperty().isNotEmpty());
        FlowPane sentence = new FlowPane(8, 6);
        sentence.getStyleClass().add("sentence");
        sentence.getChildren()
                .addAll(
                        led("beer.for", volume),
                        led("beer.of", beer),
                        led("beer.from", grist),
                        led("beer.with", share),
                        led("beer.rest", rest),
                        malt,
                        take);
        node.getChildren().addAll(sentence, note);
        show(model.answerProperty().get());
        model.answerProperty().addListener((answer, before, now) -> show(now));
    }

    Node node() {
        return node;
    }

    private TextField field(String id, int columns) {
        TextField field = new TextField();
        field.setId(id);
        field.setPrefColumnCount(columns);
        field.setAccessibleText(WindowWords.say(id.replaceFirst("-", ".spoken.")));
        field.textProperty().addListener((text, before, now) -> {
            if (field.isFocused()) ask();
        });
        return field;
    }

    private void ask() {
        model.ask(new Asked(volume.getText(), beer.getText(), grist.getText(), share.getText(), rest.getText()));
    }

    private static HBox led(String key, TextField field) {
        Label label = new Label(WindowWords.say(key));
        label.setMinWidth(Region.USE_PREF_SIZE);
        HBox pair = new HBox(8, label, field);
        pair.getStyleClass().add("led");
        return pair;
    }

    private void show(Answer answer) {
        show(volume, answer.asked().volume());
        show(beer, answer.asked().beer());
        show(grist, answer.asked().grist());
        show(share, answer.asked().share());
        show(rest, answer.asked().rest());
        malt.setText(answer.sentence());
        note.setText(answer.wrong());
        take.setDisable(answer.maltEbc().isEmpty());
    }

    private static void show(TextField field, String text) {
        if (!field.getText().equals(text)) field.setText(text);
    }
}
