package piecewright.text;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import piecewright.journal.Sign;

/** The words for what is seen, smelt or happens. */
final class SpokenSigns {
    private static final Map<Sign, Pattern> WORDS = words();
    private static final Pattern SMELLS =
            Pattern.compile("(?<!\\p{L})(?:smells?|tastes?|smell|looks?|saw|seen)(?: of| like)?\\s+\\S.*$");

    private SpokenSigns() {}

    /** A sign with the words that told it. */
    record Told(Sign sign, String words) {}

    private static Map<Sign, Pattern> words() {
        Map<Sign, Pattern> words = new LinkedHashMap<>();
        words.put(Sign.POWER_BACK, word("power (?:is )?(?:back|on)(?: again)?|electricity back"));
        words.put(
                Sign.POWER_OUT,
                word("power (?:is )?(?:out|off|cut|failed|gone)|power ?cut|power failure|no power|blackout"));
        words.put(
                Sign.KILN_BUSY,
                word("(?:kiln|oven|dryer|dehydrator) (?:is )?(?:still )?(?:busy|taken|full|not (?:free|ready)|broken)"
                        + "|no kiln"));
        words.put(
                Sign.NOT_HEATING,
                word("(?:does not|doesn't|not|no) (?:heat|heating|warm|warming)(?: up)?|stays cold|heap is cold"));
        words.put(Sign.MILKY_CORNS, word("milky(?: (?:corns?|juice))?"));
        words.put(Sign.SOUR, word("(?:(?:water )?(?:smells?|tastes?) )?(?:a bit |slightly )?sour(?: water)?"));
        words.put(Sign.FOUL, word("(?:smells? )?(?:foul|rotten|putrid)"));
        words.put(Sign.MUSTY, word("(?:smells? )?(?:musty|mouldy smell|mildew\\w*)"));
        words.put(Sign.PINK, word("(?:pink|orange)(?: corns?| patch(?:es)?)?"));
        words.put(
                Sign.FUZZ,
                word("(?:some |a few |white |grey )*(?:fuzz|fuzzy(?: corns?)?|mould|mold|mouldy|moldy)(?: corns?)?"));
        words.put(Sign.WET_FILM, word("(?:wet |water )?film|glossy|surface (?:is )?wet"));
        words.put(
                Sign.DRY_ROOTS,
                word("(?:roots? (?:are |look )?(?:dry|dull|limp|brown))|dry roots?|bed (?:is )?dry|dried out"));
        words.put(Sign.MATTED, word("matted|felted|matting"));
        words.put(Sign.OVERGROWN, word("overgrown|shoots? (?:are )?out(?: of (?:the )?husk)?"));
        words.put(Sign.UNEVEN, word("uneven(?:ly)?(?: growth)?"));
        words.put(Sign.BROKE, word("(?:bed )?(?:broke|breaks|lies loose|falls apart)"));
        words.put(Sign.SWEET_SMELL, word("(?:smells? (?:of |like )?)?(?:sweet|fresh|apples?|cucumbers?|clean|good)"));
        return words;
    }

    private static Pattern word(String words) {
        return Pattern.compile("(?<!\\p{L})(?:" + words + ")(?!\\p{L})");
    }

    /** Takes out the next sign; an unknown smell is kept in its words. */
    static Optional<Told> take(RestOfLine line) {
        for (Map.Entry<Sign, Pattern> each : WORDS.entrySet()) {
            Optional<MatchResult> found = line.take(each.getValue());
            if (found.isPresent())
                return Optional.of(new Told(each.getKey(), found.get().group().strip()));
        }
        return line.take(SMELLS)
                .map(found -> new Told(
                        Sign.OTHER, found.group().replace("\u0001", " ").strip()));
    }
}
