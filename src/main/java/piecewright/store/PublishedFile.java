package piecewright.store;

import java.nio.file.Path;
import java.time.Instant;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.UUID;
import piecewright.calendar.PublishedCopies;
import piecewright.calendar.Span;
import tools.jackson.databind.node.ObjectNode;

/**
 * Keeps what lies in a collection of a calendar server because of us, in a JSON file, format 1. No name and no password.
 */
public final class PublishedFile {
    private PublishedFile() {}

    public static void write(Path file, PublishedCopies copies) throws StoreException {
        ObjectNode root = JsonText.newObject();
        root.put("format", 1);
        root.put("collection", copies.collection());
        ObjectNode events = root.putObject("copies");
        copies.copies().forEach((uid, copy) -> {
            ObjectNode event = events.putObject(uid.toString());
            event.put("act", copy.key());
            event.put("title", copy.title());
            event.put("startsAt", copy.span().startsAt().toString());
            event.put("endsAt", copy.span().endsAt().toString());
            copy.etag().ifPresent(etag -> event.put("etag", etag));
            event.put("sent", copy.sent());
            event.put("stored", copy.stored());
            copy.sending().ifPresent(print -> event.put("sending", print));
        });
        GoodCopy.write(file, JsonText.write(root));
    }

    /** The copies in this file, at most 20 MB. */
    public static PublishedCopies read(Path file) throws StoreException {
        JsonBlock root = JsonBlock.root(file, TextFile.read(file, TextFile.LARGE_BYTES), "collection", "copies");
        JsonBlock events = root.block("copies");
        SortedMap<UUID, PublishedCopies.Copy> copies = new TreeMap<>();
        for (String uid : events.keys()) {
            JsonBlock event = events.block(uid)
                    .onlyKeys("act", "title", "startsAt", "endsAt", "etag", "sent", "stored", "sending");
            Optional<String> etag = event.has("etag") ? Optional.of(event.text("etag", 1000)) : Optional.empty();
            Instant start = LocalTimes.instant(event, "startsAt");
            Instant end = LocalTimes.instant(event, "endsAt");
            Span span = event.make(() -> new Span(start, end));
            copies.put(
                    uuid(events, uid),
                    new PublishedCopies.Copy(
                            event.text("act"),
                            event.wholeText("title"),
                            span,
                            etag,
                            event.wholeText("sent"),
                            event.wholeText("stored"),
                            event.optionalText("sending")));
        }
        return new PublishedCopies(root.text("collection", 2000), copies);
    }

    private static UUID uuid(JsonBlock block, String key) throws StoreException {
        if (key.matches("[0-9a-f]{8}(-[0-9a-f]{4}){3}-[0-9a-f]{12}")) return UUID.fromString(key);
        throw block.refused(key, "is not a UUID; take the file from a copy");
    }
}
