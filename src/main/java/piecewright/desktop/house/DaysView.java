package piecewright.desktop.house;

import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.TreeMap;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.DatePicker;
import javafx.scene.control.Label;
import javafx.scene.control.TextField;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import piecewright.house.LocalHours;
import piecewright.text.WindowWords;

/** Days on which somebody's hours are other than the weekday's. */
final class DaysView {
    private final HouseViewModel model;
    private final VBox rows = new VBox(4);
    private final VBox node = new VBox(8);
    private final DatePicker day = new DatePicker();
    private final DatePicker last = new DatePicker();
    private final TextField hours = new TextField();
    private final Label note = new Label();

    DaysView(HouseViewModel model) {
        this.model = model;
        Label title = new Label(WindowWords.say("house.days"));
        title.getStyleClass().add("strong");
        day.setId("house-day");
        day.setAccessibleText(WindowWords.say("house.day.spoken"));
        day.setPromptText(WindowWords.say("house.day"));
        last.setId("house-day-last");
        last.setAccessibleText(WindowWords.say("house.day-last.spoken"));
        last.setPromptText(WindowWords.say("house.day-last"));
        for (DatePicker each : List.of(day, last)) each.getStyleClass().add("narrow-field");
        hours.setId("house-day-hours");
        hours.setAccessibleText(WindowWords.say("house.day-hours.spoken"));
        hours.setPromptText(WindowWords.say("house.day-hours"));
        hours.setOnAction(event -> add());
        Button add = new Button(WindowWords.say("house.day-add"));
        add.setId("house-day-add");
        add.setMinWidth(Region.USE_PREF_SIZE);
        add.setOnAction(event -> add());
        HBox.setHgrow(hours, Priority.ALWAYS);
        note.setId("house-day-note");
        note.setWrapText(true);
        note.getStyleClass().add("field-note");
        note.managedProperty().bind(note.textProperty().isNotEmpty());
        node.getChildren().addAll(title, rows, new FlowPane(8, 8, day, last, hours, add), note);
        node.getStyleClass().add("card");
        model.shownProperty().addListener((shown, before, now) -> show());
        show();
    }

    Node node() {
        return node;
    }

    private void add() {
        LocalDate chosen = day.getValue();
        if (chosen == null) {
            note.setText(WindowWords.say("house.day-missing"));
            return;
        }
        LocalDate until = last.getValue() == null ? chosen : last.getValue();
        String wrong = model.except(chosen, until, hours.getText());
        note.setText(wrong);
        if (!wrong.isEmpty()) return;
        hours.clear();
        last.setValue(null);
    }

    private void show() {
        rows.getChildren().clear();
        model.shownProperty()
                .get()
                .who()
                .ifPresent(person -> new TreeMap<>(person.exceptions())
                        .forEach((date, free) -> rows.getChildren().add(row(date, free))));
    }

    private Node row(LocalDate date, List<LocalHours> free) {
        DateTimeFormatter format =
                DateTimeFormatter.ofPattern("EEE d MMM yyyy", model.units().locale());
        String there = free.isEmpty()
                ? WindowWords.say("house.away-all-day")
                : String.join(
                        ", ",
                        free.stream()
                                .map(each -> each.fromInclusive() + "–" + each.untilExclusive())
                                .toList());
        Label words = new Label(WindowWords.say("house.line", format.format(date), there));
        words.setWrapText(true);
        HBox.setHgrow(words, Priority.ALWAYS);
        words.setMaxWidth(Double.MAX_VALUE);
        Button remove = new Button(WindowWords.say("house.remove"));
        remove.setId("house-day-remove-" + date);
        remove.setAccessibleText(WindowWords.say("house.day-remove.spoken", format.format(date)));
        remove.setMinWidth(Region.USE_PREF_SIZE);
        remove.getStyleClass().add("quiet");
        remove.setOnAction(event -> remove(date));
        HBox row = new HBox(8, words, remove);
        row.getStyleClass().add("led");
        return row;
    }

    private void remove(LocalDate date) {
        HouseViewModel.Shown shown = model.shownProperty().get();
        String list = "/people/" + shown.personIndex() + "/exceptions";
        for (int i = 0; i < shown.text().size(list); i++) {
            boolean that = shown.text()
                    .value(list + "/" + i + "/date")
                    .filter(date.toString()::equals)
                    .isPresent();
            if (that) note.setText(model.remove(list + "/" + i));
        }
    }
}
