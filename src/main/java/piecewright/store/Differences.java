package piecewright.store;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import piecewright.text.Quoted;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.ObjectNode;

/** Where two documents differ, key by key: "plan.acts.3.startsAt: a → b". */
final class Differences {
    /** Judgement: more than that nobody reads in a sentence. */
    private static final int MOST = 4;

    private final List<String> found = new ArrayList<>();

    private Differences() {}

    /** The first few. */
    static List<String> between(JsonNode before, JsonNode now) {
        Differences all = new Differences();
        all.compare("", before, now);
        return List.copyOf(all.found);
    }

    private void compare(String path, @Nullable JsonNode before, @Nullable JsonNode now) {
        if (found.size() >= MOST || before != null && before.equals(now)) return;
        if (before instanceof ObjectNode one && now instanceof ObjectNode other) {
            Set<String> keys = new LinkedHashSet<>(one.propertyNames());
            keys.addAll(other.propertyNames());
            for (String key : keys) compare(path.isEmpty() ? key : path + "." + key, one.get(key), other.get(key));
        } else if (before instanceof ArrayNode one && now instanceof ArrayNode other) {
            for (int i = 0; i < Math.max(one.size(), other.size()); i++) {
                compare(path + "." + (i + 1), one.get(i), other.get(i));
            }
        } else {
            found.add(path + ": " + shown(before) + " → " + shown(now));
        }
    }

    private static String shown(@Nullable JsonNode value) {
        return value == null ? "–" : Quoted.shortly(value.isString() ? value.stringValue() : value.toString());
    }
}
