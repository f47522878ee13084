package piecewright.process.germination;

import java.time.Instant;
import piecewright.process.GrainMass;
import piecewright.process.GrowthState;
import piecewright.process.Metabolism;
import piecewright.process.MetabolismParameters;
import piecewright.process.PieceState;
import piecewright.process.SteepState;
import piecewright.process.Surroundings;
import piecewright.quantity.Moisture;

/** Green malt and air that several floor tests use. */
final class FloorFixture {
    static final Metabolism ALIVE = new Metabolism(1, 1, MetabolismParameters.defaults());
    static final Metabolism DEAD = new Metabolism(0, 1, MetabolismParameters.defaults());
    static final GrowthParameters PARAMETERS = GrowthParameters.defaults();

    private FloorFixture() {}

    static Surroundings air(double airC, double humidityFraction) {
        return Surroundings.constant(Instant.parse("2031-02-01T08:00:00Z"), airC, humidityFraction);
    }

    /** What 5 kg of barley have become after steeping, just chitted. */
    static PieceState steeped(double moisturePercent, double grainC) {
        return grown(moisturePercent, grainC, 0);
    }

    static PieceState grown(double moisturePercent, double grainC, double growthRatio) {
        PieceState raw = PieceState.rawGrain(5, Moisture.ofWetBasisPercent(12), 0, 3, grainC);
        double waterKg = 4.4 * Moisture.ofWetBasisPercent(moisturePercent).dryBasisRatio();
        return raw.withMass(new GrainMass(4.4, 4.4, waterKg))
                .withSteep(new SteepState(0.65, 0.15, 22, 3, 1))
                .withGrowth(new GrowthState(growthRatio, 0));
    }
}
