package piecewright.store;

import java.nio.file.Path;
import tools.jackson.core.JacksonException;
import tools.jackson.core.StreamReadConstraints;
import tools.jackson.core.StreamReadFeature;
import tools.jackson.core.exc.StreamConstraintsException;
import tools.jackson.core.exc.UnexpectedEndOfInputException;
import tools.jackson.core.json.JsonFactory;
import tools.jackson.databind.DeserializationFeature;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.SerializationFeature;
import tools.jackson.databind.cfg.JsonNodeFeature;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.ObjectNode;

/** JSON text to tree and back, strictly: no duplicate keys, nothing after the end, bounded depth and numbers. */
final class JsonText {
    private static final JsonMapper MAPPER = JsonMapper.builder(JsonFactory.builder()
                    .streamReadConstraints(StreamReadConstraints.builder()
                            .maxNestingDepth(32)
                            .maxNumberLength(40)
                            .maxNameLength(200)
                            .maxStringLength(TextFile.LARGE_BYTES)
                            .build())
                    .enable(StreamReadFeature.STRICT_DUPLICATE_DETECTION)
                    .build())
            .enable(DeserializationFeature.FAIL_ON_TRAILING_TOKENS)
            .enable(DeserializationFeature.USE_BIG_DECIMAL_FOR_FLOATS)
            .disable(JsonNodeFeature.STRIP_TRAILING_BIGDECIMAL_ZEROES)
            .enable(SerializationFeature.INDENT_OUTPUT)
            .build();

    private JsonText() {}

    static ObjectNode newObject() {
        return MAPPER.createObjectNode();
    }

    /** Indented, with a line end at the end. */
    static String write(JsonNode node) {
        return MAPPER.writeValueAsString(node).replace("\r\n", "\n") + "\n";
    }

    /** The tree of a text that must be one object. */
    static ObjectNode parse(Path file, String text) throws StoreException {
        if (text.isBlank())
            throw new StoreException(file, "the file is empty; it must hold one { … } with \"format\": 1");
        try {
            JsonNode tree = MAPPER.readTree(text);
            if (tree instanceof ObjectNode object) return object;
        } catch (UnexpectedEndOfInputException early) {
            throw new StoreException(
                    file,
                    place(early) + "the text ends too early; close every bracket and quote, or copy it again",
                    early);
        } catch (StreamConstraintsException excessive) {
            throw new StoreException(
                    file,
                    place(excessive) + "a name, number or nesting is longer than any such file needs; shorten it",
                    excessive);
        } catch (JacksonException unreadable) {
            throw new StoreException(file, place(unreadable) + syntax(unreadable), unreadable);
        }
        throw new StoreException(file, "line 1, column 1: the file must hold one { … } with \"format\": 1");
    }

    /** The tree of a text that was written here. */
    static JsonNode reread(String text) {
        return MAPPER.readTree(text);
    }

    private static String place(JacksonException failure) {
        return failure.getLocation() == null || failure.getLocation().getLineNr() < 1
                ? ""
                : "line " + failure.getLocation().getLineNr() + ", column "
                        + failure.getLocation().getColumnNr() + ": ";
    }

    private static String syntax(JacksonException failure) {
        String original = String.valueOf(failure.getOriginalMessage());
        String first = original.split("[\\n;:(]", 2)[0].strip();
        if (original.startsWith("Duplicate")) return "a key stands here twice; keep one of them";
        return "this is not JSON (" + (first.length() > 100 ? first.substring(0, 100) : first)
                + "); mend the text there";
    }
}
