package piecewright.process.couch;

import java.time.Instant;
import piecewright.process.PieceState;
import piecewright.process.Surroundings;
import piecewright.quantity.Moisture;

/** Couches that several tests use. */
final class CouchFixture {
    static final CouchModel MODEL = new CouchModel(CouchParameters.defaults(), 1);

    private CouchFixture() {}

    static Surroundings air(double airC) {
        return Surroundings.constant(Instant.parse("2031-02-01T08:00:00Z"), airC, 0.6);
    }

    static PieceState packed(double barleyKg, double moisturePercent, double pileC) {
        return CouchModel.packed(barleyKg, Moisture.ofWetBasisPercent(moisturePercent), pileC);
    }

    /** Water and dry matter held as packed, the way the reference runs were made. */
    static CouchCurve held(double barleyKg, double moisturePercent, double pileC, double airC, double hours) {
        return CouchCurve.of(
                HotCouch.holdingMass(MODEL, air(airC)), packed(barleyKg, moisturePercent, pileC), 0, hours);
    }

    /** The couch as planned with: breathing and drying booked. */
    static CouchCurve booked(double barleyKg, double moisturePercent, double pileC, double airC, double hours) {
        return CouchCurve.of(new HotCouch(MODEL, air(airC)), packed(barleyKg, moisturePercent, pileC), 0, hours);
    }
}
