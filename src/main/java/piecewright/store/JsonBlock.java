package piecewright.store;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Supplier;
import piecewright.text.Quoted;
import piecewright.text.UnreadableException;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.ObjectNode;

/** One { … } of a file, read key by key; every refusal names the file and the key's whole path. */
final class JsonBlock {
    private static final int LONGEST_TEXT = 200;
    private static final int LONGEST_LIST = 1000;

    private final Path file;
    private final String keyPath;
    private final ObjectNode node;

    private JsonBlock(Path file, String keyPath, ObjectNode node) {
        this.file = file;
        this.keyPath = keyPath;
        this.node = node;
    }

    /** The outermost block, its format checked. */
    static JsonBlock root(Path file, String text, String... keys) throws StoreException {
        JsonBlock root = rooted(file, JsonText.parse(file, text), keys);
        root.whole("format", 1, 1);
        return root;
    }

    /** The outermost block of a document, whatever its format. */
    static JsonBlock rooted(Path file, ObjectNode document, String... keys) throws StoreException {
        List<String> known = new ArrayList<>(List.of("format"));
        known.addAll(List.of(keys));
        return of(file, document).onlyKeys(known);
    }

    /** A block on a line of its own, without a format. */
    static JsonBlock line(Path file, String text) throws StoreException {
        return of(file, JsonText.parse(file, text));
    }

    static JsonBlock of(Path file, ObjectNode document) {
        return new JsonBlock(file, "", document);
    }

    /** Refuses every key but these. Called first, so that a mistyped key is not taken for a missing one. */
    JsonBlock onlyKeys(String... keys) throws StoreException {
        return onlyKeys(List.of(keys));
    }

    private JsonBlock onlyKeys(Collection<String> keys) throws StoreException {
        for (String key : node.propertyNames()) {
            if (!keys.contains(key)) throw refused(key, "is not known here; " + Nearest.hint(key, keys));
        }
        return this;
    }

    Path file() {
        return file;
    }

    Collection<String> keys() {
        return node.propertyNames();
    }

    boolean has(String key) {
        return node.has(key);
    }

    ObjectNode tree(String key) throws StoreException {
        if (present(key) instanceof ObjectNode object) return object;
        throw refused(key, "must be a block { … }, not " + shown(present(key)));
    }

    /** One line of text, not blank, at most 200 characters. */
    String text(String key) throws StoreException {
        return text(key, LONGEST_TEXT);
    }

    String text(String key, int longest) throws StoreException {
        return line(key, present(key), longest);
    }

    Optional<String> optionalText(String key) throws StoreException {
        return has(key) ? Optional.of(text(key)) : Optional.empty();
    }

    /** All of it as one line of JSON. */
    String shown() {
        return node.toString();
    }

    /** A text of any length and lines. */
    String wholeText(String key) throws StoreException {
        JsonNode value = present(key);
        if (!value.isString()) throw refused(key, "must be text in quotes, not " + shown(value));
        return value.stringValue();
    }

    private String line(String key, JsonNode value, int longest) throws StoreException {
        if (!value.isString()) throw refused(key, "must be text in quotes, not " + shown(value));
        String text = value.stringValue().strip();
        if (text.codePoints().allMatch(Quoted::joiner)) throw refused(key, "must not be empty; write something");
        if (text.length() > longest) throw refused(key, "is longer than " + longest + " characters; shorten it");
        if (text.codePoints().anyMatch(Quoted::unfit)) {
            throw refused(key, "holds a line end or control character; write it as one plain line");
        }
        return text;
    }

    /** A figure in the unit of the key's suffix, or a text with unit, in [low, high]. */
    double number(String key, double low, double high) throws StoreException {
        return number(key, present(key), low, high);
    }

    OptionalDouble optionalNumber(String key, double low, double high) throws StoreException {
        return has(key) ? OptionalDouble.of(number(key, low, high)) : OptionalDouble.empty();
    }

    /** Two figures [low, high] in rising order, each inside the bounds. */
    double[] pair(String key, double low, double high) throws StoreException {
        JsonNode value = present(key);
        if (!value.isArray() || value.size() != 2) {
            throw refused(key, "must be two figures [low, high], not " + shown(value));
        }
        String member = key.replaceFirst("^.*\\.", "");
        double first = number(member, value.get(0), low, high);
        double second = number(member, value.get(1), low, high);
        if (first > second) throw refused(key, "must be [low, high]; swap the two figures");
        return new double[] {first, second};
    }

    private double number(String key, JsonNode value, double low, double high) throws StoreException {
        double figure;
        if (value.isNumber()) figure = value.decimalValue().doubleValue();
        else if (value.isString()) figure = typed(key, value.stringValue());
        else throw refused(key, "must be a number, not " + shown(value));
        if (!(figure >= low && figure <= high)) {
            throw refused(key, "must be from " + plain(low) + " to " + plain(high) + ", not " + shown(value));
        }
        return figure;
    }

