package piecewright.desktop.timeline;

import java.time.Instant;
import java.time.ZoneId;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalInt;
import piecewright.plan.Availability.Stretch;
import piecewright.plan.Booking;

/** One piece along time, as figures: all that the timeline draws. */
public record PieceChart(
        Frame frame,
        List<ActMark> acts,
        List<Ribbon> ribbons,
        Traces traces,
        Bands bands,
        List<Shelf> shelves,
        List<Dot> dots) {
    public PieceChart {
        Objects.requireNonNull(frame);
        acts = List.copyOf(acts);
        ribbons = List.copyOf(ribbons);
        Objects.requireNonNull(traces);
        Objects.requireNonNull(bands);
        shelves = List.copyOf(shelves);
        dots = List.copyOf(dots);
    }

    /**
     * The time axis.
     *
     * @param until end of what is worth seeing at first; the ribbons may go on after it
     * @param nights in time order
     * @param away hours of the day in which nobody is there, in time order
     * @param besides other pieces whose hands and kit are taken meanwhile
     */
    public record Frame(
            ZoneId zone, Instant from, Instant until, List<Stretch> nights, List<Stretch> away, List<Booking> besides) {
        public Frame {
            Objects.requireNonNull(zone);
            if (!from.isBefore(until)) throw new IllegalArgumentException("from must be before until: " + from);
            nights = List.copyOf(nights);
            away = List.copyOf(away);
            besides = List.copyOf(besides);
        }
    }

    /** Something measured: weighed, read from a thermometer or counted; in the unit of its lane. */
    public record Dot(DotKind kind, Instant at, double figure) {}

    /** How a figure was found, each a sign of its own. */
    public enum DotKind {
        WEIGHED,
        READ,
        COUNTED
    }

    /** This piece with figures that were measured. */
    public PieceChart withDots(List<Dot> measured) {
        return new PieceChart(frame, acts, ribbons, traces, bands, shelves, measured);
    }

    /** This piece with the bands in which its figures lie eight times in ten. */
    public PieceChart withBands(Bands changed) {
        return new PieceChart(frame, acts, ribbons, traces, changed, shelves, dots);
    }

    /** Where figures lie eight times in ten: a tenth of the time below the low edge, a tenth above the high one. */
    public record Bands(Edges moisture, Edges grain, Edges growth) {
        public static Bands none() {
            return new Bands(Edges.none(), Edges.none(), Edges.none());
        }
    }

    /** The two edges of a band, both of the same instants. */
    public record Edges(Trace low, Trace high) {
        public static Edges none() {
            return new Edges(Trace.none(), Trace.none());
        }
    }

    /** What the grain does for a while. */
    public record Ribbon(String title, Texture texture, Instant from, Instant until) {}

    /** How a ribbon is filled, so that colour never speaks alone. */
    public enum Texture {
        WAVES,
        BLANK,
        PLAIN,
        DOTS,
        LINES,
        UPRIGHTS
    }

    /** Figures along time: moisture in percent wet basis, temperatures in °C, growth as a share, colour in EBC. */
    public record Traces(Trace moisture, Trace grain, Trace air, Trace growth, Trace colour) {}

    /** The lanes in which a shelf can lie. */
    public enum Lane {
        MOISTURE,
        GROWTH
    }

    /** A stretch of figures that is wanted for a while; a line where low and high are one. */
    public record Shelf(Lane lane, String label, Instant from, Instant until, double low, double high) {}

    public Optional<ActMark> act(String id) {
        return acts.stream().filter(act -> act.id().equals(id)).findFirst();
    }

    /** Where an act stands among the others; empty when there is none of that id. */
    public OptionalInt indexOf(String id) {
        for (int i = 0; i < acts.size(); i++) if (acts.get(i).id().equals(id)) return OptionalInt.of(i);
        return OptionalInt.empty();
    }

    /** The last instant that anything is drawn at. */
    public Instant end() {
        return ribbons.isEmpty() || ribbons.get(ribbons.size() - 1).until().isBefore(frame.until())
                ? frame.until()
                : ribbons.get(ribbons.size() - 1).until();
    }
}
