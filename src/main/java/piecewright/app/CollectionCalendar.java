package piecewright.app;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import piecewright.calendar.CalendarChanges;
import piecewright.calendar.DatedEvent;
import piecewright.calendar.PublishedCopies;
import piecewright.calendar.Revision;
import piecewright.publish.Account;
import piecewright.publish.CalDavPublisher;
import piecewright.publish.CalDavPublisher.IfAbsent;
import piecewright.publish.CollectionUrl;
import piecewright.publish.Conflict;
import piecewright.publish.Decision;
import piecewright.publish.Decision.Choice;
import piecewright.publish.Patience;
import piecewright.publish.PublishResult;
import piecewright.store.GoodCopy;
import piecewright.store.LedgerFile;
import piecewright.store.PublishedFile;
import piecewright.store.StoreException;

/** Batches published to one collection of a calendar server; what lies there because of a batch is noted beside it. */
public final class CollectionCalendar {
    private final CollectionUrl collection;
    private final List<Path> files;
    private final List<KeptBatch> batches;
    private final Shown shown;

    /** Whether the collection shall show the batches or be rid of them. */
    public enum Shown {
        SHOW,
        TAKE_OUT
    }

    /**
     * What to do about entries that somebody edited, by act id, such as "steep-1.drain".
     *
     * @param overwrite to write the plan's
     * @param keep to leave theirs
     */
    public record Choices(Set<String> overwrite, Set<String> keep) {
        public Choices {
            overwrite = Set.copyOf(overwrite);
            keep = Set.copyOf(keep);
        }

        private Optional<Choice> about(Conflict conflict) {
            if (overwrite.contains(conflict.key())) return Optional.of(Choice.OVERWRITE);
            return keep.contains(conflict.key()) ? Optional.of(Choice.KEEP_THEIRS) : Optional.empty();
        }
    }

    private CollectionCalendar(CollectionUrl collection, List<Path> files, List<KeptBatch> batches, Shown shown) {
        this.collection = collection;
        this.files = files;
        this.batches = batches;
        this.shown = shown;
    }

    /** Reads the batches of these files; nothing is sent yet. */
    public static CollectionCalendar of(
            CollectionUrl collection, List<Path> files, Shown shown, CalendarReading reading) throws StoreException {
        CollectionCalendar calendar =
                new CollectionCalendar(collection, List.copyOf(files), KeptBatch.open(files, reading), shown);
        for (Path file : files) calendar.copies(file);
        return calendar;
    }

    /** What publishing would change, told without asking the server; an entry edited there shows only then. */
    public CalendarUpdate preview(CalendarManner manner, Instant now) throws StoreException {
        List<CalendarChanges> parts = new ArrayList<>();
        for (int at = 0; at < files.size(); at++) {
            parts.add(copies(files.get(at)).changesTo(events(revision(at, manner, now))));
        }
        return new CalendarUpdate(
                collection.toString(), batches.get(0).zone(), CalendarChanges.together(parts), List.of());
    }

    /** One result for each batch, up to the first that could not be finished. */
    public List<PublishResult> publish(
            Account account, IfAbsent ifAbsent, Choices choices, CalendarManner manner, Instant now)
            throws NotWrittenException {
        CalDavPublisher publisher = new CalDavPublisher(collection, account, ifAbsent, Patience.usual());
        List<PublishResult> results = new ArrayList<>();
        try {
            for (int at = 0; at < files.size(); at++) {
                Revision revision = revision(at, manner, now);
                LedgerFile.write(batches.get(at).shelf(), revision.ledger()); // first: no SEQUENCE is ever used twice
                PublishResult result = publish(publisher, files.get(at), events(revision), choices);
                results.add(result);
                if (shown == Shown.SHOW) {
                    CalendarHabits.published(files.get(at), account.name(), manner.options());
                }
                if (!(result instanceof PublishResult.Published)) break;
            }
            return results;
        } catch (StoreException failed) {
            throw new NotWrittenException(failed);
        }
    }

    private PublishResult publish(CalDavPublisher publisher, Path file, List<DatedEvent> events, Choices choices)
            throws StoreException {
        PublishedCopies known = copies(file);
        note(file, known.intending(events)); // before anything is sent: what a crash leaves there is known for ours
        List<Decision> leftOut = events.stream()
                .filter(event -> choices.keep().contains(event.event().key()))
                .map(event -> Decision.leavingOut(event.uid()))
                .toList();
        PublishResult result = publisher.publish(events, known, leftOut);
        note(file, result.copies());
        if (!(result instanceof PublishResult.Published first)) return result;
        List<Decision> decisions = new ArrayList<>();
        for (Conflict conflict : first.conflicts()) {
            choices.about(conflict).ifPresent(choice -> decisions.add(Decision.about(conflict, choice)));
        }
        if (decisions.isEmpty()) return first;
        PublishResult again = publisher.publish(events, first.copies(), decisions);
        note(file, again.copies());
        return again instanceof PublishResult.Published second ? second.after(first) : again;
    }

    private Revision revision(int at, CalendarManner manner, Instant now) {
        KeptBatch batch = batches.get(at);
        return batch.ledger().next(batch.events(manner), now);
    }

    private List<DatedEvent> events(Revision revision) {
        return shown == Shown.SHOW ? revision.forLiveFile() : List.of();
    }

    private PublishedCopies copies(Path batch) throws StoreException {
        Path file = Beside.published(batch);
        if (!Files.exists(file)) return PublishedCopies.none(collection.toString());
        PublishedCopies copies = PublishedFile.read(file);
        if (copies.collection().equals(collection.toString())) return copies;
        throw new StoreException(
                batch,
                "is published to " + copies.collection()
                        + "; take it out there first (--take-out), or let go of it where that server is gone (--forget)");
    }

    /** A batch and the collection that was let go. */
    public record Forgotten(Path batch, String collection) {}

    /**
     * Lets go of the collections of these batches without asking them, for servers that are gone; what lies there stays.
     * Batches that are in none are passed over.
     */
    public static List<Forgotten> forget(List<Path> batches) throws NotWrittenException {
        List<Forgotten> forgotten = new ArrayList<>();
        try {
            for (Path batch : batches) {
                Path file = Beside.published(batch);
                if (!Files.exists(file)) continue;
                forgotten.add(new Forgotten(batch, PublishedFile.read(file).collection()));
                GoodCopy.remove(file);
            }
            return forgotten;
        } catch (StoreException failed) {
            throw new NotWrittenException(failed);
        }
    }

    private static void note(Path batch, PublishedCopies copies) throws StoreException {
        Path file = Beside.published(batch);
        if (copies.copies().isEmpty()) GoodCopy.remove(file);
        else PublishedFile.write(file, copies);
    }
}
