package piecewright.learn;

import java.util.Set;
import piecewright.belief.Trait;
import piecewright.belief.Unknown;
import piecewright.belief.Values;
import piecewright.process.Stage;
import piecewright.process.Surroundings;
import piecewright.process.couch.CouchModel;
import piecewright.process.couch.CouchParameters;
import piecewright.process.couch.HotCouch;

/** The hot couch in one box for any values of its heat and loss. */
final class FittedCouch {
    private final CouchParameters stated;
    private final double germinatingFraction;
    private final String box;

    FittedCouch(CouchParameters stated, double germinatingFraction, String box) {
        this.stated = stated;
        this.germinatingFraction = germinatingFraction;
        this.box = box;
    }

    Stage stage(Values values, Surroundings room) {
        double heat = values.of(Trait.COUCH_HEAT, box, stated.heat().lotRatio());
        double lossWPerK = values.of(Trait.BOX_LOSS, box, stated.box().lossWPerK());
        CouchParameters fitted = stated.withHeat(stated.heat().withLotRatio(heat))
                .withBox(stated.box().withLossWPerK(lossWPerK));
        return new HotCouch(new CouchModel(fitted, germinatingFraction), room);
    }

    Set<Unknown> moves() {
        return Set.of(new Unknown(Trait.COUCH_HEAT, box), new Unknown(Trait.BOX_LOSS, box));
    }
}
