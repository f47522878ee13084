package piecewright.plan;

import java.time.Duration;
import java.util.List;
import java.util.Objects;
import java.util.OptionalDouble;

/**
 * What is done inside an attended block, minute by minute: whoever begins it stays until its last step.
 *
 * @param loadKg malt that goes in at once, kg
 * @param depthCm depth of its layer, cm
 * @param lag by how much the middle of the layer trails the oven
 * @param ovenErrorK by how much the oven may be off its dial, one standard deviation, K
 * @param steps in time order
 */
public record InnerSchedule(double loadKg, double depthCm, Duration lag, double ovenErrorK, List<InnerStep> steps) {
    public InnerSchedule {
        Objects.requireNonNull(lag);
        steps = List.copyOf(steps);
        if (steps.isEmpty()) throw new IllegalArgumentException("steps must not be empty");
    }

    /** How long the block lasts. */
    public Duration length() {
        return steps.get(steps.size() - 1).at();
    }

    /** The step of that kind that comes first; throws NoSuchElementException when there is none. */
    public InnerStep first(Kind kind) {
        return steps.stream().filter(step -> step.kind() == kind).findFirst().orElseThrow();
    }

    /** What a step is about. */
    public enum Kind {
        /** Spread the layer, heat the empty oven. */
        PREPARE,
        /** The malt goes in. */
        GOES_IN,
        /** Another dial setting. */
        SET,
        /** Stir the layer. */
        STIR,
        /** Pull a spoonful, crush it, compare. */
        SAMPLE,
        /** The planned end, or sooner when the sample says so: out, and cool at once. */
        STOP,
        /** Another spoonful, where it was too pale at the planned end. */
        SAMPLE_AGAIN,
        /** Out by now whatever the sample says. */
        LATEST,
        /** The malt is cool, the block over. */
        OVER;

        /** The word used in files: lower case with hyphens. */
        public String key() {
            return name().toLowerCase(java.util.Locale.ROOT).replace('_', '-');
        }
    }

    /**
     * One step.
     *
     * @param at since the block began, 0 or more, whole seconds
     * @param ovenC true temperature the oven is to have from now on; empty where nothing is set
     * @param dialC what to set on the dial for it
     * @param expect the malt by then
     */
    public record InnerStep(Duration at, Kind kind, OptionalDouble ovenC, OptionalDouble dialC, Inside expect) {
        public InnerStep {
            if (at.isNegative()) throw new IllegalArgumentException("at must be 0 or more: " + at);
            Objects.requireNonNull(kind);
            Objects.requireNonNull(ovenC);
            Objects.requireNonNull(dialC);
            Objects.requireNonNull(expect);
        }
    }

    /**
     * What is expected of the malt in the middle of the layer.
     *
     * @param moistureFraction wet basis
     */
    public record Inside(double grainC, double moistureFraction, double colourEbc) {}
}
