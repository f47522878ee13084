package piecewright.store;

import java.nio.file.Path;
import java.util.Map;
import java.util.TreeMap;

/** What a packed workspace says of itself, format 1: where it lay, and which files outside it came along. */
public final class ManifestFile {
    /** Its name in the pack. */
    public static final String ENTRY = "piecewright-pack.json";

    private static final int LONGEST_PATH = 4096;

    private ManifestFile() {}

    /**
     * @param root the folder of the workspace
     * @param elsewhere entry of the pack by the path of the file
     */
    public static String write(String root, Map<String, String> elsewhere) {
        var document = JsonText.newObject();
        document.put("format", 1);
        document.put("root", root);
        var files = document.putArray("elsewhere");
        new TreeMap<>(elsewhere)
                .forEach((path, entry) -> files.addObject().put("path", path).put("entry", entry));
        return JsonText.write(document);
    }

    /** What a manifest holds. */
    public record Content(String root, Map<String, String> elsewhere) {
        public Content {
            elsewhere = Map.copyOf(elsewhere);
        }
    }

    /** Reads it; the file is only named in refusals. */
    public static Content read(Path pack, String text) throws StoreException {
        JsonBlock root = JsonBlock.root(pack, text, "root", "elsewhere");
        Map<String, String> elsewhere = new TreeMap<>();
        for (JsonBlock file : root.blocks("elsewhere")) {
            file.onlyKeys("path", "entry");
            elsewhere.put(file.text("path", LONGEST_PATH), file.text("entry", LONGEST_PATH));
        }
        return new Content(root.text("root", LONGEST_PATH), elsewhere);
    }
}
