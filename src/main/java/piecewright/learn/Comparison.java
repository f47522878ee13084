package piecewright.learn;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import piecewright.belief.Interval;
import piecewright.process.LogNormal;

/**
 * Two finished batches side by side: in what they differ, and by how much each outcome differs.
 *
 * @param inputs those that differ
 * @param outcomes figures both batches have
 */
public record Comparison(List<InputDifference> inputs, List<OutcomeDifference> outcomes) {
    public Comparison {
        inputs = List.copyOf(inputs);
        outcomes = List.copyOf(outcomes);
    }

    /**
     * What one batch was made from and what became of it.
     *
     * @param inputs by name, in words: style, lot, hours of a soak, temperature of the cure
     */
    public record Account(List<Input> inputs, List<Outcome> outcomes) {
        public Account {
            inputs = List.copyOf(inputs);
            outcomes = List.copyOf(outcomes);
        }
    }

    /** One thing that went in, in words. */
    public record Input(String name, String value) {
        public Input {
            Objects.requireNonNull(name);
            Objects.requireNonNull(value);
        }
    }

    /** One thing that came out; its error on the axis of the figure, above 0. */
    public record Outcome(String name, Observation found) {
        public Outcome {
            Objects.requireNonNull(name);
            Objects.requireNonNull(found);
        }
    }

    /** An input that was not the same; empty where one batch has none such. */
    public record InputDifference(String name, Optional<String> first, Optional<String> second) {}

    /**
     * How an outcome differs.
     *
     * @param change second less first, P10 to P90; for colours the second as a multiple of the first
     * @param byChanceFraction how often two equal batches would be found as far apart
     */
    public record OutcomeDifference(String name, Figure figure, Interval change, double byChanceFraction) {
        /** Judgement: what chance does less than once in twenty is more than noise. */
        public static final double NOISE_FRACTION = 0.05;

        /** Whether reading errors alone hardly explain it. */
        public boolean isMoreThanNoise() {
            return byChanceFraction < NOISE_FRACTION;
        }
    }

    /** Whether exactly one input differs, so that it alone may be the reason. */
    public boolean differInOneThing() {
        return inputs.size() == 1;
    }

    /** Compares two batches; the order says which change is up. */
    public static Comparison of(Account first, Account second) {
        List<InputDifference> inputs = new ArrayList<>();
        for (Input input : first.inputs()) {
            Optional<String> other = value(second, input.name());
            if (!other.equals(Optional.of(input.value()))) {
                inputs.add(new InputDifference(input.name(), Optional.of(input.value()), other));
            }
        }
        for (Input input : second.inputs()) {
            if (value(first, input.name()).isEmpty()) {
                inputs.add(new InputDifference(input.name(), Optional.empty(), Optional.of(input.value())));
            }
        }
        List<OutcomeDifference> outcomes = new ArrayList<>();
        for (Outcome outcome : first.outcomes()) {
            second.outcomes().stream()
                    .filter(other -> other.name().equals(outcome.name())
                            && other.found().figure() == outcome.found().figure())
                    .findFirst()
                    .ifPresent(other -> outcomes.add(difference(outcome, other)));
        }
        return new Comparison(inputs, outcomes);
    }

    private static Optional<String> value(Account account, String name) {
        return account.inputs().stream()
                .filter(input -> input.name().equals(name))
                .map(Input::value)
                .findFirst();
    }

    private static OutcomeDifference difference(Outcome first, Outcome second) {
        boolean ratio = first.found().figure() == Figure.COLOUR;
        double change = onAxis(second, ratio) - onAxis(first, ratio);
        double sd = Math.hypot(first.found().sd(), second.found().sd());
        double reach = Interval.TENTH_SD * sd;
        Interval interval = ratio
                ? new Interval(Math.exp(change - reach), Math.exp(change), Math.exp(change + reach))
                : new Interval(change - reach, change, change + reach);
        return new OutcomeDifference(
                first.name(), first.found().figure(), interval, 2 * LogNormal.normalShareBelow(-Math.abs(change) / sd));
    }

    private static double onAxis(Outcome outcome, boolean ratio) {
        return ratio ? Math.log(outcome.found().value()) : outcome.found().value();
    }
}
