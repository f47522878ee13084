package piecewright.store;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.UUID;
import piecewright.journal.Entry;
import piecewright.store.JournalFile.Content;

/**
 * A journal against its copy. An entry that only the copy has was lost where the file has damaged lines at its place, and
 * was taken out by somebody where it has none: a journal mended by hand is theirs.
 *
 * @param lost entries to put back
 * @param edited numbers of entries that somebody took out or changed
 * @param whole the entries of the file with those that were lost
 */
record JournalCopy(List<Entry> lost, List<Integer> edited, Collection<Entry> whole) {
    JournalCopy {
        lost = List.copyOf(lost);
        edited = List.copyOf(edited);
        whole = List.copyOf(whole);
    }

    static JournalCopy of(Path file, UUID batch) throws StoreException {
        Path copy = GoodCopy.of(file);
        if (!Files.exists(copy)) return new JournalCopy(List.of(), List.of(), List.of());
        Content kept;
        try {
            kept = JournalFile.read(copy, batch);
        } catch (StoreException noGoodCopy) {
            return new JournalCopy(List.of(), List.of(), List.of());
        }
        return Files.exists(file) ? of(kept, there(file, batch)) : new JournalCopy(List.of(), numbers(kept), List.of());
    }

    /** A file that cannot be read at all is damaged from its beginning to its end. */
    private static Content there(Path file, UUID batch) throws StoreException {
        try {
            return JournalFile.read(file, batch);
        } catch (StoreException unreadable) {
            if (Files.isDirectory(file)) throw unreadable;
            return new Content(piecewright.journal.Journal.empty(), List.of(), false, List.of(0));
        }
    }

    private static JournalCopy of(Content kept, Content there) {
        SortedMap<Integer, Entry> whole = new TreeMap<>();
        there.journal().entries().forEach(entry -> whole.put(entry.number(), entry));
        List<Entry> lost = new ArrayList<>();
        List<Integer> edited = new ArrayList<>();
        for (Entry entry : kept.journal().entries()) {
            Entry now = whole.get(entry.number());
            if (now == null && isInGap(entry.number(), there.lostAfter(), whole)) lost.add(entry);
            else if (!entry.equals(now)) edited.add(entry.number());
        }
        SortedMap<Integer, Entry> all = new TreeMap<>(whole);
        lost.forEach(entry -> all.put(entry.number(), entry));
        return new JournalCopy(lost, edited, all.values());
    }

    private static boolean isInGap(int number, List<Integer> lostAfter, SortedMap<Integer, Entry> whole) {
        return lostAfter.stream()
                .anyMatch(before ->
                        before < number && whole.subMap(before + 1, number).isEmpty());
    }

    private static List<Integer> numbers(Content content) {
        return content.journal().entries().stream().map(Entry::number).toList();
    }
}
