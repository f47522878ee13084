package piecewright.learn;

import java.time.Duration;
import java.time.Instant;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import java.util.stream.IntStream;
import piecewright.belief.Trait;
import piecewright.belief.Unknown;
import piecewright.belief.Values;
import piecewright.process.PieceState;
import piecewright.process.Stage;

/**
 * A batch run again as it really was, through the reference stages, to foretell what was observed of it. Stretches
 * before the first difference between two sets of values are not run twice.
 *
 * @param origin zero of the stages' hours
 * @param stretches in time order, each beginning where the one before ends
 */
public record Rerun(Instant origin, Raw raw, List<Stretch> stretches, List<Observation> observations)
        implements Prediction {
    /** Judgement: three times the reference's step; held in a test against it, and three times as quick. */
    static final double STEP_HOURS = 3 * Stage.STEP_HOURS;

    public Rerun {
        Objects.requireNonNull(origin);
        Objects.requireNonNull(raw);
        stretches = List.copyOf(stretches);
        observations = List.copyOf(observations);
        if (stretches.isEmpty()) throw new IllegalArgumentException("stretches must not be empty");
        for (int i = 1; i < stretches.size(); i++) {
            if (!stretches
                    .get(i)
                    .span()
                    .from()
                    .equals(stretches.get(i - 1).span().until())) {
                throw new IllegalArgumentException(
                        "stretches must join: " + stretches.get(i).span());
            }
        }
    }

    /** The piece before its first act, and the unknowns that change it. */
    public record Raw(Start start, Set<Unknown> moves) {
        public Raw {
            Objects.requireNonNull(start);
            moves = Set.copyOf(moves);
        }
    }

    /** The piece before its first act if the unknowns have these values. */
    public interface Start {
        PieceState state(Values values);
    }

    @Override
    public Run at(Values values) {
        PieceState[] starts = new PieceState[stretches.size() + 1];
        starts[0] = raw.start().state(values);
        return new Run(values, 0, starts, new PieceState[observations.size()]);
    }

    /** One run: the piece at the start of each stretch and at each observation. */
    public final class Run implements Seen {
        private final Values values;
        private final PieceState[] starts;
        private final PieceState[] seen;

        private Run(Values values, int from, PieceState[] starts, PieceState[] seen) {
            this.values = values;
            this.starts = starts;
            this.seen = seen;
            for (int k = from; k <= lastObserved(); k++) pass(k);
        }

        @Override
        public Run with(Values other) {
            PieceState[] otherStarts = starts.clone();
            int from = 0;
            if (values.sameIn(other, raw.moves())) {
                while (from <= lastObserved()
                        && values.sameIn(other, stretches.get(from).moves())) from++;
            } else {
                otherStarts[0] = raw.start().state(other);
            }
            return new Run(other, from, otherStarts, seen.clone());
        }

        @Override
        public double[] figures() {
            double[] figures = new double[seen.length];
            for (int i = 0; i < figures.length; i++) figures[i] = figure(observations.get(i), seen[i]);
            return figures;
        }

        /** The piece when the observation of that index was made. */
        public PieceState state(int observation) {
            return seen[observation];
        }

        /** The piece at the end of the last stretch. */
        public PieceState last() {
            int from = Math.max(0, lastObserved());
            PieceState now = starts[from];
            for (Stretch stretch : stretches.subList(from, stretches.size())) {
                Stage stage = stretch.passing().stage(values);
                PieceState begun = stage.entered(stretch.deed().done(values, now));
                now = run(
                        stage,
                        begun,
                        hours(stretch.span().from()),
                        hours(stretch.span().until()));
            }
            return now;
        }

        private void pass(int k) {
            Stretch stretch = stretches.get(k);
            Stage stage = stretch.passing().stage(values);
            double atHours = hours(stretch.span().from());
            int[] here = observed(k);
            int next = 0;
            for (; next < here.length && hoursOf(here[next]) <= atHours; next++) seen[here[next]] = starts[k];
            PieceState now = stage.entered(stretch.deed().done(values, starts[k]));
            for (; next < here.length; next++) {
                now = run(stage, now, atHours, hoursOf(here[next]));
                atHours = hoursOf(here[next]);
                seen[here[next]] = now;
            }
            if (k < lastObserved())
                starts[k + 1] = run(stage, now, atHours, hours(stretch.span().until()));
        }

        private static PieceState run(Stage stage, PieceState from, double fromHours, double untilHours) {
            PieceState now = from;
            double atHours = fromHours;
            while (untilHours - atHours > 1e-9) {
                double stepHours = Math.min(STEP_HOURS, untilHours - atHours);
                now = stage.step(now, atHours, stepHours);
                atHours += stepHours;
            }
            return now;
        }

        private double figure(Observation observation, PieceState state) {
            return switch (observation.figure()) {
                case WEIGHT -> state.mass().totalKg();
                case MOISTURE -> state.mass().moisture().wetBasisFraction();
                case GRAIN_TEMPERATURE -> state.grainC();
                case ACROSPIRE -> state.growth().growthRatio();
                case COLOUR -> state.kiln().colourEbc();
                case AIR_TEMPERATURE -> airC(stretches.get(stretchOf(observation.at())), state);
            };
        }

        private double airC(Stretch stretch, PieceState state) {
            return stretch.condition()
                    .heat()
                    .map(dial -> dial.dialC() + values.of(Trait.DIAL_OFFSET, dial.heater(), 0))
                    .orElse(state.grainC());
        }
    }

    /** Index of the last stretch that anything was observed in; −1 when nothing was. */
    private int lastObserved() {
        return observations.stream()
                .mapToInt(observation -> stretchOf(observation.at()))
                .max()
                .orElse(-1);
    }

    /** Indices of the observations of a stretch, in time order. */
    private int[] observed(int k) {
        return IntStream.range(0, observations.size())
                .filter(i -> stretchOf(observations.get(i).at()) == k)
                .boxed()
                .sorted(Comparator.comparing(i -> observations.get(i).at()))
                .mapToInt(Integer::intValue)
                .toArray();
    }

    private double hoursOf(int observation) {
        return hours(observations.get(observation).at());
    }

    /** The stretch an observation falls into; at a joint the one that ends there, so weights are those before the act. */
    int stretchOf(Instant at) {
        for (int k = 0; k < stretches.size(); k++) {
            if (!at.isAfter(stretches.get(k).span().until())) return k;
        }
        return stretches.size() - 1;
    }

    private double hours(Instant at) {
        return Duration.between(origin, at).toMillis() / 3_600_000.0;
    }
}
