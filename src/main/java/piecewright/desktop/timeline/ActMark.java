package piecewright.desktop.timeline;

import java.time.Instant;
import java.util.Map;
import java.util.Objects;
import piecewright.plan.Act;
import piecewright.plan.Window;
import piecewright.text.Wording;

/**
 * An act as the timeline shows it.
 *
 * @param letters two letters that stand for the kind
 */
public record ActMark(
        String id, Shape shape, String letters, String title, Instant at, Window window, Standing standing) {
    public ActMark {
        Objects.requireNonNull(id);
        Objects.requireNonNull(shape);
        Objects.requireNonNull(letters);
        Objects.requireNonNull(title);
        Objects.requireNonNull(at);
        Objects.requireNonNull(window);
        Objects.requireNonNull(standing);
    }

    /** Families of acts, each an outline of its own. */
    public enum Shape {
        DROP,
        CUP,
        MOUND,
        RING,
        TICKET,
        ROOF,
        KEEL,
        GEM
    }

    /** Whether it is still to come. */
    public enum Standing {
        DONE,
        NEXT,
        PLANNED
    }

    private record Sign(Shape shape, String letters) {}

    private static final Map<String, Sign> SIGNS = Map.ofEntries(
            Map.entry("soak", new Sign(Shape.DROP, "So")),
            Map.entry("sprinkle", new Sign(Shape.DROP, "Sp")),
            Map.entry("drain", new Sign(Shape.CUP, "Dr")),
            Map.entry("floor", new Sign(Shape.MOUND, "Fl")),
            Map.entry("wither", new Sign(Shape.MOUND, "Wi")),
            Map.entry("turn", new Sign(Shape.RING, "Tu")),
            Map.entry("stir", new Sign(Shape.RING, "St")),
            Map.entry("load", new Sign(Shape.ROOF, "Lo")),
            Map.entry("raise", new Sign(Shape.ROOF, "Ra")),
            Map.entry("cure", new Sign(Shape.ROOF, "Cu")),
            Map.entry("off", new Sign(Shape.KEEL, "Of")),
            Map.entry("deroot", new Sign(Shape.GEM, "De")));

    /** The mark of an act; kinds without a sign of their own get a ticket with the first letters of their name. */
    static ActMark of(Act act, Wording wording, Standing standing) {
        String title = wording.actTitle(act);
        Sign sign = SIGNS.getOrDefault(act.kind().key(), new Sign(Shape.TICKET, title.substring(0, 2)));
        return new ActMark(act.id(), sign.shape(), sign.letters(), title, act.startsAt(), act.window(), standing);
    }
}
