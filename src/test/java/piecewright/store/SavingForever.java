package piecewright.store;

import java.nio.file.Path;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import piecewright.journal.Report;
import piecewright.store.JournalFile.Draft;

/**
 * A program that adds entries to a journal and saves its batch until it is killed; it says each on its output once it
 * is kept: "entry 17", "saved 17".
 */
final class SavingForever {
    private static final Instant AT = Instant.parse("2031-03-14T19:00:00Z");

    private SavingForever() {}

    /** @param arguments the file of the batch, which must be there */
    public static void main(String[] arguments) throws StoreException {
        Path file = Path.of(arguments[0]);
        SavedBatch batch = BatchFile.read(file);
        while (true) {
            int number = entry(file, batch);
            say("entry " + number);
            if (number % 3 != 0) continue;
            save(file, batch, number);
            say("saved " + number);
        }
    }

    static int entry(Path file, SavedBatch batch) throws StoreException {
        var content = JournalFile.append(JournalFile.beside(file), batch.id(), journal -> {
            Report report = new Report.Noted(words(journal.nextNumber()));
            return List.of(new Draft(AT, AT, Optional.empty(), report));
        });
        return content.journal().nextNumber() - 1;
    }

    static void save(Path file, SavedBatch batch, int number) throws StoreException {
        try (FolderLock lock = FolderLock.of(file)) {
            if (lock.holds()) BatchFile.write(file, known(batch, number));
        }
    }

    private static void say(String line) {
        System.out.println(line);
        System.out.flush();
    }

    static SavedBatch known(SavedBatch batch, int number) {
        return new SavedBatch(
                batch.id(), batch.request(), batch.planJson(), batch.calendarUids(), number, Optional.empty());
    }

    /** What entry of that number says. */
    static String words(int number) {
        return "entry " + number + " " + "malt ".repeat(1 + number % 40).strip();
    }
}
