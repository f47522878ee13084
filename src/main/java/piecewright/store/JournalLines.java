package piecewright.store;

import java.nio.file.Path;
import java.time.Instant;
import java.time.format.DateTimeParseException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import piecewright.journal.Entry;
import piecewright.journal.Journal;
import piecewright.journal.Report;
import piecewright.store.JournalFile.Content;
import piecewright.store.JournalFile.DamagedLine;

/** Reads the lines of one journal file; a line that cannot be read is told of and passed over. Scratch of one reading. */
final class JournalLines {
    private final Path file;
    private final UUID batch;
    private final List<Entry> entries = new ArrayList<>();
    private final List<DamagedLine> damaged = new ArrayList<>();
    private boolean headed;

    JournalLines(Path file, UUID batch) {
        this.file = file;
        this.batch = batch;
    }

    Content read(byte[] bytes) throws StoreException {
        int line = 1;
        int from = 0;
        for (int at = 0; at <= bytes.length; at++) {
            if (at < bytes.length && bytes[at] != '\n') continue;
            take(line++, Arrays.copyOfRange(bytes, from, at));
            from = at + 1;
        }
        return new Content(new Journal(entries), damaged);
    }

    private void take(int line, byte[] bytes) throws StoreException {
        String text;
        try {
            text = TextFile.decoded(file, bytes).strip();
        } catch (StoreException noText) {
            damaged.add(new DamagedLine(line, "not UTF-8 text"));
            return;
        }
        if (text.isEmpty()) return;
        if (headed) entry(line, text);
        else head(line, text);
    }

    private void head(int line, String text) throws StoreException {
        JsonBlock head;
        try {
            head = JsonBlock.line(file, text);
        } catch (StoreException cutOff) {
            damaged.add(new DamagedLine(line, "cut off"));
            return;
        }
        JsonBlock.root(file, text, "batch");
        if (!head.text("batch").equals(batch.toString())) {
            throw new StoreException(file, "is the journal of another batch; put the right one beside the batch");
        }
        headed = true;
    }

    private void entry(int line, String text) {
        try {
            Entry entry = entry(text);
            if (!entries.isEmpty()
                    && entry.number() <= entries.get(entries.size() - 1).number()) {
                damaged.add(new DamagedLine(line, "its number does not rise"));
            } else {
                entries.add(entry);
            }
        } catch (StoreException unreadable) {
            String why = String.valueOf(unreadable.getMessage());
            damaged.add(
                    new DamagedLine(line, why.startsWith(file + ": ") ? why.substring((file + ": ").length()) : why));
        }
    }

    private Entry entry(String line) throws StoreException {
        JsonBlock block = JsonBlock.line(file, line).onlyKeys("number", "at", "writtenAt", "actId", "report");
        int number = block.whole("number", 1, Integer.MAX_VALUE);
        Instant at = instant(block, "at");
        boolean atOnce = block.text("writtenAt").equals(block.text("at"));
        Instant writtenAt = atOnce ? at : instant(block, "writtenAt");
        Optional<String> actId = block.optionalText("actId");
        Report report = ReportJson.read(block.block("report"));
        return block.make(() -> new Entry(number, at, writtenAt, actId, report));
    }

    private static Instant instant(JsonBlock block, String key) throws StoreException {
        try {
            return Instant.parse(block.text(key));
        } catch (DateTimeParseException notAnInstant) {
            throw block.refused(key, "is not an instant such as 2031-03-29T19:00:00Z; correct it");
        }
    }
}
