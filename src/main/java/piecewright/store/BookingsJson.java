package piecewright.store;

import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import piecewright.plan.Availability.Stretch;
import piecewright.plan.Booking;
import piecewright.plan.Booking.KitKind;
import piecewright.plan.Booking.Taken;
import tools.jackson.databind.node.ObjectNode;

/** What other batches had taken when a plan was made, as text and back. */
public final class BookingsJson {
    private static final int MOST_PIECES = 1000;
    private static final double MOST_M2 = 10_000;

    private BookingsJson() {}

    public static String write(List<Booking> bookings) {
        ObjectNode root = JsonText.newObject();
        root.put("format", 1);
        var list = root.putArray("besides");
        for (Booking booking : bookings) {
            ObjectNode node = list.addObject();
            node.put("batch", booking.batch());
            var hands = node.putArray("hands");
            booking.hands().forEach(stretch -> put(hands.addObject(), stretch));
            var kit = node.putArray("kit");
            for (Taken taken : booking.kit()) {
                ObjectNode one = kit.addObject();
                one.put("kind", key(taken.kind()));
                one.put("name", taken.name());
                one.put("pieces", taken.pieces());
                one.put("areaM2", taken.areaM2());
                put(one, taken.stretch());
            }
        }
        return JsonText.write(root);
    }

    private static void put(ObjectNode node, Stretch stretch) {
        node.put("from", stretch.from().toString());
        node.put("until", stretch.until().toString());
    }

    private static String key(KitKind kind) {
        return kind.name().toLowerCase(Locale.ROOT);
    }

    /** The bookings in this text; the file is only named in refusals. */
    public static List<Booking> read(Path file, String text) throws StoreException {
        List<Booking> bookings = new ArrayList<>();
        for (JsonBlock block : JsonBlock.root(file, text, "besides").blocks("besides")) {
            block.onlyKeys("batch", "hands", "kit");
            List<Stretch> hands = new ArrayList<>();
            for (JsonBlock one : block.blocks("hands")) hands.add(stretch(one.onlyKeys("from", "until")));
            List<Taken> kit = new ArrayList<>();
            for (JsonBlock one : block.blocks("kit")) kit.add(taken(one));
            bookings.add(new Booking(block.text("batch"), hands, kit));
        }
        return bookings;
    }

    private static Taken taken(JsonBlock block) throws StoreException {
        block.onlyKeys("kind", "name", "pieces", "areaM2", "from", "until");
        String word = block.text("kind");
        for (KitKind kind : KitKind.values()) {
            if (!key(kind).equals(word)) continue;
            String name = block.text("name");
            int pieces = block.whole("pieces", 1, MOST_PIECES);
            double areaM2 = block.number("areaM2", 0, MOST_M2);
            Stretch stretch = stretch(block);
            return block.make(() -> new Taken(kind, name, pieces, areaM2, stretch));
        }
        throw block.refused("kind", "is no kind of kit known here; take the file from a copy");
    }

    private static Stretch stretch(JsonBlock block) throws StoreException {
        Instant from = LocalTimes.instant(block, "from");
        Instant until = LocalTimes.instant(block, "until");
        return block.make(() -> new Stretch(from, until));
    }
}
