package piecewright.desktop.grain;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import javafx.scene.Node;
import javafx.scene.control.Control;
import javafx.scene.control.Label;
import javafx.scene.control.MenuButton;
import javafx.scene.control.MenuItem;
import javafx.scene.control.ScrollPane;
import javafx.scene.control.TextField;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.VBox;
import piecewright.app.GrainPurchase;
import piecewright.app.LotReport;
import piecewright.app.Workspace.Kept;
import piecewright.assess.LotJudgement;
import piecewright.desktop.paint.Signs;
import piecewright.desktop.paint.Wrapped;
import piecewright.grain.GerminationCount;
import piecewright.grain.GrainLot;
import piecewright.purchase.GrainNeed;
import piecewright.purchase.ShoppingList;
import piecewright.style.MaltStyle;
import piecewright.text.JudgementPage;
import piecewright.text.QuantityFormat;
import piecewright.text.WindowWords;

/** A lot: its dishes, what they say of it, and the grain that malt takes. */
public final class GrainView {
    private final GrainViewModel model;
    private final QuantityFormat quantities;
    private final JudgementPage judgements;
    private final VBox root = new VBox();
    private final ScrollPane scroll = new ScrollPane(root);
    private final MenuButton lot = new MenuButton();
    private final MenuButton style = new MenuButton();
    private final TextField malt = new TextField();
    private final TextField owned = new TextField();
    private final TextField sack = new TextField();
    private final FlowPane dishes = new FlowPane(24, 12);
    private final VBox share = new VBox();
    private final VBox verdict = new VBox(6);
    private final Label carry = new Label();
    private final Label note = new Label();
    private final WaterfallView waterfall;
    private List<Kept<GrainLot>> lots = List.of();

    public GrainView(GrainViewModel model) {
        this.model = model;
        this.quantities = new QuantityFormat(model.person().units());
        this.judgements = new JudgementPage(model.person().units());
        this.waterfall = new WaterfallView(quantities);
        root.getStyleClass().add("middle");
        root.setId("grain-view");
        verdict.getStyleClass().add("card");
        verdict.setId("grain-verdict");
        carry.setId("grain-carry");
        carry.setWrapText(true);
        carry.getStyleClass().add("lead");
        note.getStyleClass().add("field-note");
        note.setWrapText(true);
        note.managedProperty().bind(note.visibleProperty());
        root.getChildren()
                .addAll(
                        head(),
                        dishes,
                        share,
                        verdict,
                        section("grain.shopping"),
                        sentence(),
                        note,
                        carry,
                        waterfall.node());
        scroll.setFitToWidth(true);
        scroll.getStyleClass().add("middle-scroll");
        model.askedProperty().addListener((asked, before, now) -> words());
        model.reportProperty().addListener((report, before, now) -> report());
        model.purchaseProperty().addListener((purchase, before, now) -> purchase());
        model.noteProperty().addListener((text, before, now) -> words());
        words();
        report();
        purchase();
    }

    public Node node() {
        return scroll;
    }

    public void lots(List<Kept<GrainLot>> there) {
        lots = there;
        lot.getItems().clear();
        for (Kept<GrainLot> kept : there) {
            MenuItem item = new MenuItem(kept.thing().name());
            item.setMnemonicParsing(false);
            item.setOnAction(event -> model.chooseLot(kept.file()));
            lot.getItems().add(item);
        }
        words();
    }

    private Node head() {
        FlowPane head = new FlowPane(10, 8);
        Label title = new Label(WindowWords.say("grain.title"));
        title.getStyleClass().add("title");
        word(lot, "grain-lot");
        head.getChildren().addAll(title, lot);
        return head;
    }

    private static Label section(String key) {
        Label label = new Label(WindowWords.say(key));
        label.getStyleClass().add("title");
        return label;
    }

    private static void word(Control control, String id) {
        control.setId(id);
        control.getStyleClass().add("word");
        control.setAccessibleText(WindowWords.say(id.replaceFirst("-", ".spoken.")));
    }

    private Node sentence() {
        word(malt, "grain-malt");
        word(style, "grain-style");
        word(owned, "grain-owned");
        word(sack, "grain-sack");
        for (MaltStyle each : model.styles()) {
            MenuItem item = new MenuItem(each.title());
            item.setOnAction(event -> model.chooseStyle(each));
            style.getItems().add(item);
        }
        typed(malt, () -> model.typeMalt(malt.getText()));
        typed(owned, () -> model.typeOwned(owned.getText()));
        typed(sack, () -> model.typeSack(sack.getText()));
        FlowPane pane = new FlowPane(10, 8);
        pane.getStyleClass().add("sentence");
        pane.getChildren().addAll(led("for", malt), led("of", style), led("owned", owned), led("sack", sack));
        return pane;
    }

    private void typed(TextField field, Runnable action) {
        field.setPrefColumnCount(6);
        field.setOnAction(event -> action.run());
        field.focusedProperty().addListener((focused, before, now) -> {
            if (!now) action.run();
            if (!now) words();
        });
    }

