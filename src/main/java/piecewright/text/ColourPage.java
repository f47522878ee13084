package piecewright.text;

import java.time.Duration;
import java.util.Locale;
import piecewright.colour.ColourReach;
import piecewright.colour.Cure.Couch;
import piecewright.colour.Cure.Cured;
import piecewright.colour.EnzymeBand;
import piecewright.colour.RoastSolver.Roasted;
import piecewright.colour.Swatch;
import piecewright.quantity.Units;

/** A malt colour on all scales, and how styles reach it, in sentences. */
public final class ColourPage {
    private final QuantityFormat quantities;

    public ColourPage(DisplayUnits units) {
        this.quantities = new QuantityFormat(units);
    }

    public String head(double colourEbc) {
        double srm = Units.srmOfEbc(colourEbc);
        return Phrases.say(
                        "colour.head",
                        tenths(colourEbc),
                        tenths(srm),
                        tenths(Units.lovibondOfSrm(srm)),
                        Swatch.ofMalt(colourEbc).hex())
                + "\n";
    }

    private static String tenths(double figure) {
        return String.format(Locale.ROOT, "%.1f", figure);
    }

    public String way(String style, ColourReach reach) {
        return Paragraph.of("  " + style + ": ", sentence(reach));
    }

    private String sentence(ColourReach reach) {
        if (reach instanceof ColourReach.Reached reached) {
            EnzymeBand enzymes = EnzymeBand.of(reached.cured().diastaticFraction());
            return Phrases.say(
                    "colour.by-cure",
                    cure(reached.cured()),
                    quantities.colour(reached.band().lowEbc()),
                    quantities.colour(reached.band().highEbc()),
                    quantities.percent(enzymes.lowFraction()),
                    quantities.percent(enzymes.highFraction()),
                    quantities.percent(reached.cured().diastaticFraction()));
        }
        if (reach instanceof ColourReach.OutOfReach out) {
            return outOfReach(out.nearest().colourEbc(), cure(out.nearest()), out.change());
        }
        if (reach instanceof ColourReach.ReachedByRoast reached) {
            return Phrases.say(
                    "colour.by-roast",
                    roast(reached.roasted()),
                    quantities.colour(reached.band().lowEbc()),
                    quantities.colour(reached.band().highEbc()));
        }
        if (reach instanceof ColourReach.RoastOutOfReach out) {
            return outOfReach(
                    out.nearest().colourEbc(), Phrases.say("colour.roast", roast(out.nearest())), out.change());
        }
        if (reach instanceof ColourReach.NoBox) return Phrases.say("colour.no-box");
        ColourReach.NoHeater cold = (ColourReach.NoHeater) reach;
        return Phrases.say(
                "colour.no-heater", quantities.temperature(cold.neededC()), quantities.temperature(cold.hottestC()));
    }

    private String outOfReach(double nearestEbc, String how, ColourReach.Change needed) {
        return Phrases.say(
                "colour.out-of-reach",
                quantities.colour(nearestEbc),
                how,
                Phrases.say("colour.needs." + Phrases.key(needed)));
    }

    private String hours(double hours) {
        return quantities.time(Duration.ofMinutes(Math.round(hours * 60)));
    }

    private String roast(Roasted roasted) {
        return Phrases.say("colour.time-at", quantities.timer(roasted.last()), quantities.temperature(roasted.lastC()));
    }

    private String cure(Cured cured) {
        String heat = Phrases.say("colour.time-at", hours(cured.cureHours()), quantities.temperature(cured.cureC()));
        if (cured.couch().isEmpty()) return Phrases.say("colour.cure", heat);
        Couch couch = cured.couch().get();
        String index = tenths(couch.indexHours());
        return couch.usual().reached()
                ? Phrases.say(
                        "colour.couch-and-cure", hours(Math.rint(couch.usual().hours())), index, heat)
                : Phrases.say("colour.index-and-cure", index, heat);
    }
}
