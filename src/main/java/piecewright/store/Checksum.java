package piecewright.store;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.HexFormat;
import java.util.zip.CRC32C;
import tools.jackson.databind.node.ObjectNode;

/**
 * What a document said when it was kept, as one short figure in it: a bit that flips on the disk shows, and so does an
 * edit by hand. Blanks and line ends do not count. CRC-32C (Castagnoli, as in RFC 3720, appendix B.4).
 */
final class Checksum {
    static final String KEY = "checksum";

    private Checksum() {}

    /** Adds it, or brings it up to date. */
    static void seal(Path file, ObjectNode document) throws StoreException {
        document.remove(KEY);
        ObjectNode asRead = JsonText.parse(file, JsonText.write(document));
        document.put(KEY, of(asRead));
    }

    /** Whether a document says what it said when it was kept; one that carries no figure is taken at its word. */
    static boolean isRight(ObjectNode document) {
        if (!document.has(KEY)) return true;
        ObjectNode rest = document.deepCopy();
        rest.remove(KEY);
        return of(rest).equals(document.get(KEY).asString(""));
    }

    private static String of(ObjectNode document) {
        CRC32C sum = new CRC32C();
        sum.update(JsonText.write(document).getBytes(StandardCharsets.UTF_8));
        return HexFormat.of().toHexDigits((int) sum.getValue());
    }
}
