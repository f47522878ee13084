package piecewright.desktop.act;

import java.time.ZoneId;
import java.util.List;
import java.util.Optional;
import javafx.geometry.Insets;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import piecewright.desktop.paint.Signs;
import piecewright.plan.Plan;
import piecewright.text.DisplayUnits;
import piecewright.text.MomentFormat;
import piecewright.text.WindowWords;

/** One act: when, what to do, what to find, what to look and smell for, and what may hurt. */
public final class ActSheet {
    private final DisplayUnits units;
    private final VBox box = new VBox();
    private final ScrollPane scroll = new ScrollPane(box);

    public ActSheet(DisplayUnits units) {
        this.units = units;
        box.getStyleClass().add("sheet");
        box.setId("act-sheet");
        scroll.setFitToWidth(true);
        scroll.setHbarPolicy(ScrollPane.ScrollBarPolicy.NEVER);
        scroll.getStyleClass().add("sheet-scroll");
        scroll.setAccessibleText(WindowWords.say("act.spoken"));
        scroll.setId("act-sheet-scroll");
        clear();
    }

    public Node node() {
        return scroll;
    }

    /** Shows an act of a plan; a hint when there is none of that id. */
    public void show(Optional<Plan> plan, String actId) {
        Optional<ActPage> page = plan.flatMap(known -> ActPage.of(known, actId, units));
        if (page.isPresent()) fill(page.get(), plan.get().subject().zone());
        else clear();
        scroll.setVvalue(0);
    }

    private void clear() {
        Label hint = words("body", WindowWords.say("act.none"));
        hint.setPadding(new Insets(24, 0, 0, 0));
        box.getChildren().setAll(hint);
    }

    private void fill(ActPage page, ZoneId zone) {
        Label title = words("title", page.head().title());
        title.setId("act-title");
        Label when = words("lead", page.head().when());
        when.setId("act-when");
        SlipWedge wedge = new SlipWedge(new MomentFormat(zone, units.locale()));
        wedge.show(page.window(), page.at(), page.head().window());
        Label mass = words("target", page.target().mass());
        mass.setId("act-target");
        box.getChildren()
                .setAll(
                        title,
                        words("caption", page.head().place()),
                        when,
                        wedge,
                        words("body-2", page.head().window()),
                        rule());
        int number = 1;
        for (String step : page.steps()) box.getChildren().add(step(number++, step));
        box.getChildren().addAll(rule(), words("section", WindowWords.say("act.expected")), mass);
        box.getChildren().add(words("body-2", page.target().others()));
        box.getChildren()
                .addAll(
                        words("section", WindowWords.say("act.look")),
                        words("body", page.words().look()));
        for (String caution : page.words().cautions()) box.getChildren().add(caution(caution));
        box.getChildren()
                .addAll(
                        words("section", WindowWords.say("act.why")),
                        words("body-2", page.words().why()));
    }

    private static Node step(int number, String text) {
        Label count = new Label(Integer.toString(number));
        count.getStyleClass().add("step-number");
        Label step = words("body", text);
        HBox.setHgrow(step, Priority.ALWAYS);
        HBox line = new HBox(8, count, step);
        line.getStyleClass().add("step");
        return line;
    }

    private static Node caution(String text) {
        Label words = words("caution-words", text);
        HBox.setHgrow(words, Priority.ALWAYS);
        HBox card = new HBox(8, Signs.caution(), words);
        card.getStyleClass().add("caution-card");
        return card;
    }

    private static Node rule() {
        VBox rule = new VBox();
        rule.getStyleClass().add("rule");
        return rule;
    }

    private static Label words(String style, String text) {
        Label label = new Label(text);
        label.setWrapText(true);
        label.setMinHeight(Label.USE_PREF_SIZE);
        label.getStyleClass().addAll(List.of(style));
        return label;
    }
}
