package piecewright.store;

import java.nio.file.Path;
import java.time.Instant;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.UUID;
import piecewright.text.Quoted;
import tools.jackson.databind.node.ObjectNode;

/** Keeps a batch in a JSON file, format 3; written whole or not at all, with a copy beside it. */
public final class BatchFile {
    private static final Migration MIGRATION =
            new Migration(List.of(BatchFile::gatherLotAndHouse, document -> {})); // format 2 had no checksum

    private BatchFile() {}

    public static void write(Path file, SavedBatch batch) throws StoreException {
        ObjectNode root = JsonText.newObject();
        root.put("format", MIGRATION.present());
        root.put("batch", batch.id().toString());
        ObjectNode request = root.putObject("request");
        Map<String, String> wish = new TreeMap<>(batch.request().wish());
        request.put("styleKey", batch.request().styleKey());
        put(request.putObject("lot"), batch.request().lotText(), wish, "lot");
        put(request.putObject("house"), batch.request().houseText(), wish, "house");
        wish.forEach(request.putObject("wish")::put);
        root.set("plan", JsonText.parse(file, batch.planJson()));
        ObjectNode uids = root.putObject("calendarUids");
        new TreeMap<>(batch.calendarUids()).forEach((act, uid) -> uids.put(act, uid.toString()));
        if (batch.knownEntry() > 0) root.put("knownEntry", batch.knownEntry());
        batch.finishedAt().ifPresent(at -> root.put("finishedAt", at.toString()));
        Checksum.seal(file, root);
        GoodCopy.write(file, JsonText.write(root));
    }

    private static void put(ObjectNode block, String text, Map<String, String> wish, String of) {
        block.put("text", text);
        for (String what : List.of("file", "learned")) {
            String value = wish.remove(of + capital(what));
            if (value != null) block.put(what, value);
        }
    }

    private static String capital(String word) {
        return Character.toUpperCase(word.charAt(0)) + word.substring(1);
    }

    /** Format 1 kept the text of lot and house beside the wish, their files and what was learned among it. */
    private static void gatherLotAndHouse(ObjectNode root) {
        if (!(root.get("request") instanceof ObjectNode request)) return;
        for (String of : List.of("lot", "house")) {
            ObjectNode block = request.putObject(of);
            if (request.has(of + "Text")) block.set("text", request.remove(of + "Text"));
            if (!(request.get("wish") instanceof ObjectNode wish)) continue;
            for (String what : List.of("file", "learned")) {
                if (wish.has(of + capital(what))) block.set(what, wish.remove(of + capital(what)));
            }
        }
    }

    /** The batch in this file, at most 20 MB, in this format or an earlier one. */
    public static SavedBatch read(Path file) throws StoreException {
        JsonBlock root = MIGRATION.read(
                file,
                TextFile.read(file, TextFile.LARGE_BYTES),
                "batch",
                "request",
                "plan",
                "calendarUids",
                "knownEntry",
                "finishedAt",
                Checksum.KEY);
        UUID id = uuid(root, "batch");
        JsonBlock uids = root.block("calendarUids");
        Map<String, UUID> calendarUids = new HashMap<>();
        for (String act : uids.keys()) calendarUids.put(act, uuid(uids, act));
        Optional<Instant> finishedAt =
                root.has("finishedAt") ? Optional.of(LocalTimes.instant(root, "finishedAt")) : Optional.empty();
        return new SavedBatch(
                id,
                request(root.block("request").onlyKeys("styleKey", "lot", "house", "wish")),
                JsonText.write(root.tree("plan")),
                calendarUids,
                root.has("knownEntry") ? root.whole("knownEntry", 0, Integer.MAX_VALUE) : 0,
                finishedAt);
    }

    private static SavedBatch.RequestTexts request(JsonBlock request) throws StoreException {
        JsonBlock wish = request.block("wish");
        Map<String, String> wishes = new HashMap<>();
        for (String key : wish.keys()) wishes.put(key, wish.wholeText(key));
        String lotText = text(request, "lot", wishes);
        String houseText = text(request, "house", wishes);
        return new SavedBatch.RequestTexts(request.text("styleKey"), lotText, houseText, wishes);
    }

    private static String text(JsonBlock request, String of, Map<String, String> wishes) throws StoreException {
        JsonBlock block = request.block(of).onlyKeys("text", "file", "learned");
        for (String what : List.of("file", "learned")) {
            if (block.has(what)) wishes.put(of + capital(what), block.wholeText(what));
        }
        return block.wholeText("text");
    }

    private static UUID uuid(JsonBlock block, String key) throws StoreException {
        String text = block.text(key);
        if (text.matches("[0-9a-f]{8}(-[0-9a-f]{4}){3}-[0-9a-f]{12}")) return UUID.fromString(text);
        throw block.refused(key, "\"" + Quoted.shortly(text) + "\" is not a UUID; take the file from a copy");
    }
}