    private static HBox led(String key, Node control) {
        Label label = new Label(WindowWords.say("grain." + key));
        label.getStyleClass().add("said");
        HBox pair = new HBox(8, label, control);
        pair.getStyleClass().add("led");
        return pair;
    }

    private void words() {
        GrainViewModel.Asked asked = model.askedProperty().get();
        note.setText(model.noteProperty().get());
        note.setVisible(!note.getText().isEmpty());
        style.setText(asked.style().title());
        lots.stream()
                .filter(kept -> kept.file().equals(asked.lot()))
                .findFirst()
                .ifPresent(kept -> lot.setText(kept.thing().name()));
        if (note.isVisible()) return;
        shown(malt, asked.maltKg());
        shown(owned, asked.ownedKg());
        shown(sack, asked.sackKg());
    }

    /** What is being typed is left alone. */
    private void shown(TextField field, double kg) {
        if (!field.isFocused() || field.getText().isEmpty()) field.setText(quantities.roughMass(kg));
    }

    private void report() {
        dishes.getChildren().clear();
        share.getChildren().clear();
        verdict.getChildren().clear();
        model.reportProperty().get().ifPresent(this::report);
    }

    private void report(LotReport report) {
        List<GerminationCount> counts = report.lot().dishes();
        String focused = scroll.getScene() != null && scroll.getScene().getFocusOwner() != null
                ? String.valueOf(scroll.getScene().getFocusOwner().getId())
                : "";
        for (int i = 0; i < counts.size(); i++) {
            int dish = i;
            dishes.getChildren().add(dish(i, counts.get(i), corns -> model.count(dish, corns)));
        }
        if (focused.startsWith("dish-")) {
            Optional.ofNullable(dishes.lookup("#" + focused)).ifPresent(Node::requestFocus);
        }
        LotJudgement judgement = report.judgement();
        judgement.counts().energy().ifPresent(energy -> {
            String spoken = WindowWords.say(
                    "grain.share.spoken",
                    quantities.percent(energy.shareFraction()),
                    quantities.percent(energy.wilson().lowFraction()),
                    quantities.percent(energy.wilson().highFraction()));
            share.getChildren().addAll(Wrapped.words("body", spoken), new ShareBar(energy, spoken));
        });
        String said = judgements.verdict(judgement);
        Label words = new Label(said.substring(0, 1).toUpperCase(Locale.ROOT) + said.substring(1));
        words.getStyleClass().add("lead");
        words.setId("grain-verdict-words");
        Node sign = switch (judgement.verdict()) {
            case MALT_IT -> Signs.good();
            case DO_NOT_MALT -> Signs.stop();
            default -> Signs.caution();
        };
        verdict.getChildren().add(new HBox(8, sign, words));
        judgement
                .reasons()
                .forEach(reason -> verdict.getChildren().add(Wrapped.words("body", judgements.reason(reason))));
        judgement
                .nextTests()
                .forEach(test -> verdict.getChildren()
                        .add(Wrapped.words("body", WindowWords.say("grain.next", judgements.next(test)))));
        verdict.getChildren()
                .add(Wrapped.words("body", WindowWords.say("grain.plan", judgements.effects(judgement.effects()))));
    }

    private Node dish(int index, GerminationCount count, DishGrid.Counted counted) {
        Label title = new Label(WindowWords.say(
                "grain.dish",
                quantities.volume(count.waterMl() / 1000),
                Integer.toString(count.germinated()),
                Integer.toString(count.corns())));
        title.getStyleClass().add("strong");
        return new VBox(4, title, new DishGrid(index + 1, count, counted));
    }

    private void purchase() {
        Optional<GrainPurchase> purchase = model.purchaseProperty().get();
        waterfall.node().setVisible(purchase.isPresent());
        if (purchase.isEmpty()) {
            carry.setText(WindowWords.say("grain.no-malt"));
            return;
        }
        GrainNeed need = purchase.get().list().needs().get(0);
        ShoppingList.Line line = purchase.get().list().lines().get(0);
        String buy = line.missingKg() <= 0.001
                ? WindowWords.say("grain.carry.nothing")
                : line.sacks().isEmpty()
                        ? WindowWords.say("grain.carry.weight", quantities.roughMass(line.missingKg()))
                        : line.sacks().entrySet().stream()
                                .map(entry -> WindowWords.say(
                                        "grain.carry.sack",
                                        Integer.toString(entry.getValue()),
                                        quantities.roughMass(entry.getKey().sizeKg())))
                                .findFirst()
                                .orElse("");
        carry.setText(WindowWords.say(
                "grain.carry",
                quantities.mass(need.waterfall().grainKg()),
                quantities.roughMass(need.lowGrainKg()),
                quantities.roughMass(need.highGrainKg()),
                buy));
        waterfall.show(need.waterfall());
    }
}
