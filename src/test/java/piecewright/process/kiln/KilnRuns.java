package piecewright.process.kiln;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import piecewright.house.Heater.HotAir;
import piecewright.process.CouchState;
import piecewright.process.PieceState;
import piecewright.process.Surroundings;
import piecewright.quantity.Moisture;
import piecewright.quantity.TemperatureRange;

/** Pieces and ladders the tests of this package kiln; invented, fixed. */
final class KilnRuns {
    static final Instant ORIGIN = Instant.parse("2031-03-01T06:00:00Z");

    private KilnRuns() {}

    static HotAir heater(double airFlowM3PerHour) {
        return new HotAir(new TemperatureRange(20, 120), airFlowM3PerHour, false, 2000, 2);
    }

    /** 4.5 kg of barley grown to 3.76 kg of dry matter, near enough. */
    static PieceState green(double moisturePercent, double startEbc) {
        return PieceState.rawGrain(
                3.76 / (1 - moisturePercent / 100), Moisture.ofWetBasisPercent(moisturePercent), 1, startEbc, 16);
    }

    static PieceState couched(PieceState green, double indexHours) {
        return green.withCouch(new CouchState(0.4, indexHours));
    }

    static Surroundings steadyRoom() {
        return Surroundings.constant(ORIGIN, 20, 0.5);
    }

    /** A room that swings by 5 K about 15 °C, tabulated as surroundings are. */
    static Surroundings swingingRoom() {
        double[] airC = new double[4 * 24 * Surroundings.STEPS_PER_HOUR];
        for (int i = 0; i < airC.length; i++) {
            airC[i] = 15 + 5 * Math.sin(2 * Math.PI * i / (24.0 * Surroundings.STEPS_PER_HOUR));
        }
        return Surroundings.of(ORIGIN, airC, 0.6, java.util.Optional.empty());
    }

    /** Kilns through rungs, each until its moisture or its hours, whichever is first; the course by steps. */
    static List<Leg> legs(PieceState start, double substrateRatio, HotAir heater, Surroundings room, double[][] rungs) {
        List<Leg> legs = new ArrayList<>();
        PieceState now = start;
        double atHours = 0;
        for (double[] rung : rungs) {
            KilnStage stage = new KilnStage(KilnParameters.defaults(), rung[0], heater, room, substrateRatio);
            double fromHours = atHours;
            PieceState from = now;
            while (now.mass().moisture().wetBasisPercent() > rung[1] && atHours - fromHours < rung[2] - 1e-9) {
                double stepHours = Math.min(piecewright.process.Stage.STEP_HOURS, fromHours + rung[2] - atHours);
                now = stage.step(now, atHours, stepHours);
                atHours += stepHours;
            }
            legs.add(new Leg(stage, from, fromHours, now, atHours));
        }
        return legs;
    }

    static PieceState last(List<Leg> legs) {
        return legs.get(legs.size() - 1).end();
    }

    /** One rung as it was kilned. */
    record Leg(KilnStage stage, PieceState start, double fromHours, PieceState end, double untilHours) {}
}
