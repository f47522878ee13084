package piecewright.text;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;
import piecewright.plan.ActKind;

/** The words for acts in a line. */
final class SpokenActs {
    private static final Map<ActKind, Pattern> WORDS = words();
    private static final Pattern STARTED = Pattern.compile("(?<!\\p{L})(?:started|begun|began|start)(?!\\p{L})");

    private SpokenActs() {}

    private static Map<ActKind, Pattern> words() {
        Map<ActKind, Pattern> words = new LinkedHashMap<>();
        words.put(ActKind.DEROOT, word("de-?rooted|de-?rooting|de-?root|rubbed off the roots|cleaned|culms off"));
        words.put(ActKind.DRAIN, word("drained|draining|drain|poured off|water off|steep-?out"));
        words.put(
                ActKind.SOAK,
                word("soaked|soaking|soak|under water|steeped|steeping|steep-?in|in water|filled|water on|refilled"));
        words.put(ActKind.HEAP, word("heaped(?: up)?|heaping(?: up)?|in(?:to)? the wet couch"));
        words.put(ActKind.WITHER, word("withered|withering|wither|spread (?:out )?(?:thin )?to wither"));
        words.put(
                ActKind.FLOOR,
                word(
                        "spread(?: out)?(?: on the floor| on trays)?|floored|flooring|cast|casting|on the floor|on trays|laid out"));
        words.put(
                ActKind.LOWER,
                word("turned (?:it |the heat |the kiln )?(?:down|off)|lowered|lowering|heat (?:down|off)"));
        words.put(ActKind.SPRINKLE, word("sprinkled|sprinkling|sprinkle|watered|sprayed"));
        words.put(ActKind.TURN, word("turned|turning|turn|mixed"));
        words.put(ActKind.STIR, word("stirred|stirring|stir"));
        words.put(ActKind.LOAD, word("loaded|loading|load|in(?:to)? the kiln|kiln on"));
        words.put(ActKind.OFF, word("off(?: the)? kiln|kiln off|unloaded|thrown off|out of the kiln|taken off"));
        words.put(ActKind.CURE, word("curing|cured|cure"));
        words.put(ActKind.RAISE, word("raised|raising|raise"));
        words.put(ActKind.PACK, word("packed(?: the)?(?: couch)?|couch packed|into the box"));
        words.put(ActKind.BREAK, word("(?:broke|opened|emptied) the (?:couch|box)|couch (?:broken|opened)|unpacked"));
        words.put(ActKind.CHECK, word("looked(?: at the couch)?|checked(?: the couch)?"));
        words.put(ActKind.STEW, word("stewed|stewing"));
        words.put(ActKind.ROAST, word("roasted|roasting"));
        return words;
    }

    private static Pattern word(String words) {
        return Pattern.compile("(?<![\\p{L}-])(?:" + words + ")(?![\\p{L}-])");
    }

    /** Takes out the word that says an act began and is not done. */
    static boolean started(RestOfLine line) {
        return line.take(STARTED).isPresent();
    }

    /** Takes out the first word for an act. */
    static Optional<ActKind> take(RestOfLine line) {
        for (Map.Entry<ActKind, Pattern> each : WORDS.entrySet()) {
            if (line.take(each.getValue()).isPresent()) return Optional.of(each.getKey());
        }
        return Optional.empty();
    }
}
