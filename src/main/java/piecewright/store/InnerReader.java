package piecewright.store;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import piecewright.plan.InnerSchedule;
import piecewright.plan.InnerSchedule.InnerStep;
import piecewright.plan.InnerSchedule.Inside;

/** Reads the minutes of an attended block back from the document of {@link PlanJson}. */
final class InnerReader {
    private InnerReader() {}

    static InnerSchedule read(JsonBlock inner) throws StoreException {
        double loadKg = inner.number("loadKg", 0, 10_000);
        double depthCm = inner.number("depthCm", 0, 1000);
        Duration lag = Duration.ofSeconds(Math.round(60 * inner.number("lagMinutes", 0, 10_000)));
        double ovenErrorK = inner.number("ovenErrorK", 0, 500);
        List<InnerStep> steps = new ArrayList<>();
        for (JsonBlock step : inner.blocks("steps")) steps.add(step(step));
        return inner.make(() -> new InnerSchedule(loadKg, depthCm, lag, ovenErrorK, steps));
    }

    private static InnerStep step(JsonBlock step) throws StoreException {
        JsonBlock expect = step.block("expect");
        Inside inside = new Inside(
                expect.number("grainC", -50, 500),
                expect.number("moistureWetBasisFraction", 0, 1),
                expect.number("colourEbc", 0, 10_000));
        int seconds = step.has("second") ? step.whole("second", 0, 59) : 0;
        return new InnerStep(
                Duration.ofMinutes(step.whole("minute", 0, 7 * 24 * 60)).plusSeconds(seconds),
                AgendaReader.word(step, "kind", InnerSchedule.Kind.values(), InnerSchedule.Kind::key),
                step.optionalNumber("ovenC", -50, 500),
                step.optionalNumber("dialC", -50, 500),
                inside);
    }
}
