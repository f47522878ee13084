package piecewright.store;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Locale;
import piecewright.colour.CureMap;
import piecewright.colour.Swatch;
import tools.jackson.databind.node.ObjectNode;

/** Writes the cures of a style over temperature and hours as a JSON document, format 1. */
public final class CureMapJson {
    private CureMapJson() {}

    public static String write(String style, CureMap map) {
        ObjectNode root = JsonText.newObject();
        root.put("format", 1);
        root.put("style", style);
        var cells = root.putArray("cures");
        for (CureMap.Cell cell : map.cells()) {
            ObjectNode node = cells.addObject();
            node.put("cureC", rounded(cell.cured().cureC(), 2));
            node.put("cureHours", rounded(cell.cured().cureHours(), 2));
            node.put("colourEbc", rounded(cell.cured().colourEbc(), 2));
            node.put("hex", Swatch.ofMalt(cell.cured().colourEbc()).hex());
            node.put("diastaticFraction", rounded(cell.cured().diastaticFraction(), 3));
            node.put("endMoistureWetBasisFraction", rounded(cell.cured().endMoistureFraction(), 4));
            var forbidden = node.putArray("forbidden");
            cell.forbidden().stream()
                    .sorted()
                    .forEach(why ->
                            forbidden.add(why.name().toLowerCase(Locale.ROOT).replace('_', '-')));
        }
        return JsonText.write(root);
    }

    private static BigDecimal rounded(double figure, int decimals) {
        return BigDecimal.valueOf(figure).setScale(decimals, RoundingMode.HALF_UP);
    }
}
