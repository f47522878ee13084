package piecewright.store;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import java.util.function.Function;
import piecewright.journal.Entry;
import piecewright.journal.Journal;
import piecewright.journal.Report;
import piecewright.store.GoodCopy.Mended;
import tools.jackson.databind.node.ObjectNode;

/**
 * Keeps the journal of one batch, format 1: a line with the batch, then one JSON line an entry. Lines are only ever
 * added, each forced to the disk before it counts. A line that was cut off in the middle of writing stays where it is
 * and is told of; everything before and after it is read.
 */
public final class JournalFile {
    private JournalFile() {}

    /** A line that cannot be read: its number in the file, 1 for the first, and what is wrong with it. */
    public record DamagedLine(int line, String why) {}

    /**
     * Entries that could be read, and the lines that could not.
     *
     * @param headed whether the file names its batch
     * @param lostAfter numbers of the last entries before damaged lines, 0 for none before it
     */
    public record Content(Journal journal, List<DamagedLine> damaged, boolean headed, List<Integer> lostAfter) {
        public Content {
            damaged = List.copyOf(damaged);
            lostAfter = List.copyOf(lostAfter);
        }

        static Content nothing() {
            return new Content(Journal.empty(), List.of(), false, List.of());
        }

        Content with(List<Entry> entries) {
            return new Content(new Journal(entries), damaged, true, lostAfter);
        }

        /** The number the next entry gets: none that a damaged line at the end may carry. */
        int nextNumber() {
            int last = journal.nextNumber() - 1;
            long atTheEnd = lostAfter.stream().filter(number -> number == last).count();
            return last + 1 + (int) Math.min(damaged.size(), atTheEnd);
        }
    }

    /** The journal beside the file of a batch. */
    public static Path beside(Path batchFile) {
        Path whole = Links.end(batchFile);
        return whole.resolveSibling(whole.getFileName() + ".journal.jsonl");
    }

    /** The journal in this file, at most 20 MB; an empty one when there is no such file. */
    public static Content read(Path file, UUID batch) throws StoreException {
        if (!Files.exists(file)) return Content.nothing();
        return new JournalLines(file, batch).read(TextFile.bytes(file, TextFile.LARGE_BYTES));
    }

    /** Adds entries made from the journal as it stands on the disk that moment, and gives it back with them. */
    public static Content append(Path file, UUID batch, Function<Journal, List<Draft>> drafts) throws StoreException {
        AtomicFile.mustHaveAPlace(file);
        try (FolderLock lock = FolderLock.of(file)) {
            mended(file, batch, lock);
            boolean edited = !edited(file, batch).isEmpty();
            Content before = read(file, batch);
            Content after = appended(file, batch, before, drafts.apply(before.journal()));
            keepCopy(file, edited);
            return after;
        }
    }

    private static Content appended(Path file, UUID batch, Content before, List<Draft> drafts) throws StoreException {
        StringBuilder lines = new StringBuilder();
        if (!before.headed()) lines.append(head(batch));
        List<Entry> entries = new ArrayList<>(before.journal().entries());
        int number = before.nextNumber();
        for (Draft draft : drafts) {
            Entry entry = new Entry(number++, draft.at(), draft.writtenAt(), draft.actId(), draft.report());
            lines.append(line(entry));
            entries.add(entry);
        }
        Set<StandardOpenOption> options =
                Set.of(StandardOpenOption.CREATE, StandardOpenOption.READ, StandardOpenOption.WRITE);
        try (FileChannel channel = FileChannel.open(file, options, Modes.ownFile(file))) {
            String start = channel.size() > 0 && endsInside(channel) ? "\n" : "";
            write(channel, start + lines);
            return before.with(entries);
        } catch (IOException failed) {
            throw WriteFailure.of(file, "cannot be added to", lines.length(), failed);
        }
    }

    /** The entries count already: a copy that cannot be written now is written with the next ones. */
    private static void keepCopy(Path file, boolean edited) {
        try {
            if (edited) GoodCopy.layAside(file);
            GoodCopy.writeCopy(file, TextFile.bytes(file, TextFile.LARGE_BYTES));
        } catch (StoreException noRoom) {
            // the journal itself is whole
        }
    }

    /**
     * Puts back entries that only the copy still has where lines are damaged; empty when there are none. What is gone
     * without damage was taken out by somebody and stays out, see {@link #edited}.
     */
    public static Optional<Mended> mend(Path file, UUID batch) throws StoreException {
        if (JournalCopy.of(file, batch).lost().isEmpty()) return Optional.empty();
        try (FolderLock lock = FolderLock.of(file)) {
            return mended(file, batch, lock);
        }
    }

    private static Optional<Mended> mended(Path file, UUID batch, FolderLock lock) throws StoreException {
        JournalCopy copy = JournalCopy.of(file, batch);
        if (!lock.holds() || copy.lost().isEmpty()) return Optional.empty();
        StringBuilder lines = new StringBuilder(head(batch));
        copy.whole().forEach(entry -> lines.append(line(entry)));
        return Optional.of(GoodCopy.replaced(file, lines.toString().getBytes(StandardCharsets.UTF_8)));
    }

    /** Numbers of entries that are gone or read otherwise than they were kept, though nothing is damaged. */
    public static List<Integer> edited(Path file, UUID batch) throws StoreException {
        return JournalCopy.of(file, batch).edited();
    }

    /** Where what was kept lies, as long as nothing more is written down. */
    public static Path copy(Path file) {
        return GoodCopy.of(file);
    }

    /** An entry that has no number yet. */
    public record Draft(Instant at, Instant writtenAt, Optional<String> actId, Report report) {}

    private static boolean endsInside(FileChannel channel) throws IOException {
        ByteBuffer last = ByteBuffer.allocate(1);
        channel.read(last, channel.size() - 1);
        return last.get(0) != '\n';
    }

    private static void write(FileChannel channel, String lines) throws IOException {
        ByteBuffer buffer = ByteBuffer.wrap(lines.getBytes(StandardCharsets.UTF_8));
        long before = channel.size();
        channel.position(before);
        try {
            while (buffer.hasRemaining()) channel.write(buffer);
            channel.force(true);
        } catch (IOException failed) {
            channel.truncate(before); // half a line is no entry
            throw failed;
        }
    }

    private static String head(UUID batch) {
        return JsonText.newObject().put("format", 1).put("batch", batch.toString()) + "\n";
    }

    private static String line(Entry entry) {
        ObjectNode node = JsonText.newObject();
        node.put("number", entry.number());
        node.put("at", entry.at().toString());
        node.put("writtenAt", entry.writtenAt().toString());
        entry.actId().ifPresent(act -> node.put("actId", act));
        ReportJson.put(node.putObject("report"), entry.report());
        return node + "\n";
    }
}
