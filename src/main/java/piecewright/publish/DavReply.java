package piecewright.publish;

import java.util.Optional;
import piecewright.calendar.EventPrint;
import piecewright.publish.DavRequest.Precondition;

/**
 * What a server answered; the body is bounded.
 *
 * @param etag a strong one only: a weak one can never be matched (RFC 9110, 13.1.1)
 */
record DavReply(int status, Optional<String> etag, byte[] body) {
    DavReply {
        etag = etag.filter(tag -> !tag.startsWith("W/"));
    }

    boolean succeeded() {
        return status == 200 || status == 201 || status == 204;
    }

    boolean notThere() {
        return status == 404 || status == 410;
    }

    boolean preconditionFailed() {
        return status == 412;
    }

    /** Tells this copy from a later one. */
    String mark(Optional<EventPrint> print) {
        return etag.or(() -> print.map(EventPrint::content)).orElse("");
    }

    /** That the copy is still this one, as far as the server lets us say. */
    Precondition unchanged() {
        return etag.map(Precondition::unchangedSince).orElse(Precondition.PRESENT);
    }
}
