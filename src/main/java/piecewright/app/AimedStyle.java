package piecewright.app;

import java.nio.file.Path;
import java.time.Duration;
import java.util.Map;
import piecewright.quantity.HoursRange;
import piecewright.quantity.TemperatureRange;
import piecewright.store.StoreException;
import piecewright.style.MaltStyle;
import piecewright.style.OvenSchedule;
import piecewright.style.RoastSchedule;

/** What a wish for a colour made of a style: its cure, couch or roast fixed, as a kept batch remembers it. */
final class AimedStyle {
    private static final String CURE_C = "cureC";
    private static final String CURE_HOURS_FROM = "cureHoursFrom";
    private static final String CURE_HOURS_UNTIL = "cureHoursUntil";
    private static final String COUCH_INDEX_HOURS = "couchIndexHours";
    private static final String ROAST_MINUTES = "roastMinutes";

    private AimedStyle() {}

    /** Notes what the style fixes; a style as its schedule has it leaves no note. */
    static void note(MaltStyle style, Map<String, String> wish) {
        var kiln = style.kiln();
        if (kiln.cureC().lowC() == kiln.cureC().highC()) {
            wish.put(CURE_C, Double.toString(kiln.cureC().lowC()));
            wish.put(CURE_HOURS_FROM, Double.toString(kiln.cureHours().lowHours()));
            wish.put(CURE_HOURS_UNTIL, Double.toString(kiln.cureHours().highHours()));
            style.couches().hot().ifPresent(couch -> wish.put(COUCH_INDEX_HOURS, Double.toString(couch.indexHours())));
        }
        style.oven().roast().map(RoastSchedule::last).ifPresent(last -> {
            boolean solved = last.shortestMinutes() == last.longestMinutes();
            if (solved) wish.put(ROAST_MINUTES, Double.toString(last.shortestMinutes()));
        });
    }

    /** The style with what was noted. */
    static MaltStyle of(Path batchFile, MaltStyle style, Map<String, String> wish) throws StoreException {
        try {
            MaltStyle aimed = style;
            if (wish.containsKey(CURE_C)) {
                double cureC = figure(wish, CURE_C);
                HoursRange hours = new HoursRange(figure(wish, CURE_HOURS_FROM), figure(wish, CURE_HOURS_UNTIL));
                aimed = aimed.withKiln(style.kiln().withCure(new TemperatureRange(cureC, cureC), hours));
            }
            if (wish.containsKey(COUCH_INDEX_HOURS)) {
                aimed = aimed.withCouches(aimed.couches().withIndexHours(figure(wish, COUCH_INDEX_HOURS)));
            }
            if (wish.containsKey(ROAST_MINUTES)) {
                Duration last = RoastSchedule.timed(figure(wish, ROAST_MINUTES));
                OvenSchedule oven = style.oven();
                aimed = aimed.withOven(
                        new OvenSchedule(oven.stew(), oven.roast().map(roast -> roast.withLast(last))));
            }
            return aimed;
        } catch (IllegalArgumentException wrong) {
            throw new StoreException(
                    batchFile, "its wish names a cure, couch or roast that cannot be; take it from a copy", wrong);
        }
    }

    private static double figure(Map<String, String> wish, String key) {
        return Double.parseDouble(wish.getOrDefault(key, ""));
    }
}
