package piecewright.oracle;

import java.time.Instant;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import tools.jackson.databind.JsonNode;

/** Reads a plan as it is printed for other programs. */
public final class PlanText {
    private PlanText() {}

    /** @param plan what stands under "plan" */
    public static Told told(JsonNode plan) {
        List<Told.Step> steps = new ArrayList<>();
        plan.get("acts").forEach(act -> steps.add(step(act)));
        List<Told.Stretch> phases = new ArrayList<>();
        plan.get("phases")
                .forEach(phase -> phases.add(new Told.Stretch(
                        phase.get("id").stringValue(),
                        phase.get("kind").stringValue(),
                        moment(phase, "from"),
                        moment(phase, "until"))));
        return new Told(
                moment(plan, "readyAt"),
                plan.get("rawGrainKg").doubleValue(),
                plan.get("finishedMaltKg").doubleValue(),
                plan.get("scaleMaltKg").doubleValue(),
                steps,
                phases);
    }

    private static Told.Step step(JsonNode act) {
        OptionalDouble hottest = OptionalDouble.empty();
        for (JsonNode inner : act.at("/inner/steps")) {
            if (inner.has("ovenC"))
                hottest = OptionalDouble.of(
                        Math.max(hottest.orElse(0), inner.get("ovenC").doubleValue()));
        }
        JsonNode expect = act.get("expect");
        return new Told.Step(
                act.get("id").stringValue(),
                act.get("kind").stringValue(),
                moment(act, "startsAt"),
                act.get("minutes").intValue(),
                act.path("place").stringValue(""),
                number(act, "setC"),
                hottest,
                new Told.Found(
                        expect.get("massKg").doubleValue(),
                        expect.get("moistureWetBasisFraction").doubleValue(),
                        expect.get("grainC").doubleValue(),
                        number(expect, "acrospireFraction")));
    }

    private static OptionalDouble number(JsonNode node, String key) {
        return node.has(key) ? OptionalDouble.of(node.get(key).doubleValue()) : OptionalDouble.empty();
    }

    private static Instant moment(JsonNode node, String key) {
        return OffsetDateTime.parse(node.get(key).stringValue()).toInstant();
    }
}
