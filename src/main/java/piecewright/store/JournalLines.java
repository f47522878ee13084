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
    private static final String NO_HEAD = "it does not name the batch";

    private final Path file;
    private final UUID batch;
    private final List<Entry> entries = new ArrayList<>();
    private final List<DamagedLine> damaged = new ArrayList<>();
    private final List<Integer> lostAfter = new ArrayList<>();
    private boolean headed;

    JournalLines(Path file, UUID batch) {
        this.file = file;
        this.batch = batch;
    }

    /** A line of the file, its number from 1. */
    private record Line(int number, byte[] bytes) {}

    /** What a line holds: an entry, the batch, why it cannot be read, or nothing when it is blank. */
    private record Read(Line line, Optional<Entry> entry, Optional<JsonBlock> head, String why) {
        static Read of(Line line, Entry entry) {
            return new Read(line, Optional.of(entry), Optional.empty(), "");
        }

        static Read head(Line line, JsonBlock batch) {
            return new Read(line, Optional.empty(), Optional.of(batch), "");
        }

        static Read damaged(Line line, String why) {
            return new Read(line, Optional.empty(), Optional.empty(), why);
        }

        static Read nothing(Line line) {
            return new Read(line, Optional.empty(), Optional.empty(), "");
        }
    }

    Content read(byte[] bytes) throws StoreException {
        List<Line> lines = lines(bytes);
        for (Read read : lines.parallelStream().map(this::read).toList()) take(read);
        boolean untold = damaged.stream().noneMatch(line -> line.line() == 1);
        if (!headed && !entries.isEmpty() && untold) damaged.add(0, new DamagedLine(1, NO_HEAD));
        if (!headed && entries.isEmpty()) lostAfter.add(0);
        return new Content(new Journal(entries), damaged, headed, lostAfter);
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

    private void take(Read read) throws StoreException {
        int line = read.line().number();
        if (!read.why().isEmpty()) damage(line, read.why());
        if (read.head().isPresent()) head(line, read.head().get());
        if (read.entry().isEmpty()) return;
        Entry entry = read.entry().get();
        if (entry.number() > last()) entries.add(entry);
        else damage(line, "its number does not rise");
    }

    private void damage(int line, String why) {
        damaged.add(new DamagedLine(line, why));
        lostAfter.add(last());
    }

    private int last() {
        return entries.isEmpty() ? 0 : entries.get(entries.size() - 1).number();
    }

    /** The line that names the batch comes first; where it was lost it comes again with the next entry. */
    private void head(int line, JsonBlock head) throws StoreException {
        String batchId;
        int format;
        try {
            format = head.onlyKeys("format", "batch").whole("format", 1, Integer.MAX_VALUE);
            batchId = head.text("batch");
        } catch (StoreException unreadable) {
            damage(line, NO_HEAD);
            return;
        }
        if (format > 1) throw new StoreException(file, "was written by a later Piecewright; open it with that one");
        if (!batchId.equals(batch.toString())) {
            throw new StoreException(file, "is the journal of another batch; put the right one beside the batch");
        }
        headed = true;
    }

    private Read read(Line line) {
        String text;
        try {
            text = TextFile.decoded(file, line.bytes()).strip();
        } catch (StoreException noText) {
            return Read.damaged(line, NO_TEXT);
        }
        if (text.isEmpty()) return Read.nothing(line);
        try {
            JsonBlock block = JsonBlock.line(file, text);
            return block.has("batch") ? Read.head(line, block) : Read.of(line, entry(block));
        } catch (StoreException unreadable) {
            String why = String.valueOf(unreadable.getMessage());
            String name = file + ": ";
            return Read.damaged(line, why.startsWith(name) ? why.substring(name.length()) : why);
        }
    }

    private static Entry entry(JsonBlock line) throws StoreException {
        JsonBlock block = line.onlyKeys("number", "at", "writtenAt", "actId", "report");
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
