package piecewright.text;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import piecewright.purchase.Currency;
import piecewright.purchase.GrainNeed;
import piecewright.purchase.ShoppingList;
import piecewright.purchase.Waterfall;

/** What malt takes and what to carry home, in lines. */
public final class PurchasePage {
    private static final int NAMES_WIDTH = 34;

    private final QuantityFormat quantities;
    private final Currency currency;

    public PurchasePage(DisplayUnits units, Currency currency) {
        this.quantities = new QuantityFormat(units);
        this.currency = currency;
    }

    public String page(ShoppingList list) {
        StringBuilder page = new StringBuilder();
        list.needs()
                .forEach(need -> page.append(need(need, range("grain", need.lowGrainKg(), need.highGrainKg())))
                        .append('\n'));
        list.there()
                .forEach(need -> page.append(need(need, range("malt", need.lowMaltKg(), need.highMaltKg())))
                        .append('\n'));
        if (!list.lines().isEmpty()) page.append(Phrases.say("buy.carry-home")).append('\n');
        list.lines().forEach(line -> page.append(Paragraph.of("  ", carry(line))));
        return page.toString();
    }

    /** A batch that the house cannot make, and why. */
    public String unplanned(String style, List<String> reasons) {
        return Paragraph.of("", Phrases.say("buy.unplanned", style, String.join(" ", reasons)));
    }

    private String range(String what, double lowKg, double highKg) {
        return Phrases.say("buy.likely." + what, quantities.mass(lowKg), quantities.mass(highKg));
    }

    private String need(GrainNeed need, String likely) {
        Waterfall fall = need.waterfall();
        StringBuilder text = new StringBuilder();
        text.append(Phrases.say("buy.head", need.style(), need.lot().name())).append('\n');
        text.append(row(Phrases.say("buy.row.grain"), fall.grainKg()));
        fall.items().stream()
                .filter(item -> Math.abs(item.lostKg()) >= 0.0005)
                .forEach(item -> text.append(row(Phrases.say("buy.loss." + Phrases.key(item.loss())), item.lostKg())));
        text.append(row(Phrases.say("buy.row.malt"), fall.usefulMaltKg()));
        text.append(row(Phrases.say("buy.row.scale"), fall.scaleMaltKg()));
        text.append(Paragraph.of("  ", likely));
        if (need.growsPoorly()) {
            text.append(Paragraph.of("  ", Phrases.say("buy.by-weight", quantities.mass(need.byWeightKg()))));
        }
        return text.append(Paragraph.of("  ", Phrases.say(quantities, "buy.basis." + Phrases.key(need.basis()))))
                .toString();
    }

    private String row(String name, double massKg) {
        String mass = quantities.mass(Math.abs(massKg));
        return "  " + name + " ".repeat(Math.max(1, NAMES_WIDTH - name.length())) + (massKg < 0 ? "-" : "") + mass
                + "\n";
    }

    private String carry(ShoppingList.Line line) {
        String needed = quantities.mass(line.neededKg());
        String grain = line.grain().key();
        String text = line.ownedKg() > 0
                ? Phrases.say("buy.line.owned", grain, needed, quantities.mass(line.ownedKg()), bought(line))
                : Phrases.say("buy.line", grain, needed, bought(line));
        Optional<BigDecimal> cost = line.cost().filter(sum -> sum.signum() > 0);
        if (cost.isEmpty()) return text;
        String all = currency.of(cost.get());
        return text + " "
                + line.costPerMaltKg()
                        .map(perKg -> Phrases.say("buy.cost.each", all, currency.of(perKg)))
                        .orElse(Phrases.say("buy.cost", all));
    }

    private String bought(ShoppingList.Line line) {
        if (line.missingKg() <= 0.001) return Phrases.say("buy.nothing");
        if (line.sacks().isEmpty()) return quantities.shopMass(line.missingKg());
        List<String> sacks = new ArrayList<>();
        line.sacks()
                .forEach((sack, count) ->
                        sacks.add(Phrases.say("buy.sacks", Integer.toString(count), quantities.sack(sack.sizeKg()))));
        return String.join(" " + Phrases.say("buy.and") + " ", sacks);
    }
}
