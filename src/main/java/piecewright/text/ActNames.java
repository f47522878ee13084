package piecewright.text;

import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import piecewright.plan.ActKind;
import piecewright.plan.search.Stops;

/** Names of acts for people, from kind and id. */
public final class ActNames {
    private static final Pattern NUMBER = Pattern.compile("-([0-9]{1,3})(?![0-9])");

    private ActNames() {}

    /** Where the words of an act stand in the bundle: under its kind, or apart for malt that was stewed. */
    static String words(ActKind kind, String id) {
        return "act." + kind.key() + (Stops.first(id).endsWith(Stops.STEWED_SUFFIX) ? Stops.STEWED_SUFFIX : "");
    }

    /** The kind's name and the last number of the id: "Turn 3" for "floor.turn-3", "Drain 1" for "steep-1.drain". */
    static String title(ActKind kind, String id) {
        String name = Phrases.say(words(kind, id) + ".title");
        String last = number(id);
        return last.isEmpty() ? name : name + " " + Integer.parseInt(last);
    }

    /** The kind's name alone: "Turn". */
    static String kind(ActKind kind) {
        return Phrases.say("act." + kind.key() + ".title");
    }

    /** The last number of an id, empty where there is none: "3" for "floor.turn-3". */
    static String number(String id) {
        Matcher numbers = NUMBER.matcher(Stops.first(id));
        String last = "";
        while (numbers.find()) last = numbers.group(1);
        return last;
    }

    /** A step in quotation marks from an id alone, for an act that never came to be; the id itself if its kind cannot be told. */
    public static String byId(String id) {
        String first = Stops.first(id).replace(Stops.STEWED_SUFFIX, "");
        String verb =
                NUMBER.matcher(first.substring(first.lastIndexOf('.') + 1)).replaceAll("");
        String key = verb.equals("spread") ? ActKind.FLOOR.key() : verb.toLowerCase(Locale.ROOT);
        Optional<ActKind> kind = Arrays.stream(ActKind.values())
                .filter(each -> each.key().equals(key))
                .findFirst();
        return kind.isPresent() ? "“" + title(kind.get(), id) + "”" : "“" + id + "”";
    }
}
