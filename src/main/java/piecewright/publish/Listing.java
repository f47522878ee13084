package piecewright.publish;

import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.UUID;

/** What a collection holds: by the name of the resource, the server's mark; empty where it gives none that can be matched. */
record Listing(Map<String, Optional<String>> marks) {
    Listing {
        marks = Map.copyOf(marks);
    }

    static Listing of(byte[] multistatus) throws ServerException {
        Map<String, Optional<String>> marks = new TreeMap<>();
        for (Multistatus.Item item : Multistatus.items(multistatus)) {
            String name = item.href().substring(item.href().lastIndexOf('/') + 1);
            if (!name.isEmpty()) marks.put(name, item.etag().filter(tag -> !tag.startsWith("W/")));
        }
        return new Listing(marks);
    }

    boolean holds(UUID uid) {
        return marks.containsKey(name(uid));
    }

    /** The server's mark of this event. */
    Optional<String> mark(UUID uid) {
        return marks.getOrDefault(name(uid), Optional.empty());
    }

    /** Whether the event lies there under just this mark, so that nobody touched it. */
    boolean isUnder(UUID uid, Optional<String> etag) {
        return etag.isPresent() && mark(uid).equals(etag);
    }

    private static String name(UUID uid) {
        return uid + ".ics";
    }
}
