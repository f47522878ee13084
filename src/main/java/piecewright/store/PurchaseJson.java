package piecewright.store;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import java.util.Locale;
import piecewright.purchase.Currency;
import piecewright.purchase.GrainNeed;
import piecewright.purchase.ShoppingList;
import tools.jackson.databind.node.ObjectNode;

/** Writes what malt takes and what to buy as a JSON document, format 1, masses to the gram. */
public final class PurchaseJson {
    private final Currency currency;
    private final ObjectNode root = JsonText.newObject();

    public PurchaseJson(Currency currency) {
        this.currency = currency;
        root.put("format", 1);
    }

    /** Notes a batch that the house cannot make; its figures are those of a usual course. */
    public void addUnplanned(String style, List<String> reasons) {
        ObjectNode node = root.withArray("unplanned").addObject();
        node.put("style", style);
        var texts = node.putArray("reasons");
        reasons.forEach(texts::add);
    }

    public String write(ShoppingList list) {
        if (!currency.name().isEmpty()) root.put("currency", currency.name());
        var needs = root.putArray("batches");
        list.needs().forEach(need -> write(need, needs.addObject()));
        list.there().forEach(need -> write(need, needs.addObject()));
        var lines = root.putArray("shopping");
        list.lines().forEach(line -> {
            ObjectNode node = lines.addObject();
            node.put("grain", line.grain().key());
            node.put("neededKg", grams(line.neededKg()));
            node.put("ownedKg", grams(line.ownedKg()));
            node.put("missingKg", grams(line.missingKg()));
            var sacks = node.putArray("sacks");
            line.sacks().forEach((sack, count) -> {
                ObjectNode bought = sacks.addObject();
                bought.put("count", count);
                bought.put("sizeKg", grams(sack.sizeKg()));
                sack.price().ifPresent(price -> bought.put("price", price));
            });
            line.cost().ifPresent(cost -> node.put("cost", cost));
            line.costPerMaltKg().ifPresent(cost -> node.put("costPerMaltKg", cost));
        });
        return JsonText.write(root);
    }

    private static void write(GrainNeed need, ObjectNode node) {
        node.put("style", need.style());
        node.put("lot", need.lot().name());
        node.put("basis", need.basis().name().toLowerCase(Locale.ROOT).replace('_', '-'));
        node.put("rawGrainKg", grams(need.waterfall().grainKg()));
        node.put("likelyLowKg", grams(need.lowGrainKg()));
        node.put("likelyHighKg", grams(need.highGrainKg()));
        node.put("byWeightAloneKg", grams(need.byWeightKg()));
        ObjectNode losses = node.putObject("lossesKg");
        need.waterfall()
                .items()
                .forEach(item -> losses.put(
                        item.loss().name().toLowerCase(Locale.ROOT).replace('_', '-'), grams(item.lostKg())));
        node.put("finishedMaltKg", grams(need.waterfall().usefulMaltKg()));
        node.put("scaleMaltKg", grams(need.waterfall().scaleMaltKg()));
    }

    private static BigDecimal grams(double massKg) {
        return BigDecimal.valueOf(massKg).setScale(3, RoundingMode.HALF_UP);
    }
}
