package piecewright.plan;

import java.util.Objects;
import piecewright.house.InsulatedBox;
import piecewright.process.Surroundings;
import piecewright.process.couch.CouchModel;
import piecewright.style.HotCouchSchedule;

/**
 * The hot couch of one piece: what its style asks, the box chosen, and its model.
 *
 * @param air of the place the box stands in
 */
public record Couching(HotCouchSchedule schedule, InsulatedBox box, CouchModel model, Surroundings air) {
    public Couching {
        Objects.requireNonNull(schedule);
        Objects.requireNonNull(box);
        Objects.requireNonNull(model);
        Objects.requireNonNull(air);
    }

    Couching withSchedule(HotCouchSchedule changed) {
        return new Couching(changed, box, model, air);
    }
}
