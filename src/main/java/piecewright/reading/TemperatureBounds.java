package piecewright.reading;

import java.util.List;
import java.util.Optional;
import piecewright.journal.Report.TemperatureRead;
import piecewright.journal.Spot;
import piecewright.plan.ActKind;
import piecewright.reading.Candidate.Doubt;
import piecewright.reading.Standing.Stage;
import piecewright.text.QuantityFormat;

/** How warm a place can be, and how warm it is likely to be. */
final class TemperatureBounds {
    private final Scene scene;
    private final QuantityFormat quantities;

    TemperatureBounds(Scene scene) {
        this.scene = scene;
        this.quantities = new QuantityFormat(scene.units());
    }

    /** Judgement, all of them: possible from least to most, likely from low to high, °C. */
    private record Range(double leastC, double lowC, double highC, double mostC) {}

    Optional<Doubt> read(TemperatureRead read, Stage stage) throws NotSoException {
        return judged(read.readC(), range(read.spot(), stage));
    }

    Optional<Doubt> heat(double airOnC, Stage stage) throws NotSoException {
        return judged(airOnC, heats(stage));
    }

    /** Whether a figure would be likely there. */
    boolean likely(double readC, Optional<Spot> spot, Stage stage) {
        Range range = spot.isPresent() ? range(spot.get(), stage) : heats(stage);
        return readC >= range.lowC() && readC <= range.highC();
    }

    boolean possible(double readC, Optional<Spot> spot, Stage stage) {
        Range range = spot.isPresent() ? range(spot.get(), stage) : heats(stage);
        return readC >= range.leastC() && readC <= range.mostC();
    }

    private Optional<Doubt> judged(double readC, Range range) throws NotSoException {
        if (readC < range.leastC() || readC > range.mostC()) {
            throw new NotSoException(
                    "line.no-such-heat",
                    () -> List.of(
                            quantities.temperature(readC),
                            quantities.temperature(range.leastC()),
                            quantities.temperature(range.mostC())));
        }
        boolean likely = readC >= range.lowC() && readC <= range.highC();
        return likely ? Optional.empty() : Optional.of(Doubt.of("ask.unlikely-heat", quantities.temperature(readC)));
    }

    private Range range(Spot spot, Stage stage) {
        double coldC = scene.limits().coldestC();
        double kilnC = scene.limits().kilnMostC().orElse(120);
        return switch (spot) {
            case WATER -> new Range(-0.5, 0.5, 32, 45);
            case AIR -> new Range(-30, -30, 42, 50);
            case AIR_ON, AIR_OFF -> new Range(-10, 5, kilnC + 10, 250);
            default ->
                switch (stage) {
                    case KILN -> new Range(coldC - 12, 12, kilnC + 5, 150);
                    case OFF -> new Range(-20, -5, kilnC + 5, 150);
                    case OVEN -> new Range(0, 20, 240, 260);
                    case COUCH -> new Range(coldC - 12, coldC - 2, 62, 68);
                    default ->
                        new Range(
                                Math.min(-2, coldC - 5),
                                Math.min(1, coldC - 3),
                                scene.plans(ActKind.PACK) ? 55 : 38,
                                65);
                };
        };
    }

    private Range heats(Stage stage) {
        double mostC = stage == Stage.OFF || stage == Stage.OVEN
                ? scene.limits().ovenMostC().orElse(260)
                : scene.limits().kilnMostC().orElse(120);
        return new Range(0, Math.max(15, scene.limits().coldestC() + 3), mostC + 2, 300);
    }
}