    private double typed(String key, String text) throws StoreException {
        Optional<SuffixedQuantity> quantity = SuffixedQuantity.of(key);
        if (quantity.isEmpty())
            throw refused(key, "must be a plain number without quotes, not \"" + Quoted.shortly(text) + "\"");
        try {
            return quantity.get().read(text);
        } catch (UnreadableException unreadable) {
            throw refused(key, String.valueOf(unreadable.getMessage()));
        }
    }

    int whole(String key, int low, int high) throws StoreException {
        JsonNode value = present(key);
        if (!value.isIntegralNumber() || value.bigIntegerValue().bitLength() > 31) {
            throw refused(key, "must be a whole number from " + low + " to " + high + ", not " + shown(value));
        }
        if (value.intValue() < low || value.intValue() > high) {
            String range = low == high ? "must be " + low : "must be from " + low + " to " + high;
            throw refused(key, range + ", not " + shown(value));
        }
        return value.intValue();
    }

    boolean trueOrFalse(String key) throws StoreException {
        JsonNode value = present(key);
        if (!value.isBoolean()) throw refused(key, "must be true or false without quotes, not " + shown(value));
        return value.booleanValue();
    }

    JsonBlock block(String key) throws StoreException {
        return new JsonBlock(file, path(key), tree(key));
    }

    Optional<JsonBlock> optionalBlock(String key) throws StoreException {
        return has(key) ? Optional.of(block(key)) : Optional.empty();
    }

    /** The blocks of a list; none if the key is absent. */
    List<JsonBlock> blocks(String key) throws StoreException {
        if (!has(key)) return List.of();
        List<JsonBlock> blocks = new ArrayList<>();
        for (JsonNode member : list(key)) {
            String at = key + "[" + blocks.size() + "]";
            if (!(member instanceof ObjectNode object))
                throw refused(at, "must be a block { … }, not " + shown(member));
            blocks.add(new JsonBlock(file, path(at), object));
        }
        return blocks;
    }

    List<String> texts(String key) throws StoreException {
        List<String> texts = new ArrayList<>();
        for (JsonNode member : list(key)) texts.add(line(key + "[" + texts.size() + "]", member, LONGEST_TEXT));
        return texts;
    }

    /** A list of figures, each inside the bounds. */
    double[] numbers(String key, double low, double high) throws StoreException {
        List<Double> figures = new ArrayList<>();
        for (JsonNode member : list(key)) figures.add(number(key, member, low, high));
        return figures.stream().mapToDouble(Double::doubleValue).toArray();
    }

    List<Integer> wholes(String key, int low, int high) throws StoreException {
        List<Integer> wholes = new ArrayList<>();
        for (JsonNode member : list(key)) {
            boolean fits = member.isIntegralNumber() && member.bigIntegerValue().bitLength() <= 31;
            if (!fits || member.intValue() < low || member.intValue() > high) {
                throw refused(key + "[" + wholes.size() + "]", "must be a whole number from " + low + " to " + high);
            }
            wholes.add(member.intValue());
        }
        return wholes;
    }

    private JsonNode list(String key) throws StoreException {
        JsonNode value = present(key);
        if (!value.isArray()) throw refused(key, "must be a list [ … ], not " + shown(value));
        if (value.size() > LONGEST_LIST) throw refused(key, "has more than " + LONGEST_LIST + " members; shorten it");
        return value;
    }

    private JsonNode present(String key) throws StoreException {
        JsonNode value = node.get(key);
        if (value == null) throw refused(key, "is missing; add it");
        if (value.isNull()) throw refused(key, "must not be null; give a value or leave the key out");
        return value;
    }

    /** What the domain makes of it; its own refusal is told at this block. */
    <T> T make(Supplier<T> making) throws StoreException {
        try {
            return making.get();
        } catch (IllegalArgumentException impossible) {
            String where = keyPath.isEmpty() ? "" : "key \"" + keyPath + "\": ";
            throw new StoreException(
                    file, where + "impossible value: " + impossible.getMessage() + "; correct it", impossible);
        }
    }

    StoreException refused(String key, String message) {
        return new StoreException(file, "key \"" + Quoted.shortly(path(key)) + "\" " + message);
    }

    private String path(String key) {
        return keyPath.isEmpty() ? key : keyPath + "." + key;
    }

    private static String shown(JsonNode value) {
        if (value.isObject()) return "a block";
        if (value.isArray()) return "a list of " + value.size();
        return Quoted.shortly(value.toString());
    }

    private static String plain(double figure) {
        return figure == Math.rint(figure) ? Long.toString((long) figure) : Double.toString(figure);
    }
}
