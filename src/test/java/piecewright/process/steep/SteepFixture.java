package piecewright.process.steep;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import piecewright.grain.GerminationCount;
import piecewright.grain.GrainKind;
import piecewright.grain.GrainLot;
import piecewright.grain.LotMoisture;
import piecewright.grain.LotTraits;
import piecewright.grain.Treatment;
import piecewright.process.Metabolism;
import piecewright.process.MetabolismParameters;
import piecewright.process.PieceState;
import piecewright.process.Surroundings;
import piecewright.quantity.Moisture;

/** Lots, models and schedules that several steep tests use. */
final class SteepFixture {
    static final Instant ORIGIN = Instant.parse("2031-02-01T08:00:00Z");

    private SteepFixture() {}

    /** A model without leaching. */
    static SteepModel model(double rateRatio, double chitGainRatio) {
        SteepParameters parameters = SteepParameters.defaults().withLeaching(SteepParameters.Leaching.none());
        return new SteepModel(
                rateRatio, 0, parameters.withUptake(parameters.uptake().withChitGainRatio(chitGainRatio)));
    }

    /** Corns that do not breathe and count as chitted (χ = .85) after so many hours at 15 °C. */
    static Metabolism chittedAfter(double hoursAt15C) {
        MetabolismParameters defaults = MetabolismParameters.defaults();
        return new Metabolism(
                0,
                1,
                new MetabolismParameters(
                        16.5 * hoursAt15C / SteepModel.CHITTED_AT_RATIO,
                        defaults.chitSpreadRatio(),
                        defaults.growthSumKelvinDays(),
                        defaults.heatAt20WPerKg(),
                        defaults.heatQ10Ratio(),
                        defaults.steepShareRatio(),
                        defaults.rootletQ10Ratio()));
    }

    static PieceState raw(double moisturePercent, double grainC) {
        return PieceState.rawGrain(5, Moisture.ofWetBasisPercent(moisturePercent), 0, 3, grainC);
    }

    static Surroundings air(double airC) {
        return Surroundings.constant(ORIGIN, airC, 0.75);
    }

    /** Drained moisture of a steep state alone, %: film included, dry matter as steeped. */
    static double drainedPercent(PieceState state) {
        double ratio = state.steep().coreRatio() + state.steep().outerRatio();
        return 100 * ratio / (1 + ratio);
    }

    /** Moisture of the corns without film, %. */
    static double kernelPercent(PieceState state) {
        double ratio =
                state.steep().coreRatio() + Math.min(state.steep().outerRatio(), SteepParameters.Uptake.BURST_RATIO);
        return 100 * ratio / (1 + ratio);
    }

    /** Wet and dry hours in turn, everything at one temperature; the states at the end of each. */
    static List<PieceState> steeped(SteepModel model, Metabolism metabolism, double grainC, double... hours) {
        List<PieceState> states = new java.util.ArrayList<>();
        PieceState state = raw(12, grainC);
        double atHours = 0;
        for (int i = 0; i < hours.length; i++) {
            var stage = i % 2 == 0
                    ? new Immersion(model, metabolism, air(grainC), Standing.BUCKET, new Bath(grainC, 8))
                    : new AirRest(model, metabolism, air(grainC), Standing.BUCKET);
            state = stage.run(state, atHours, atHours + hours[i]);
            atHours += hours[i];
            states.add(state);
        }
        return states;
    }

    static GrainLot lot(GrainKind kind, OptionalDouble thousandCornG, LotTraits traits, List<GerminationCount> dishes) {
        return new GrainLot(
                "test",
                kind,
                new LotMoisture(Moisture.ofWetBasisPercent(12), 0.003, true),
                dishes,
                new GrainLot.LotSize(thousandCornG, OptionalDouble.empty(), Optional.empty()),
                Treatment.UNTREATED,
                traits);
    }
}
