package piecewright.text;

import java.util.Locale;
import java.util.Map;
import piecewright.purchase.GrainNeed;
import piecewright.purchase.Sack;
import piecewright.purchase.ShoppingList;
import piecewright.purchase.Waterfall;

/** What malt takes and what to carry home, in lines. */
public final class PurchasePage {
    private final QuantityFormat quantities;

    public PurchasePage(DisplayUnits units) {
        this.quantities = new QuantityFormat(units);
    }

    public String page(ShoppingList list) {
        StringBuilder page = new StringBuilder();
        list.needs().forEach(need -> page.append(need(need)).append('\n'));
        page.append("To carry home\n");
        list.lines().forEach(line -> page.append(Paragraph.of("  ", carry(line))));
        return page.toString();
    }

    private String need(GrainNeed need) {
        Waterfall fall = need.waterfall();
        StringBuilder text = new StringBuilder();
        text.append(need.style()).append(" from ").append(need.lot().name()).append('\n');
        text.append(row("grain", fall.grainKg()));
        fall.items().stream()
                .filter(item -> Math.abs(item.lostKg()) >= 0.0005)
                .forEach(item -> text.append(row("less " + loss(item.loss()), item.lostKg())));
        text.append(row("malt from germinated corns", fall.usefulMaltKg()));
        text.append(row("weight on the scale", fall.scaleMaltKg()));
        text.append(Paragraph.of(
                "  ",
                "Likely " + quantities.mass(need.lowGrainKg()) + " to " + quantities.mass(need.highGrainKg())
                        + " of grain (four times in five)."));
        if (need.growsPoorly()) {
            text.append(Paragraph.of(
                    "  ",
                    "By weight alone " + quantities.mass(need.byWeightKg())
                            + " would do, but ungerminated corns are no malt: do not buy by it."));
        }
        text.append(Paragraph.of("  ", basis(need)));
        return text.toString();
    }

    private static String basis(GrainNeed need) {
        return need.basis() == GrainNeed.Basis.PLAN
                ? "By the figures of the plan."
                : "By a usual course at 15 °C, for no house was given.";
    }

    private String row(String name, double massKg) {
        String mass = quantities.mass(Math.abs(massKg));
        return "  " + name + " ".repeat(Math.max(1, 34 - name.length())) + (massKg < 0 ? "-" : "") + mass + "\n";
    }

    private static String loss(Waterfall.Loss loss) {
        return switch (loss) {
            case CLEANING -> "cleaning and floaters";
            case MOISTURE_CHANGE -> "change of moisture";
            case UNGERMINATED -> "ungerminated corns";
            default -> loss.name().toLowerCase(Locale.ROOT);
        };
    }

    private String carry(ShoppingList.Line line) {
        StringBuilder text = new StringBuilder(line.grain().key())
                .append(": ")
                .append(quantities.mass(line.neededKg()))
                .append(" with samples for tests");
        if (line.ownedKg() > 0)
            text.append(", ").append(quantities.mass(line.ownedKg())).append(" there already");
        text.append("; buy ").append(bought(line)).append('.');
        line.cost()
                .filter(cost -> cost.signum() > 0)
                .ifPresent(cost -> text.append(" Costs ").append(cost));
        line.costPerMaltKg().ifPresent(cost -> text.append(", ").append(cost).append(" for each kg of malt."));
        return text.toString();
    }

    private String bought(ShoppingList.Line line) {
        if (line.missingKg() <= 0.001) return "nothing";
        if (line.sacks().isEmpty()) return quantities.mass(line.missingKg());
        StringBuilder sacks = new StringBuilder();
        for (Map.Entry<Sack, Integer> entry : line.sacks().entrySet()) {
            if (sacks.length() > 0) sacks.append(" and ");
            sacks.append(entry.getValue())
                    .append(" × ")
                    .append(quantities.mass(entry.getKey().sizeKg()));
        }
        return sacks.toString();
    }
}
