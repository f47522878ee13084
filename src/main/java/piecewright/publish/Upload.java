package piecewright.publish;

import java.util.Optional;
import piecewright.calendar.EventPrint;
import piecewright.calendar.PublishedCopies.Copy;
import piecewright.publish.DavRequest.Precondition;

/** Brings one event in line with the plan: made if it is new, changed if the plan changed it, else not touched. */
final class Upload {
    private final DavConnection server;
    private final Tally tally;

    Upload(DavConnection server, Tally tally) {
        this.server = server;
        this.tally = tally;
    }

    void bringInLine(Wanted wanted) throws ServerException {
        Optional<Copy> copy = Optional.ofNullable(tally.copies().copies().get(wanted.uid()));
        if (copy.isEmpty()) {
            create(wanted);
        } else if (copy.get().sent().equals(wanted.print().content())) {
            tally.unchanged(); // not written again: the copy may hold the person's snooze
        } else if (copy.get().etag().isEmpty()) {
            look(wanted, copy);
        } else {
            change(wanted, copy, copy.get().etag().get());
        }
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
            ifTold(wanted, Conflict.Kind.REMOVED, "", Precondition.ABSENT);
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
        } else if (copy.filter(left -> left.stored().equals(content)).isPresent()) {
            replace(wanted, mark, there.unchanged());
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
        return server.send(DavRequest.put(wanted.uri(), precondition, wanted.octets()));
    }
}
