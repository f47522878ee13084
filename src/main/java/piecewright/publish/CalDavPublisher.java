package piecewright.publish;

import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import piecewright.calendar.DatedEvent;
import piecewright.calendar.EventPrint;
import piecewright.calendar.IcsWriter;
import piecewright.calendar.PublishedCopies;
import piecewright.calendar.PublishedCopies.Copy;

/**
 * Publishes events to one collection of a CalDAV server (RFC 4791), one resource per UID. Touches only what it made
 * itself; never writes over a copy that somebody edited unless told to; writes only what the plan changed or what is
 * missing there.
 */
public final class CalDavPublisher {
    private static final String WHAT_IS_IT = """
            <propfind xmlns="DAV:" xmlns:C="urn:ietf:params:xml:ns:caldav"><prop><resourcetype/>\
            <C:supported-calendar-component-set/></prop></propfind>""";
    private static final String EVENTS_ONLY = """
            <C:mkcalendar xmlns="DAV:" xmlns:C="urn:ietf:params:xml:ns:caldav"><set><prop>\
            <displayname>Malting</displayname><C:supported-calendar-component-set><C:comp name="VEVENT"/>\
            </C:supported-calendar-component-set></prop></set></C:mkcalendar>""";
    private static final String ETAGS = "<propfind xmlns=\"DAV:\"><prop><getetag/></prop></propfind>";

    private final CollectionUrl collection;
    private final IfAbsent ifAbsent;
    private final DavConnection server;
    private final IcsWriter writer = new IcsWriter();

    /** What to do if there is nothing at the address. */
    public enum IfAbsent {
        MAKE_IT,
        REFUSE
    }

    public CalDavPublisher(CollectionUrl collection, Account account, IfAbsent ifAbsent, Patience patience) {
        this.collection = collection;
        this.ifAbsent = ifAbsent;
        this.server = new DavConnection(collection, account, patience);
    }

    /**
     * Brings the collection in line with these events.
     *
     * @param events all that shall be there of the batches concerned, none cancelled
     * @param before what the last publication of these batches to this collection left; removed if no longer in events
     * @param decisions about conflicts of the last publication
     */
    public PublishResult publish(List<DatedEvent> events, PublishedCopies before, List<Decision> decisions) {
        if (!before.collection().equals(collection.toString())) {
            throw new IllegalArgumentException("copies must be of " + collection + ": " + before.collection());
        }
        Tally tally = new Tally(before, decisions);
        try {
            if (!isThere()) return new PublishResult.NotACalendar(before);
            bringInLine(events, tally);
            learnMarks(tally);
            return tally.published();
        } catch (ServerException failed) {
            return failed.status() == 0
                    ? new PublishResult.Offline(tally.copies(), String.valueOf(failed.getMessage()))
                    : new PublishResult.Refused(tally.copies(), failed.status());
        }
    }

    private Wanted wanted(DatedEvent event) {
        return Wanted.of(event, collection.resource(event.uid()), writer.resource(event));
    }

    private boolean isThere() throws ServerException {
        DavReply reply = server.send(DavRequest.propfind(collection.uri(), "0", WHAT_IS_IT));
        if (reply.notThere() && ifAbsent == IfAbsent.MAKE_IT) {
            DavReply made = server.send(DavRequest.mkcalendar(collection.uri(), EVENTS_ONLY));
            if (made.status() != 201) throw new ServerException(made.status());
            reply = server.send(DavRequest.propfind(collection.uri(), "0", WHAT_IS_IT));
        }
        if (reply.status() == 200) return false; // a web page
        if (reply.status() != 207) throw new ServerException(reply.status());
        return Multistatus.items(reply.body()).stream().anyMatch(item -> item.calendar() && item.takesEvents());
    }

    private void bringInLine(List<DatedEvent> events, Tally tally) throws ServerException {
        Set<UUID> wanted = new HashSet<>();
        Upload upload = new Upload(server, listed(), tally);
        for (DatedEvent event : events) {
            wanted.add(event.uid());
            upload.bringInLine(wanted(event));
        }
        Removal removal = new Removal(server, tally);
        for (Map.Entry<UUID, Copy> copy : Map.copyOf(tally.copies().copies()).entrySet()) {
            if (wanted.contains(copy.getKey())) continue;
            removal.takeAway(collection.resource(copy.getKey()), copy.getKey(), copy.getValue());
        }
    }

    /**
     * Asks for marks that the server did not give when it stored an event, as one must not that rewrites it (RFC 4791,
     * 5.3.4). Marks it did give are kept, so that an edit made meanwhile is still noticed.
     */
    private void learnMarks(Tally tally) throws ServerException {
        if (tally.withoutMark().isEmpty()) return;
        Listing listing = listed();
        for (Map.Entry<UUID, EventPrint> sent : tally.withoutMark().entrySet()) {
            learnMark(tally, sent.getKey(), sent.getValue(), listing.mark(sent.getKey()));
        }
    }

    private Listing listed() throws ServerException {
        DavReply reply = server.send(DavRequest.propfind(collection.uri(), "1", ETAGS));
        if (reply.status() != 207) throw new ServerException(reply.status());
        return Listing.of(reply.body());
    }

    /** What the server made of the event counts as ours if it still says the same in what matters. */
    private void learnMark(Tally tally, UUID uid, EventPrint sent, Optional<String> listed) throws ServerException {
        DavReply there = server.send(DavRequest.get(collection.resource(uid)));
        Optional<EventPrint> print = there.status() == 200 ? EventPrint.of(there.body()) : Optional.empty();
        if (print.filter(found -> found.essentials().equals(sent.essentials())).isEmpty()) return;
        Optional<String> etag = there.etag().isPresent() ? there.etag() : listed;
        Copy copy = tally.copies().copies().get(uid);
        if (copy != null) tally.keep(uid, copy.withStored(etag, print.get().content()));
    }
}
