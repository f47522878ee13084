package piecewright.text;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import piecewright.learn.Comparison.Input;
import piecewright.plan.PlanRequest;
import piecewright.replan.Finished;
import piecewright.replan.Finished.Part;
import piecewright.replan.Finished.Stretch;

/**
 * What went into a batch, in words coarse enough that two batches done alike read alike: soaks and cures to the hour,
 * days of growth to the half day, grain to the half kilogram.
 */
public final class BatchInputs {
    private static final double ALIKE_KG = 0.5;

    private final QuantityFormat quantities;

    public BatchInputs(DisplayUnits units) {
        this.quantities = new QuantityFormat(units);
    }

    public List<Input> of(PlanRequest request, Finished finished) {
        List<Input> inputs = new ArrayList<>();
        inputs.add(new Input(name("style"), request.style().title()));
        inputs.add(new Input(name("lot"), request.lot().name()));
        inputs.add(new Input(name("house"), request.house().name()));
        double grainKg = ALIKE_KG * Math.max(1, Math.round(finished.outcome().grainKg() / ALIKE_KG));
        inputs.add(new Input(name("grain"), quantities.roughMass(grainKg)));
        for (Part part : Part.values()) {
            String lasted = finished.stretches().stream()
                    .filter(stretch -> stretch.part() == part)
                    .map(this::lasted)
                    .collect(Collectors.joining(", "));
            if (!lasted.isEmpty()) inputs.add(new Input(Phrases.say("part." + Phrases.key(part)), lasted));
        }
        return inputs;
    }

    private static String name(String key) {
        return Phrases.say("compare.input." + key);
    }

    private String lasted(Stretch stretch) {
        long step = Duration.ofHours(alikeHours(stretch.part())).toMinutes();
        long steps = Math.max(1, Math.round((double) stretch.lasted().toMinutes() / step));
        return quantities.time(Duration.ofMinutes(steps * step));
    }

    /** So many hours more or less nobody means by it. */
    private static int alikeHours(Part part) {
        return switch (part) {
            case SOAK, CURE -> 1;
            case GROWTH -> 12;
            case WITHER, COUCH, DRYING -> 6;
        };
    }
}
