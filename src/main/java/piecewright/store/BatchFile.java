package piecewright.store;

import java.nio.file.Path;
import java.util.HashMap;
import java.util.Map;
import java.util.TreeMap;
import java.util.UUID;
import piecewright.text.Quoted;
import tools.jackson.databind.node.ObjectNode;

/** Keeps a batch in a JSON file, format 1; written whole or not at all. */
public final class BatchFile {
    private BatchFile() {}

    public static void write(Path file, SavedBatch batch) throws StoreException {
        ObjectNode root = JsonText.newObject();
        root.put("format", 1);
        root.put("batch", batch.id().toString());
        ObjectNode request = root.putObject("request");
        request.put("styleKey", batch.request().styleKey());
        request.put("lotText", batch.request().lotText());
        request.put("houseText", batch.request().houseText());
        ObjectNode wish = request.putObject("wish");
        new TreeMap<>(batch.request().wish()).forEach(wish::put);
        root.set("plan", JsonText.parse(file, batch.planJson()));
        ObjectNode uids = root.putObject("calendarUids");
        new TreeMap<>(batch.calendarUids()).forEach((act, uid) -> uids.put(act, uid.toString()));
        if (batch.knownEntry() > 0) root.put("knownEntry", batch.knownEntry());
        AtomicFile.write(file, JsonText.write(root));
    }

    /** The batch in this file, at most 20 MB. */
    public static SavedBatch read(Path file) throws StoreException {
        JsonBlock root = JsonBlock.root(
                file,
                TextFile.read(file, TextFile.LARGE_BYTES),
                "batch",
                "request",
                "plan",
                "calendarUids",
                "knownEntry");
        UUID id = uuid(root, "batch");
        JsonBlock request = root.block("request").onlyKeys("styleKey", "lotText", "houseText", "wish");
        JsonBlock wish = request.block("wish");
        Map<String, String> wishes = new HashMap<>();
        for (String key : wish.keys()) wishes.put(key, wish.wholeText(key));
        JsonBlock uids = root.block("calendarUids");
        Map<String, UUID> calendarUids = new HashMap<>();
        for (String act : uids.keys()) calendarUids.put(act, uuid(uids, act));
        return new SavedBatch(
                id,
                new SavedBatch.RequestTexts(
                        request.text("styleKey"), request.wholeText("lotText"), request.wholeText("houseText"), wishes),
                JsonText.write(root.tree("plan")),
                calendarUids,
                root.has("knownEntry") ? root.whole("knownEntry", 0, Integer.MAX_VALUE) : 0);
    }

    private static UUID uuid(JsonBlock block, String key) throws StoreException {
        String text = block.text(key);
        if (text.matches("[0-9a-f]{8}(-[0-9a-f]{4}){3}-[0-9a-f]{12}")) return UUID.fromString(text);
        throw block.refused(key, "\"" + Quoted.shortly(text) + "\" is not a UUID; take the file from a copy");
    }
}
