package piecewright.plan;

import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import piecewright.plan.Unknowns.Test;

/**
 * Puts the tests that nobody has made yet before the first act, each visit inside somebody's hours, as late as leaves a
 * day to act on what they tell. A test that has no room is named in a finding.
 */
public final class Preflight {
    /** Judgement: a day to plan again, or to find another lot. */
    private static final Duration TO_ACT_ON_IT = Duration.ofHours(24);
    /** Judgement: nobody tests a lot earlier than this before its piece. */
    private static final Duration EARLIEST = Duration.ofDays(14);
    /** Judgement: a start put off by more than this for the sake of tests is not what was wished. */
    private static final int MOST_DAYS_LATER = 7;
    /** Judgement: people look at the clock in quarters. */
    private static final Duration STEP = Duration.ofMinutes(15);

    private final PlanRequest request;
    private final Instant earliest;

    /** @param earliest no visit before then, by the house's clock */
    public Preflight(PlanRequest request, LocalDateTime earliest) {
        this.request = request;
        this.earliest = earliest.atZone(request.house().zone()).toInstant();
    }

    /** The plan with its checks, and with a finding for each that has no room before it. */
    public Plan added(Plan plan) {
        List<Check> checks = new ArrayList<>();
        List<Finding> findings = new ArrayList<>(plan.findings());
        for (Test test : new Unknowns(request, plan).tests()) {
            List<Check> placed = placed(test, plan.startsAt(), checks);
            checks.addAll(placed);
            if (placed.isEmpty()) findings.add(new Finding.NoRoomToCheck("plan", test.begin(), test.about()));
        }
        checks.sort(Comparator.comparing(Check::startsAt));
        return plan.withChecks(checks, findings);
    }

    /** The first day on which a piece could start with all its tests made; empty if this plan leaves room for all. */
    public Optional<LocalDate> roomFrom(Plan plan) {
        if (allFit(plan, plan.startsAt())) return Optional.empty();
        ZoneId zone = request.house().zone();
        LocalDate day = LocalDate.ofInstant(plan.startsAt(), zone);
        for (int later = 1; later <= MOST_DAYS_LATER; later++) {
            LocalDate start = day.plusDays(later);
            if (allFit(plan, start.atStartOfDay(zone).toInstant())) return Optional.of(start);
        }
        return Optional.empty();
    }

    private boolean allFit(Plan plan, Instant start) {
        List<Check> checks = new ArrayList<>();
        for (Test test : new Unknowns(request, plan).tests()) {
            List<Check> placed = placed(test, start, checks);
            if (placed.isEmpty()) return false;
            checks.addAll(placed);
        }
        return true;
    }

    private List<Check> placed(Test test, Instant start, List<Check> taken) {
        Instant from = later(earliest, start.minus(EARLIEST));
        Instant until = quarter(start.minus(TO_ACT_ON_IT));
        if (!from.isBefore(until)) return List.of();
        Availability hours = Availability.of(request.house(), from, start).beside(request.besides());
        CheckKind last = test.end().orElse(test.begin());
        for (Instant at = until; at.isAfter(from); at = at.minus(STEP)) {
            if (!free(at, last, hours, taken)) continue;
            Check end = new Check(test.id(last), last, test.about(), at, at, test.gain());
            if (test.end().isEmpty()) return List.of(latest(end, until));
            Optional<Check> begin = begin(test, at, from, hours, taken);
            if (begin.isPresent()) {
                Instant latest =
                        begin.get().startsAt().plus(minutes(test.hours().mostHours()));
                return List.of(begin.get(), latest(end, latest));
            }
        }
        return List.of();
    }

    private Optional<Check> begin(Test test, Instant end, Instant from, Availability hours, List<Check> taken) {
        Instant first = later(from, end.minus(minutes(test.hours().mostHours())));
        Instant last = quarter(end.minus(minutes(test.hours().leastHours())));
        for (Instant at = last; !at.isBefore(first); at = at.minus(STEP)) {
            if (free(at, test.begin(), hours, taken)) {
                return Optional.of(new Check(test.id(test.begin()), test.begin(), test.about(), at, last, test.gain()));
            }
        }
        return Optional.empty();
    }

    private static Check latest(Check check, Instant latest) {
        Instant bound = latest.isBefore(check.startsAt()) ? check.startsAt() : latest;
        return new Check(check.id(), check.kind(), check.about(), check.startsAt(), bound, check.gain());
    }

    private static boolean free(Instant at, CheckKind kind, Availability hours, List<Check> taken) {
        Instant done = at.plus(Duration.ofMinutes(kind.workMinutes()));
        boolean somebody =
                hours.workableUntil(at).filter(until -> !done.isAfter(until)).isPresent();
        return somebody
                && taken.stream()
                        .noneMatch(check ->
                                at.isBefore(check.endsAt()) && check.startsAt().isBefore(done));
    }

    private static Duration minutes(double hours) {
        return Duration.ofMinutes(Math.round(60 * hours));
    }

    private static Instant quarter(Instant instant) {
        return Instant.ofEpochSecond(instant.getEpochSecond() / STEP.toSeconds() * STEP.toSeconds());
    }

    private static Instant later(Instant one, Instant other) {
        return one.isAfter(other) ? one : other;
    }
}
