package piecewright.app;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import piecewright.store.BatchFile;
import piecewright.store.FolderLock;
import piecewright.store.GoodCopy;
import piecewright.store.GoodCopy.Mended;
import piecewright.store.JournalFile;
import piecewright.store.LearnedFile;
import piecewright.store.LedgerFile;
import piecewright.store.StoreException;
import piecewright.store.WindowFile;
import piecewright.text.Phrases;

/** Puts files of ours that can no longer be read back from their copies, and says so. */
public final class Mending {
    private Mending() {}

    /** What was put back for a batch: the batch itself, its ledger, its journal; a sentence each. */
    public static List<String> batch(Path batch) throws StoreException {
        List<Mended> mended = new ArrayList<>();
        file(batch, BatchFile::read).ifPresent(mended::add);
        file(Beside.ledger(batch), LedgerFile::read).ifPresent(mended::add);
        Path journal = JournalFile.beside(batch);
        if (Files.exists(batch) && Files.exists(journal)) {
            JournalFile.mend(journal, BatchFile.read(batch).id()).ifPresent(mended::add);
        }
        return sentences(mended);
    }

    /** What was put back of what a lot or a house taught. */
    public static List<String> learned(Path lotOrHouse) throws StoreException {
        Path learned = LearnedFile.beside(lotOrHouse);
        return sentences(file(learned, each -> LearnedFile.parse(learned, LearnedFile.text(each))).stream()
                .toList());
    }

    /** What was put back of how the window was left. */
    static List<String> window(Path file) throws StoreException {
        return sentences(file(file, WindowFile::read).stream().toList());
    }

    private static Optional<Mended> file(Path file, GoodCopy.Reader reader) throws StoreException {
        if (GoodCopy.isReadable(file, reader) || !Files.exists(file)) return Optional.empty();
        try (FolderLock lock = FolderLock.of(file)) {
            return lock.holds() ? GoodCopy.mend(file, reader) : Optional.empty();
        }
    }

    private static List<String> sentences(List<Mended> mended) {
        return mended.stream()
                .map(each -> Phrases.say(
                        "keeping.mended",
                        each.file().toString(),
                        String.valueOf(each.aside().getFileName())))
                .toList();
    }
}
