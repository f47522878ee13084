package piecewright.publish;

import java.util.Optional;
import piecewright.calendar.EventPrint;
import piecewright.calendar.PublishedCopies.Copy;
import piecewright.publish.DavRequest.Precondition;

/** Brings one event in line with the plan: made if it is new or missing, changed if the plan changed it, else not touched. */
final class Upload {
    private final DavConnection server;
    private final Tally tally;
    private final Listing listing;

    Upload(DavConnection server, Listing listing, Tally tally) {
        this.server = server;
        this.listing = listing;
        this.tally = tally;
    }

    void bringInLine(Wanted wanted) throws ServerException {
        Optional<Copy> known = Optional.ofNullable(tally.copies().copies().get(wanted.uid()));
        if (known.isEmpty() || known.get().sent().isEmpty() && !listing.holds(wanted.uid())) {
            create(wanted);
            return;
        }
        Copy copy = known.get();
        boolean same = copy.sent().equals(wanted.print().content());
        if (same && copy.isTheirs()) {
            tally.unchanged(); // as they want it, until the plan changes it
        } else if (!listing.holds(wanted.uid())) {
            restore(wanted);
        } else if (same && listing.isUnder(wanted.uid(), copy.etag())) {
            tally.unchanged(); // not written again: the copy may hold the person's snooze
        } else if (same || copy.etag().isEmpty()) {
            look(wanted, known);
        } else {
            change(wanted, known, copy.etag().get());
        }
    }

    /** It was there and is not any more: the plan still has it, so it is made again unless they said to leave it out. */
    private void restore(Wanted wanted) throws ServerException {
        if (tally.choice(wanted.uid(), Decision.MISSING).isPresent()) {
            tally.leftToThem(wanted);
            return;
        }
        DavReply reply = put(wanted, Precondition.ABSENT);
        if (reply.succeeded()) tally.restored(wanted, reply);
        else if (reply.status() == 409) tally.conflict(wanted, Conflict.Kind.ELSEWHERE, "");
        else if (reply.preconditionFailed()) tally.conflict(wanted, Conflict.Kind.EDITED, "");
        else throw new ServerException(reply.status());
    }

    private void create(Wanted wanted) throws ServerException {
        DavReply reply = put(wanted, Precondition.ABSENT);
        if (reply.succeeded()) tally.created(wanted, reply);
        else if (reply.preconditionFailed()) look(wanted, Optional.empty());
        else if (reply.status() == 409) tally.conflict(wanted, Conflict.Kind.ELSEWHERE, "");
        else throw new ServerException(reply.status());
    }

    private void change(Wanted wanted, Optional<Copy> copy, String etag) throws ServerException {
        DavReply reply = put(wanted, Precondition.unchangedSince(etag));
        if (reply.succeeded()) tally.updated(wanted, reply);
        else if (reply.preconditionFailed() || reply.notThere()) look(wanted, copy);
        else throw new ServerException(reply.status());
    }

    /** The copy there is not known to be the one we left: look before touching it. */
    private void look(Wanted wanted, Optional<Copy> copy) throws ServerException {
        DavReply there = server.send(DavRequest.get(wanted.uri()));
        if (there.notThere()) {
            restore(wanted);
            return;
        }
        if (there.status() != 200) throw new ServerException(there.status());
        Optional<EventPrint> print = EventPrint.of(there.body());
        String mark = there.mark(print);
        boolean ours = print.filter(found -> copy.isPresent() ? wanted.hasTheUid(found) : wanted.isTheAct(found))
                .isPresent();
        String content = print.map(EventPrint::content).orElse("");
        if (!ours) {
            tally.conflict(wanted, Conflict.Kind.NOT_OURS, mark);
        } else if (content.equals(wanted.print().content())) {
            tally.adopted(wanted, there.etag());
        } else if (copy.filter(left -> left.isOurs(content)).isPresent()) {
            if (copy.get().sent().equals(wanted.print().content()))
                tally.sameAsLeft(wanted.uid(), copy.get(), there.etag());
            else replace(wanted, mark, there.unchanged());
        } else {
            ifTold(wanted, Conflict.Kind.EDITED, mark, there.unchanged());
        }
    }

    private void ifTold(Wanted wanted, Conflict.Kind kind, String mark, Precondition precondition)
            throws ServerException {
        Optional<Decision.Choice> choice = tally.choice(wanted.uid(), mark);
        if (choice.isEmpty()) tally.conflict(wanted, kind, mark);
        else if (choice.get() == Decision.Choice.OVERWRITE) replace(wanted, mark, precondition);
        else tally.leftToThem(wanted);
    }

    private void replace(Wanted wanted, String mark, Precondition precondition) throws ServerException {
        DavReply reply = put(wanted, precondition);
        if (reply.succeeded()) tally.updated(wanted, reply);
        else if (reply.preconditionFailed()) tally.conflict(wanted, Conflict.Kind.EDITED, mark);
        else throw new ServerException(reply.status());
    }

    private DavReply put(Wanted wanted, Precondition precondition) throws ServerException {
        Optional<Copy> before = tally.trying(wanted); // stays if no answer comes: it may have got there
        DavReply reply = server.send(DavRequest.put(wanted.uri(), precondition, wanted.octets()));
        if (!reply.succeeded()) tally.notTaken(wanted.uid(), before);
        return reply;
    }
}
