package piecewright.publish;

import java.net.URI;
import java.nio.charset.StandardCharsets;
import java.util.Map;

/** One request to a calendar server. */
record DavRequest(String method, URI uri, Map<String, String> headers, byte[] body) {
    private static final byte[] NOTHING = {};
    private static final String XML = "application/xml; charset=utf-8";

    static DavRequest get(URI uri) {
        return new DavRequest("GET", uri, Map.of("Accept", "text/calendar"), NOTHING);
    }

    static DavRequest put(URI uri, Precondition precondition, byte[] calendar) {
        return new DavRequest(
                "PUT",
                uri,
                Map.of("Content-Type", "text/calendar; charset=utf-8", precondition.header(), precondition.value()),
                calendar);
    }

    static DavRequest delete(URI uri, Precondition precondition) {
        return new DavRequest("DELETE", uri, Map.of(precondition.header(), precondition.value()), NOTHING);
    }

    static DavRequest propfind(URI uri, String depth, String xml) {
        byte[] body = xml.getBytes(StandardCharsets.UTF_8);
        return new DavRequest("PROPFIND", uri, Map.of("Depth", depth, "Content-Type", XML), body);
    }

    static DavRequest mkcalendar(URI uri, String xml) {
        byte[] body = xml.getBytes(StandardCharsets.UTF_8);
        return new DavRequest("MKCALENDAR", uri, Map.of("Content-Type", XML), body);
    }

    DavRequest at(URI elsewhere) {
        return new DavRequest(method, elsewhere, headers, body);
    }

    /** What must be true on the server for a change to happen. */
    record Precondition(String header, String value) {
        static final Precondition ABSENT = new Precondition("If-None-Match", "*");
        static final Precondition PRESENT = new Precondition("If-Match", "*");

        static Precondition unchangedSince(String etag) {
            return new Precondition("If-Match", etag);
        }
    }
}
