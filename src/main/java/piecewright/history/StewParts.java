package piecewright.history;

import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import piecewright.plan.ActKind;
import piecewright.plan.StewBlock;
import piecewright.plan.Timetable.Visit;
import piecewright.style.MaltStyle;
import piecewright.style.StewSchedule;

/**
 * When a stew of one or several parts would have begun if it had been done in one go: pauses move it on. Scratch space of
 * one reading of a log.
 */
final class StewParts {
    private final Optional<Instant> plannedAt;
    private final Optional<Duration> planned;
    private final Duration shortest;
    private Optional<Instant> first = Optional.empty();
    private Optional<Instant> running = Optional.empty();
    private Optional<Instant> ended = Optional.empty();
    private Duration worked = Duration.ZERO;

    StewParts(MaltStyle style, List<Visit> plan) {
        Optional<StewSchedule> stew = style.oven().stew();
        Duration longest = stew.map(StewBlock::longest).orElse(Duration.ZERO);
        this.shortest = stew.map(schedule -> Duration.ofMinutes(Math.round(schedule.shortestMinutes())))
                .orElse(Duration.ZERO);
        this.plannedAt = at(plan, ActKind.STEW);
        this.planned = plannedAt
                .flatMap(begin -> at(plan, ActKind.LOAD).map(load -> Duration.between(begin, load)))
                .filter(length -> length.compareTo(Duration.ZERO) > 0)
                .map(length -> length.compareTo(longest) > 0 ? longest : length);
    }

    private static Optional<Instant> at(List<Visit> plan, ActKind kind) {
        return plan.stream()
                .filter(visit -> visit.kind() == kind)
                .map(Visit::at)
                .findFirst();
    }

    void began(Instant at) {
        if (first.isEmpty()) first = Optional.of(at);
        if (running.isEmpty()) running = Optional.of(at);
    }

    /** It stopped, for good or not. */
    void ended(Instant at) {
        if (running.isEmpty()) return;
        worked = worked.plus(Duration.between(running.get(), at));
        running = Optional.empty();
        ended = Optional.of(at);
    }

    /** One word stands for all of it: said as it began, or as it was over. */
    void said(Instant at) {
        if (first.isPresent()) return;
        first = Optional.of(at);
        if (planned.isEmpty()) return;
        Instant over = plannedAt.orElseThrow().plus(planned.get());
        Duration fromBegin = Duration.between(plannedAt.orElseThrow(), at).abs();
        boolean wasOver = Duration.between(over, at).abs().compareTo(fromBegin) < 0;
        if (wasOver) first = Optional.of(at.minus(planned.get()));
    }

    /**
     * The begin of it in one go.
     *
     * @param at as it was written down
     * @param earliest when what came before it was done
     * @param latest when what came after it was done, or until when is asked
     */
    Instant inOneGo(Instant at, Instant earliest, Instant latest, boolean loaded) {
        Instant begin = begin(at, latest, loaded);
        if (begin.isBefore(earliest)) return earliest;
        return begin.isAfter(latest) ? latest : begin;
    }

    private Instant begin(Instant at, Instant latest, boolean loaded) {
        if (running.isPresent()) return running.get().minus(worked);
        if (ended.isEmpty() || planned.isEmpty()) return first.orElse(at);
        boolean done = loaded || worked.compareTo(shortest) >= 0;
        return done ? ended.get().minus(planned.get()) : latest.minus(worked);
    }
}
