package piecewright.app;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import java.util.stream.Collectors;
import piecewright.store.BatchFile;
import piecewright.store.FolderLock;
import piecewright.store.GoodCopy;
import piecewright.store.GoodCopy.Mended;
import piecewright.store.JournalFile;
import piecewright.store.LearnedFile;
import piecewright.store.LedgerFile;
import piecewright.store.Links;
import piecewright.store.LiveFile;
import piecewright.store.PublishedFile;
import piecewright.store.Sealed;
import piecewright.store.StoreException;
import piecewright.store.WindowFile;
import piecewright.text.Phrases;

/**
 * Puts files of ours that are damaged back from their copies, and says so; says too what somebody changed by hand, which
 * stays. Sweeps what a program that was killed left beside them.
 */
public final class Mending {
    private Mending() {}

    /** What was put back for a batch, and what was changed by hand: the batch, what lies beside it; a sentence each. */
    public static List<String> batch(Path batch) throws StoreException {
        sweep(batch);
        List<String> said = new ArrayList<>();
        List<Mended> mended = new ArrayList<>();
        file(batch, BatchFile::read).ifPresent(mended::add);
        flipped(batch).ifPresent(mended::add);
        file(Beside.ledger(batch), LedgerFile::read).ifPresent(mended::add);
        file(Beside.published(batch), PublishedFile::read).ifPresent(mended::add);
        file(Beside.liveMark(batch), LiveFile::readMark).ifPresent(mended::add);
        Optional<Path> calendar = LiveFile.readMark(Beside.liveMark(batch));
        if (calendar.isPresent()) {
            file(Beside.liveList(calendar.get()), LiveFile::readList).ifPresent(mended::add);
        }
        if (Files.exists(batch)) {
            UUID id = BatchFile.read(batch).id();
            Path journal = JournalFile.beside(batch);
            JournalFile.mend(journal, id).ifPresent(mended::add);
            said.addAll(sentences(mended));
            edited(batch).ifPresent(said::add);
            edited(journal, id).ifPresent(said::add);
        }
        return said;
    }

    /** Brings what was once kept beside a link to the batch the link leads to; a sentence each. */
    public static List<String> throughLink(Path link) throws StoreException {
        Path batch = Links.end(link);
        if (batch.equals(link)) return List.of();
        List<String> said = new ArrayList<>();
        for (String ending : Beside.OF_A_BATCH) {
            Path here = link.resolveSibling(link.getFileName() + ending);
            Path there = batch.resolveSibling(batch.getFileName() + ending);
            if (!Files.exists(here) || Links.end(here).equals(Links.end(there))) continue;
            if (!Files.exists(there)) {
                moved(here, there);
                said.add(Phrases.say("keeping.moved", here.toString(), there.toString()));
            } else if (there.equals(JournalFile.beside(batch))) {
                said.add(Phrases.say("keeping.two-journals", here.toString(), there.toString()));
            }
        }
        return said;
    }

    private static void moved(Path from, Path to) throws StoreException {
        try (FolderLock lock = FolderLock.of(List.of(from, to))) {
            if (lock.holds()) Files.move(from, to);
        } catch (IOException failed) {
            throw new StoreException(from, "belongs to " + to + " and cannot be moved there; move it by hand", failed);
        }
    }

    /** What was put back of what a lot or a house taught. */
    public static List<String> learned(Path lotOrHouse) throws StoreException {
        sweep(lotOrHouse);
        Path learned = LearnedFile.beside(lotOrHouse);
        return sentences(file(learned, each -> LearnedFile.parse(learned, LearnedFile.text(each))).stream()
                .toList());
    }

    /** What was put back of how the window was left. */
    static List<String> window(Path file) throws StoreException {
        return sentences(file(file, WindowFile::read).stream().toList());
    }

    private static void sweep(Path file) {
        Path folder = file.toAbsolutePath().getParent();
        if (folder != null) FolderLock.sweep(folder);
    }

    private static Optional<Mended> file(Path file, GoodCopy.Reader reader) throws StoreException {
        if (GoodCopy.isReadable(file, reader) || !Files.exists(file)) return Optional.empty();
        try (FolderLock lock = FolderLock.of(file)) {
            return lock.holds() ? GoodCopy.mend(file, reader) : Optional.empty();
        }
    }

    private static Optional<Mended> flipped(Path batch) throws StoreException {
        if (!Sealed.isDamaged(batch)) return Optional.empty();
        try (FolderLock lock = FolderLock.of(batch)) {
            return Sealed.mend(batch, lock);
        }
    }

    private static Optional<String> edited(Path batch) throws StoreException {
        return Sealed.edited(batch)
                .map(edited -> edited.copy().isPresent()
                        ? Phrases.say(
                                "keeping.edited",
                                batch.toString(),
                                String.join("; ", edited.differences()),
                                edited.copy().get().toString())
                        : Phrases.say("keeping.unsure", batch.toString()));
    }

    private static Optional<String> edited(Path journal, UUID batch) throws StoreException {
        List<Integer> numbers = JournalFile.edited(journal, batch);
        if (numbers.isEmpty()) return Optional.empty();
        String list = numbers.stream().map(String::valueOf).collect(Collectors.joining(", "));
        String copy = JournalFile.copy(journal).toString();
        return Optional.of(Phrases.say("keeping.journal-edited", journal.toString(), list, copy));
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
