package piecewright.store;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Comparator;
import java.util.Locale;
import java.util.Set;
import piecewright.colour.CureMap;
import piecewright.colour.RoastMap;
import piecewright.colour.RoastSolver;
import piecewright.colour.Swatch;
import tools.jackson.databind.node.ObjectNode;

/** Writes the cures or last roasts of a style over temperature and time as a JSON document, format 1. */
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
            forbid(node, cell.forbidden());
        }
        return JsonText.write(root);
    }

    public static String write(String style, RoastMap map) {
        ObjectNode root = JsonText.newObject();
        root.put("format", 1);
        root.put("style", style);
        var cells = root.putArray("roasts");
        for (RoastMap.Cell cell : map.cells()) {
            ObjectNode node = cells.addObject();
            node.put("roastC", rounded(cell.roasted().lastC(), 2));
            node.put("roastMinutes", rounded(cell.roasted().last().toSeconds() / 60.0, 2));
            node.put("colourEbc", rounded(cell.roasted().colourEbc(), 2));
            node.put("hex", Swatch.ofMalt(cell.roasted().colourEbc()).hex());
            node.put("diastaticFraction", RoastSolver.DIASTATIC_FRACTION);
            node.put("endMoistureWetBasisFraction", rounded(cell.roasted().endMoistureFraction(), 4));
            forbid(node, cell.forbidden());
        }
        return JsonText.write(root);
    }

    private static void forbid(ObjectNode node, Set<? extends Enum<?>> reasons) {
        var forbidden = node.putArray("forbidden");
        reasons.stream()
                .sorted(Comparator.comparingInt(Enum::ordinal))
                .forEach(
                        why -> forbidden.add(why.name().toLowerCase(Locale.ROOT).replace('_', '-')));
    }

    private static BigDecimal rounded(double figure, int decimals) {
        return BigDecimal.valueOf(figure).setScale(decimals, RoundingMode.HALF_UP);
    }
}
