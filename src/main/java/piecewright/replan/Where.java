package piecewright.replan;

import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;
import piecewright.belief.Interval;
import piecewright.history.Account;
import piecewright.plan.Act;
import piecewright.plan.Plan;
import piecewright.plan.Timetable.Visit;
import piecewright.process.PieceState;

/**
 * How a piece stands.
 *
 * @param plan the acts done where they were, the rest as it stands in the plan, with what is expected now
 * @param state the piece now; raw grain while it is dry
 * @param account what the journal says
 */
public record Where(Instant now, Plan plan, PieceState state, Water water, Next next, Help help, Account account) {
    public Where {
        Objects.requireNonNull(now);
        Objects.requireNonNull(plan);
        Objects.requireNonNull(state);
        Objects.requireNonNull(water);
        Objects.requireNonNull(next);
        Objects.requireNonNull(help);
        Objects.requireNonNull(account);
    }

    /** How wet the piece is. */
    public sealed interface Water {
        /**
         * @param moistureFraction drained, wet basis
         * @param sdFraction standard deviation of what a scale would tell now, wet basis
         * @param weighedAt when a weighing or a sample last told
         */
        record Known(double moistureFraction, double sdFraction, Optional<Instant> weighedAt) implements Water {
            /** Eight weighings in ten lie so near to the moisture told, wet basis. */
            public double reachFraction() {
                return Interval.TENTH_SD * sdFraction;
            }
        }

        /** So dry that a weight cannot tell: at or below this, wet basis; only constant weight can confirm it. */
        record AtOrBelow(double moistureFraction) implements Water {}
    }

    /**
     * What comes next.
     *
     * @param act the first act not done, with what to find as if it came now if it is overdue; empty when all is done
     * @param in how long until its planned time; negative when it is overdue
     * @param overdue acts whose planned time has passed, in time order
     */
    public record Next(Optional<Act> act, Duration in, List<Visit> overdue) {
        public Next {
            overdue = List.copyOf(overdue);
        }
    }

    /**
     * Figures that help at the bed.
     *
     * @param sprinkleKg water that brings the bed back to what its style keeps, kg
     * @param breaksIn until the bed in the kiln lies loose, by the expected kiln
     * @param couch what a hot couch will do
     * @param hotBed how hot the bed will get, where that spoils it
     * @param wetMalt malt off the kiln that is too wet to keep
     */
    public record Help(
            OptionalDouble sprinkleKg,
            Optional<Duration> breaksIn,
            Optional<CouchForecast> couch,
            Optional<HotBed> hotBed,
            Optional<WetMalt> wetMalt) {
        static Help none() {
            return new Help(
                    OptionalDouble.empty(), Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty());
        }

        static Help sprinkle(double waterKg) {
            return new Help(
                    OptionalDouble.of(waterKg), Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty());
        }

        Help withBreaks(Optional<Duration> changed) {
            return new Help(sprinkleKg, changed, couch, hotBed, wetMalt);
        }

        Help withCouch(Optional<CouchForecast> changed) {
            return new Help(sprinkleKg, breaksIn, changed, hotBed, wetMalt);
        }

        Help withHotBed(Optional<HotBed> changed) {
            return new Help(sprinkleKg, breaksIn, couch, changed, wetMalt);
        }

        Help withWetMalt(Optional<WetMalt> changed) {
            return new Help(sprinkleKg, breaksIn, couch, hotBed, changed);
        }
    }
}
