package piecewright.store;

import java.util.Locale;
import piecewright.colour.ColourReach;
import piecewright.colour.Cure.Cured;
import piecewright.colour.EnzymeBand;
import piecewright.colour.RoastSolver;
import piecewright.colour.RoastSolver.Roasted;
import piecewright.colour.Swatch;
import piecewright.quantity.Units;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.ObjectNode;

/** Writes a malt colour and how styles reach it as a JSON document, format 1. */
public final class ColourJson {
    private final ObjectNode root = JsonText.newObject();
    private final ArrayNode styles;

    public ColourJson(double colourEbc) {
        root.put("format", 1);
        root.put("colourEbc", colourEbc);
        root.put("colourSrm", Units.srmOfEbc(colourEbc));
        root.put("colourLovibond", Units.lovibondOfSrm(Units.srmOfEbc(colourEbc)));
        root.put("hex", Swatch.ofMalt(colourEbc).hex());
        styles = root.putArray("styles");
    }

    /** Adds a style. */
    public void add(String style, ColourReach reach) {
        ObjectNode node = styles.addObject();
        node.put("style", style);
        node.put("reached", reach.isReached());
        if (reach instanceof ColourReach.Reached reached) {
            put(node, reached.cured());
            node.put("lowEbc", reached.band().lowEbc());
            node.put("highEbc", reached.band().highEbc());
        } else if (reach instanceof ColourReach.OutOfReach out) {
            put(node, out.nearest());
            node.put("needs", out.change().name().toLowerCase(Locale.ROOT).replace('_', '-'));
        } else if (reach instanceof ColourReach.ReachedByRoast reached) {
            put(node, reached.roasted());
            node.put("lowEbc", reached.band().lowEbc());
            node.put("highEbc", reached.band().highEbc());
        } else if (reach instanceof ColourReach.RoastOutOfReach out) {
            put(node, out.nearest());
            node.put("needs", out.change().name().toLowerCase(Locale.ROOT).replace('_', '-'));
        } else if (reach instanceof ColourReach.NoHeater cold) {
            node.put("neededC", cold.neededC());
            node.put("hottestC", cold.hottestC());
        } else if (reach instanceof ColourReach.NoBox) {
            node.put("needs", "a-box");
        }
    }

    private static void put(ObjectNode node, Roasted roasted) {
        node.put("roastC", roasted.lastC());
        node.put("roastMinutes", roasted.last().toSeconds() / 60.0);
        node.put("colourEbc", roasted.colourEbc());
        node.put("diastaticFraction", RoastSolver.DIASTATIC_FRACTION);
    }

    private static void put(ObjectNode node, Cured cured) {
        cured.couch().ifPresent(couch -> {
            node.put("couchIndexHours", couch.indexHours());
            if (couch.usual().reached())
                node.put("usualCouchHours", couch.usual().hours());
        });
        node.put("cureC", cured.cureC());
        node.put("cureHours", cured.cureHours());
        node.put("colourEbc", cured.colourEbc());
        node.put("diastaticFraction", cured.diastaticFraction());
        EnzymeBand enzymes = EnzymeBand.of(cured.diastaticFraction());
        node.putArray("diastaticFractionBand")
                .add(enzymes.lowFraction())
                .add(cured.diastaticFraction())
                .add(enzymes.highFraction());
    }

    public String write() {
        return JsonText.write(root);
    }
}
