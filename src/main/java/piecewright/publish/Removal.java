package piecewright.publish;

import java.net.URI;
import java.util.Optional;
import java.util.UUID;
import piecewright.calendar.EventPrint;
import piecewright.calendar.PublishedCopies.Copy;
import piecewright.publish.DavRequest.Precondition;

/** Takes away an event that we put there and the plan no longer has, unless somebody edited it. */
final class Removal {
    private final DavConnection server;
    private final Tally tally;

    Removal(DavConnection server, Tally tally) {
        this.server = server;
        this.tally = tally;
    }

    void takeAway(URI uri, UUID uid, Copy copy) throws ServerException {
        if (copy.etag().isPresent()) {
            DavReply reply = server.send(DavRequest.delete(
                    uri, Precondition.unchangedSince(copy.etag().get())));
            if (reply.succeeded() || reply.notThere()) {
                tally.removed(uid);
                return;
            }
            if (!reply.preconditionFailed()) throw new ServerException(reply.status());
        }
        DavReply there = server.send(DavRequest.get(uri));
        if (there.notThere()) gone(uid, copy);
        else if (there.status() != 200) throw new ServerException(there.status());
        else decide(uri, uid, copy, there);
    }

    /** One that never got there was not removed either. */
    private void gone(UUID uid, Copy copy) {
        if (copy.sent().isEmpty()) tally.forget(uid);
        else tally.removed(uid);
    }

    private void decide(URI uri, UUID uid, Copy copy, DavReply there) throws ServerException {
        Optional<EventPrint> print = EventPrint.of(there.body());
        String mark = there.mark(print);
        Optional<Decision.Choice> choice = tally.choice(uid, mark);
        boolean untouched = print.filter(found -> copy.isOurs(found.content())).isPresent();
        if (choice.filter(Decision.Choice.KEEP_THEIRS::equals).isPresent()) {
            tally.forget(uid);
        } else if (choice.isPresent() || untouched) {
            DavReply reply = server.send(DavRequest.delete(uri, there.unchanged()));
            if (reply.succeeded() || reply.notThere()) tally.removed(uid);
            else if (reply.preconditionFailed()) tally.conflictOverRemoval(uid, copy, mark);
            else throw new ServerException(reply.status());
        } else {
            tally.conflictOverRemoval(uid, copy, mark);
        }
    }
}
