package piecewright.store;

import java.nio.file.Path;
import java.time.Instant;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.UUID;
import piecewright.calendar.EventStatus;
import piecewright.calendar.Ledger;
import piecewright.calendar.LedgerEntry;
import piecewright.calendar.Span;
import piecewright.calendar.Stamp;
import piecewright.text.Quoted;
import tools.jackson.databind.node.ObjectNode;

/** Keeps what was exported of one batch in a JSON file, format 1; written whole or not at all. */
public final class LedgerFile {
    private LedgerFile() {}

    public static void write(Path file, Ledger ledger) throws StoreException {
        ObjectNode root = JsonText.newObject();
        root.put("format", 1);
        root.put("batch", ledger.batch().toString());
        ObjectNode events = root.putObject("events");
        ledger.entries().forEach((key, entry) -> put(events.putObject(key), entry));
        GoodCopy.write(file, JsonText.write(root));
    }

    private static void put(ObjectNode event, LedgerEntry entry) {
        event.put("uid", entry.uid().toString());
        event.put("sequence", entry.stamp().sequence());
        event.put("created", entry.stamp().created().toString());
        event.put("lastModified", entry.stamp().lastModified().toString());
        event.put("cancelled", entry.state() == EventStatus.CANCELLED);
        event.put("startsAt", entry.lastSpan().startsAt().toString());
        event.put("endsAt", entry.lastSpan().endsAt().toString());
        event.put("summary", entry.lastSummary());
        event.put("schedule", entry.schedule());
        event.put("content", entry.content());
    }

    /** The ledger in this file, at most 20 MB. */
    public static Ledger read(Path file) throws StoreException {
        JsonBlock root = JsonBlock.root(file, TextFile.read(file, TextFile.LARGE_BYTES), "batch", "events");
        UUID batch = uuid(root, "batch");
        JsonBlock events = root.block("events");
        SortedMap<String, LedgerEntry> entries = new TreeMap<>();
        for (String key : events.keys()) entries.put(key, entry(events.block(key)));
        return root.make(() -> new Ledger(batch, entries));
    }

    private static LedgerEntry entry(JsonBlock event) throws StoreException {
        event.onlyKeys(
                "uid",
                "sequence",
                "created",
                "lastModified",
                "cancelled",
                "startsAt",
                "endsAt",
                "summary",
                "schedule",
                "content");
        UUID uid = uuid(event, "uid");
        int sequence = event.whole("sequence", 0, Integer.MAX_VALUE);
        Instant created = LocalTimes.instant(event, "created");
        Instant modified = LocalTimes.instant(event, "lastModified");
        EventStatus state = event.trueOrFalse("cancelled") ? EventStatus.CANCELLED : EventStatus.CONFIRMED;
        Instant start = LocalTimes.instant(event, "startsAt");
        Instant end = LocalTimes.instant(event, "endsAt");
        String summary = event.wholeText("summary");
        String schedule = event.wholeText("schedule");
        String content = event.wholeText("content");
        return event.make(() -> new LedgerEntry(
                uid, new Stamp(sequence, created, modified), state, schedule, content, new Span(start, end), summary));
    }

    private static UUID uuid(JsonBlock block, String key) throws StoreException {
        String text = block.text(key);
        if (text.matches("[0-9a-f]{8}(-[0-9a-f]{4}){3}-[0-9a-f]{12}")) return UUID.fromString(text);
        throw block.refused(key, "\"" + Quoted.shortly(text) + "\" is not a UUID; take the file from a copy");
    }
}
