package piecewright.colour;

import java.time.Instant;
import piecewright.process.PieceState;
import piecewright.process.Stage;
import piecewright.process.Surroundings;
import piecewright.process.couch.CouchModel;
import piecewright.process.couch.CouchParameters;
import piecewright.process.couch.HotCouch;
import piecewright.process.kiln.EnzymeSurvival;
import piecewright.quantity.Moisture;
import piecewright.style.HotCouchSchedule;

/**
 * A hot couch until the index its style prefers where no box is known: 4.5 kg of barley in the usual box, packed as moist
 * as the style prefers, in a room of 20 °C. A plan says it for the box, the room and the piece there are.
 *
 * @param hours until it comes to that index; the style's longest where it never does
 * @param reached whether it comes to it
 * @param diastaticFraction share of the green malt's diastatic power that survives it; {@link EnzymeBand} says how sure
 */
public record UsualCouch(double hours, boolean reached, double diastaticFraction) {
    /** Judgement: the batch that the couch's figures were found with, kg of barley. */
    private static final double BARLEY_KG = 4.5;
    /** Judgement: a couch is put where it is warm. */
    private static final double ROOM_C = 20;
    /** Judgement: a heated room. */
    private static final double ROOM_HUMIDITY_FRACTION = 0.5;

    public static UsualCouch of(HotCouchSchedule schedule, EnzymeSurvival enzymes) {
        HotCouch couch = new HotCouch(
                new CouchModel(CouchParameters.defaults(), 1),
                Surroundings.constant(Instant.EPOCH, ROOM_C, ROOM_HUMIDITY_FRACTION));
        PieceState now = CouchModel.packed(BARLEY_KG, new Moisture(schedule.packingFraction()), ROOM_C);
        double lost = 0;
        double hours = 0;
        while (hours < schedule.longestHours() && now.couch().indexHours() < schedule.indexHours()) {
            double moisture = now.mass().moisture().wetBasisFraction();
            lost += Stage.STEP_HOURS * enzymes.lossPerHour(now.grainC(), moisture);
            now = couch.step(now, hours, Stage.STEP_HOURS);
            hours += Stage.STEP_HOURS;
        }
        return new UsualCouch(hours, now.couch().indexHours() >= schedule.indexHours(), Math.exp(-lost));
    }
}
