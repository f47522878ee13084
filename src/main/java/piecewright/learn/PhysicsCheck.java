package piecewright.learn;

import java.time.Duration;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import piecewright.journal.Report.Weighed;
import piecewright.learn.Verdict.Cause;

/** Which observations of a batch cannot be, whatever lot and kit are like. Of two that exclude each other, the stranger. */
final class PhysicsCheck {
    /** Judgement: how far the dry matter foretold may be off. */
    private static final double DRY_MATTER_DOUBT_FRACTION = 0.08;
    /** Judgement: a figure in the other unit is recognised when it then fits so well. */
    private static final double FITS_FRACTION = 0.08;
    /** Judgement: the same for temperatures, K. */
    private static final double FITS_K = 6;
    /** Judgement: below this living grain is frozen. */
    private static final double COLDEST_C = -5;
    /** Judgement: above this no living pile heats itself; reports end at 60 °C (storage texts). */
    private static final double HOTTEST_LIVING_C = 65;
    /** Judgement: nothing in a malting is hotter. */
    private static final double HOTTEST_C = 260;
    /** Judgement: fastest change of a pile left alone, three times the fastest heating foretold, K/h. */
    private static final double FASTEST_K_PER_HOUR = 8;
    /** Judgement: difference between two spots of a pile, K. */
    private static final double SPOTS_K = 6;
    /** Judgement: error of two counts, share of the corn. */
    private static final double SHRINKING_FRACTION = 0.25;
    /** Source: international avoirdupois pound, kg. */
    private static final double POUND_KG = 0.45359237;

    private final Rerun batch;
    private final Rerun.Run foretold;
    private final double[] figures;
    private final List<Observation> observations;
    private final @Nullable Cause[] causes;

    PhysicsCheck(Rerun batch, Rerun.Run foretold) {
        this.batch = batch;
        this.foretold = foretold;
        this.figures = foretold.figures();
        this.observations = batch.observations();
        this.causes = new Cause[observations.size()];
    }

    /** For each observation why it cannot be; empty where it can. */
    List<Optional<Cause>> causes() {
        for (int i = 0; i < causes.length; i++) alone(i);
        for (int i = 0; i < causes.length; i++) {
            for (int j = 0; j < causes.length; j++) if (comesBefore(i, j)) together(i, j);
        }
        List<Optional<Cause>> found = new ArrayList<>();
        Arrays.stream(causes).forEach(cause -> found.add(Optional.ofNullable(cause)));
        return found;
    }

    private void alone(int i) {
        Observation observation = observations.get(i);
        switch (observation.figure()) {
            case WEIGHT -> weightAlone(i, observation.value());
            case GRAIN_TEMPERATURE, AIR_TEMPERATURE -> temperatureAlone(i, observation.value());
            default -> {}
        }
    }

    private void weightAlone(int i, double kg) {
        double dryKg = foretold.state(i).mass().dryMatterKg();
        boolean misfits = Math.abs(kg / figures[i] - 1) > 4 * FITS_FRACTION;
        if (misfits && (fits(kg * POUND_KG, figures[i]) || fits(kg / POUND_KG, figures[i]))) {
            causes[i] = Cause.OTHER_UNIT;
        } else if (kg < dryKg * (1 - DRY_MATTER_DOUBT_FRACTION)) {
            causes[i] = Cause.BELOW_DRY_MATTER;
        }
    }

    private static boolean fits(double kg, double expectedKg) {
        return Math.abs(kg / expectedKg - 1) < FITS_FRACTION;
    }

    private void temperatureAlone(int i, double readC) {
        boolean heated = stretch(i).condition().heat().isPresent();
        double hottestC = heated ? HOTTEST_C : HOTTEST_LIVING_C;
        boolean misfits = Math.abs(readC - figures[i]) > 3 * FITS_K;
        boolean fahrenheit = Math.abs((readC - 32) / 1.8 - figures[i]) < FITS_K;
        boolean celsius = Math.abs(readC * 1.8 + 32 - figures[i]) < FITS_K;
        if (misfits && (fahrenheit || celsius)) {
            causes[i] = Cause.OTHER_UNIT;
        } else if (readC < COLDEST_C || readC > hottestC) {
            causes[i] = Cause.IMPOSSIBLE_TEMPERATURE;
        }
    }

    /** Judges two observations, the first made before the second, neither refused by itself. */
    private void together(int first, int second) {
        double change =
                observations.get(second).value() - observations.get(first).value();
        switch (observations.get(first).figure()) {
            case WEIGHT -> {
                boolean gained = change
                        > Weighed.FORBIDDEN_JUMP_FRACTION
                                * observations.get(first).value();
                if (gained && noWaterBetween(first, second)) weightGained(first, second);
            }
            case GRAIN_TEMPERATURE -> {
                if (jumped(first, second, Math.abs(change))) refuse(stranger(first, second), Cause.JUMP);
            }
            case ACROSPIRE -> {
                if (change < -SHRINKING_FRACTION) refuse(stranger(first, second), Cause.SHRUNK);
            }
            default -> {}
        }
    }

    private void weightGained(int first, int second) {
        int stranger = stranger(first, second);
        boolean heavy = observations.get(stranger).value() > figures[stranger];
        refuse(stranger, heavy ? Cause.VESSEL_NOT_TARED : Cause.BELOW_DRY_MATTER);
    }

    private boolean noWaterBetween(int first, int second) {
        int from = batch.stretchOf(observations.get(first).at());
        int until = batch.stretchOf(observations.get(second).at());
        if (from == until) return batch.stretches().get(from).condition().water() == Stretch.Water.NONE;
        for (int k = from + 1; k <= until; k++) {
            if (batch.stretches().get(k).condition().water() == Stretch.Water.GIVEN) return false;
        }
        return true;
    }

    private boolean jumped(int first, int second, double changeK) {
        boolean leftAlone = batch.stretchOf(observations.get(first).at())
                == batch.stretchOf(observations.get(second).at());
        boolean heated = stretch(first).condition().heat().isPresent();
        Duration between = Duration.between(
                observations.get(first).at(), observations.get(second).at());
        double mostK = SPOTS_K + FASTEST_K_PER_HOUR * between.toMinutes() / 60.0;
        return leftAlone && !heated && changeK > mostK;
    }

    private boolean comesBefore(int i, int j) {
        Observation first = observations.get(i);
        Observation second = observations.get(j);
        return i != j
                && causes[i] == null
                && causes[j] == null
                && first.figure() == second.figure()
                && first.at().isBefore(second.at());
    }

    /** The one further from what was foretold. */
    private int stranger(int one, int other) {
        return strangeness(one) >= strangeness(other) ? one : other;
    }

    private double strangeness(int i) {
        Observation observation = observations.get(i);
        return Math.abs(observation.value() - figures[i]) / observation.sd();
    }

    private void refuse(int i, Cause cause) {
        causes[i] = cause;
    }

    private Stretch stretch(int i) {
        return batch.stretches().get(batch.stretchOf(observations.get(i).at()));
    }
}
