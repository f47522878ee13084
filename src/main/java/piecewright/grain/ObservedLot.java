package piecewright.grain;

import java.util.Objects;

/** A lot as its owner states it, with what was seen of it. */
public record ObservedLot(GrainLot lot, LotObservations observations) {
    public ObservedLot {
        Objects.requireNonNull(lot);
        Objects.requireNonNull(observations);
    }

    /** The lot as a plan may take it: suspect seed counts as treated. */
    public GrainLot forPlanning() {
        return new GrainLot(
                lot.name(),
                lot.kind(),
                lot.moisture(),
                lot.dishes(),
                lot.size(),
                observations.safely(lot.treatment()),
                lot.learned());
    }
}
