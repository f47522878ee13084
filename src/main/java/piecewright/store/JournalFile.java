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
import java.util.UUID;
import java.util.function.Function;
import piecewright.journal.Entry;
import piecewright.journal.Journal;
import piecewright.journal.Report;
import tools.jackson.databind.node.ObjectNode;

/**
 * Keeps the journal of one batch, format 1: a line with the batch, then one JSON line an entry. Lines are only ever
 * added, each forced to the disk before it counts. A line that was cut off in the middle of writing stays where it is
 * and is told of; everything before and after it is read.
 */
public final class JournalFile {
    private static final Object ONE_AT_A_TIME = new Object();

    private JournalFile() {}

    /** A line that cannot be read: its number in the file, 1 for the first, and what is wrong with it. */
    public record DamagedLine(int line, String why) {}

    /** Entries that could be read, and the lines that could not. */
    public record Content(Journal journal, List<DamagedLine> damaged) {
        public Content {
            damaged = List.copyOf(damaged);
        }

        /** Whether there is nothing in the file yet, or only the start of its first line. */
        boolean unheaded() {
            return journal.entries().isEmpty() && damaged.stream().allMatch(line -> line.line() == 1);
        }

        /** The number the next entry gets: none that a damaged line may carry. */
        int nextNumber() {
            return journal.nextNumber() + damaged.size();
        }
    }

    /** The journal beside the file of a batch. */
    public static Path beside(Path batchFile) {
        return batchFile.resolveSibling(batchFile.getFileName() + ".journal.jsonl");
    }

    /** The journal in this file, at most 20 MB; an empty one when there is no such file. */
    public static Content read(Path file, UUID batch) throws StoreException {
        if (!Files.exists(file)) return new Content(Journal.empty(), List.of());
        return new JournalLines(file, batch).read(TextFile.bytes(file, TextFile.LARGE_BYTES));
    }

    /** Adds entries made from the journal as it stands on the disk that moment, and gives it back with them. */
    public static Content append(Path file, UUID batch, Function<Journal, List<Draft>> drafts) throws StoreException {
        AtomicFile.mustHaveAPlace(file);
        synchronized (ONE_AT_A_TIME) {
            try (FileChannel channel = FileChannel.open(
                    file, StandardOpenOption.CREATE, StandardOpenOption.READ, StandardOpenOption.WRITE)) {
                channel.lock(); // until the channel is closed
                boolean isNew = channel.size() == 0;
                Content before = isNew ? new Content(Journal.empty(), List.of()) : read(file, batch);
                StringBuilder lines = new StringBuilder(isNew || !endsInside(channel) ? "" : "\n");
                if (isNew || before.damaged().size() == 1 && before.unheaded()) lines.append(head(batch));
                List<Entry> entries = new ArrayList<>(before.journal().entries());
                int number = before.nextNumber();
                for (Draft draft : drafts.apply(before.journal())) {
                    Entry entry = new Entry(number++, draft.at(), draft.writtenAt(), draft.actId(), draft.report());
                    lines.append(line(entry));
                    entries.add(entry);
                }
                write(channel, lines.toString());
                return new Content(new Journal(entries), before.damaged());
            } catch (IOException failed) {
                throw new StoreException(
                        file,
                        "cannot be added to (" + failed.getClass().getSimpleName()
                                + "); nothing before is lost, check permissions and free space and write it again",
                        failed);
            }
        }
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
        channel.position(channel.size());
        while (buffer.hasRemaining()) channel.write(buffer);
        channel.force(true);
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
