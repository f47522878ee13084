package piecewright.publish;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import piecewright.calendar.CalendarEvent;
import piecewright.calendar.EventPrint;
import piecewright.calendar.PublishedCopies;

/** What one publication has done so far; holds good even if it breaks off. */
final class Tally {
    private final Map<UUID, Decision> decisions = new HashMap<>();
    private final Map<UUID, EventPrint> withoutMark = new HashMap<>();
    private final List<Conflict> conflicts = new ArrayList<>();
    private PublishedCopies copies;
    private final List<CalendarEvent> restored = new ArrayList<>();
    private int created;
    private int updated;
    private int removed;
    private int unchanged;

    Tally(PublishedCopies before, List<Decision> decisions) {
        this.copies = before;
        for (Decision decision : decisions) this.decisions.put(decision.uid(), decision);
    }

    PublishedCopies copies() {
        return copies;
    }

    PublishResult.Published published() {
        PublishResult.Counts counts = new PublishResult.Counts(created, updated, removed, unchanged);
        return new PublishResult.Published(copies, counts, restored, conflicts);
    }

    /** What the person chose about just this copy. */
    Optional<Decision.Choice> choice(UUID uid, String mark) {
        return Optional.ofNullable(decisions.get(uid))
                .filter(decision -> decision.seen().equals(mark))
                .map(Decision::choice);
    }

    void created(Wanted wanted, DavReply reply) {
        stored(wanted, reply);
        created++;
    }

    void updated(Wanted wanted, DavReply reply) {
        stored(wanted, reply);
        updated++;
    }

    /** Made again, because somebody or something had taken it away. */
    void restored(Wanted wanted, DavReply reply) {
        stored(wanted, reply);
        restored.add(wanted.event());
    }

    /** As we left it, under a mark that may be new. */
    void sameAsLeft(UUID uid, PublishedCopies.Copy copy, Optional<String> etag) {
        keep(uid, copy.withStored(etag, copy.stored()));
        unchanged++;
    }

    /** Notes what is about to be sent; the copy known before. */
    Optional<PublishedCopies.Copy> trying(Wanted wanted) {
        Optional<PublishedCopies.Copy> before =
                Optional.ofNullable(copies.copies().get(wanted.uid()));
        copies = copies.intending(List.of(wanted.dated()));
        return before;
    }

    /** It did not get there. */
    void notTaken(UUID uid, Optional<PublishedCopies.Copy> before) {
        if (before.isPresent()) keep(uid, before.get());
        else forget(uid);
    }

    private void stored(Wanted wanted, DavReply reply) {
        if (reply.etag().isEmpty()) withoutMark.put(wanted.uid(), wanted.print());
        keep(wanted.uid(), wanted.copy(reply.etag(), wanted.print().content()));
    }

    /** Already there just as wanted. */
    void adopted(Wanted wanted, Optional<String> etag) {
        keep(wanted.uid(), wanted.copy(etag, wanted.print().content()));
        unchanged++;
    }

    /** Stays as the person left it; looked at again when the plan changes it. */
    void leftToThem(Wanted wanted) {
        keep(wanted.uid(), wanted.copy(Optional.empty(), ""));
        unchanged++;
    }

    void unchanged() {
        unchanged++;
    }

    void keep(UUID uid, PublishedCopies.Copy copy) {
        copies = copies.with(uid, copy);
    }

    /** No longer there. */
    void removed(UUID uid) {
        forget(uid);
        removed++;
    }

    /** No longer ours. */
    void forget(UUID uid) {
        copies = copies.without(uid);
    }

    void conflict(Wanted wanted, Conflict.Kind kind, String mark) {
        conflicts.add(new Conflict(wanted.uid(), wanted.event().key(), kind, Optional.of(wanted.event()), mark));
    }

    void conflictOverRemoval(UUID uid, PublishedCopies.Copy copy, String mark) {
        conflicts.add(new Conflict(uid, copy.key(), Conflict.Kind.EDITED, Optional.empty(), mark));
    }

    /** Written, but the server gave no mark for it. */
    Map<UUID, EventPrint> withoutMark() {
        return Map.copyOf(withoutMark);
    }
}
