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
    private static final String NO_TEXT = "not UTF-8 text";

    private final Path file;
    private final UUID batch;
    private final List<Entry> entries = new ArrayList<>();
    private final List<DamagedLine> damaged = new ArrayList<>();
    private boolean headed;

    JournalLines(Path file, UUID batch) {
        this.file = file;
        this.batch = batch;
    }

    /** A line of the file, its number from 1. */
    private record Line(int number, byte[] bytes) {}

    /** What a line holds: an entry, why it cannot be read, or neither when it is blank. */
    private record Read(Line line, Optional<Entry> entry, String why) {}

    Content read(byte[] bytes) throws StoreException {
        List<Line> lines = lines(bytes);
        int next = 0;
        while (!headed && next < lines.size()) begin(lines.get(next++));
        lines.subList(next, lines.size()).parallelStream()
                .map(this::entry)
                .toList()
                .forEach(this::take);
        return new Content(new Journal(entries), damaged);
    }

    private static List<Line> lines(byte[] bytes) {
        List<Line> lines = new ArrayList<>();
        int from = 0;
        for (int at = 0; at <= bytes.length; at++) {
            if (at < bytes.length && bytes[at] != '\n') continue;
            lines.add(new Line(lines.size() + 1, Arrays.copyOfRange(bytes, from, at)));
            from = at + 1;
        }
        return lines;
    }

    private void begin(Line line) throws StoreException {
        String text;
        try {
            text = TextFile.decoded(file, line.bytes()).strip();
        } catch (StoreException noText) {
            damaged.add(new DamagedLine(line.number(), NO_TEXT));
            return;
        }
        if (!text.isEmpty()) head(line.number(), text);
    }

    private void take(Read read) {
        int line = read.line().number();
        if (!read.why().isEmpty()) damaged.add(new DamagedLine(line, read.why()));
        if (read.entry().isEmpty()) return;
        Entry entry = read.entry().get();
        boolean rises = entries.isEmpty()
                || entry.number() > entries.get(entries.size() - 1).number();
        if (rises) entries.add(entry);
        else damaged.add(new DamagedLine(line, "its number does not rise"));
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

    private Read entry(Line line) {
        String text;
        try {
            text = TextFile.decoded(file, line.bytes()).strip();
        } catch (StoreException noText) {
            return new Read(line, Optional.empty(), NO_TEXT);
        }
        if (text.isEmpty()) return new Read(line, Optional.empty(), "");
        try {
            return new Read(line, Optional.of(entry(text)), "");
        } catch (StoreException unreadable) {
            String why = String.valueOf(unreadable.getMessage());
            String name = file + ": ";
            return new Read(line, Optional.empty(), why.startsWith(name) ? why.substring(name.length()) : why);
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
