package piecewright.plan;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;
import piecewright.plan.Availability.Stretch;
import piecewright.plan.Continuation.Bench;
import piecewright.plan.Simulation.Read;

/**
 * How a piece will stand, left to the phase it is in, at every moment at which somebody could do something about it.
 *
 * @param from what somebody stays for counts from here on
 * @param free nothing is done before this
 * @param moments in time order, each one a full five minutes inside somebody's hours
 */
record Ahead(Instant from, Instant free, List<Moment> moments, Availability hours) {
    /** Judgement: longer ahead nobody looks for a moment. */
    private static final Duration LONGEST = Duration.ofDays(12);
    /** Judgement: moments so far apart are enough to choose among. */
    private static final Duration STEP = Duration.ofMinutes(30);
    /** Lengths of work for which the last moment of a stretch counts, minutes. */
    private static final int[] LENGTHS_MINUTES = {5, 10, 20, 30, 40};

    Ahead {
        moments = List.copyOf(moments);
    }

    /** One moment and what is held of the piece then. */
    record Moment(Instant at, Read read) {
        double hoursSince(Instant since) {
            return Duration.between(since, at).toMinutes() / 60.0;
        }
    }

    static Ahead of(Bench bench, Begun going, Instant from, Instant free) {
        Instant until = from.plus(LONGEST);
        Availability hours = Availability.of(bench.request().house(), from, until)
                .beside(bench.request().besides());
        TreeSet<Instant> instants = new TreeSet<>();
        for (Stretch stretch : hours.everyonesStretches()) {
            Instant first = Resumption.soon(stretch.from().isBefore(from) ? from : stretch.from());
            for (Instant at = first; at.isBefore(stretch.until()); at = at.plus(STEP)) instants.add(at);
            for (int minutes : LENGTHS_MINUTES) {
                Instant last = Resumption.soon(stretch.until().minus(Duration.ofMinutes(minutes + 4)));
                if (!last.isBefore(first)) instants.add(last);
            }
        }
        List<Reading> readings = new ArrayList<>(going.found().readings());
        int known = readings.size();
        Instant lastRead = known == 0 ? Instant.MIN : readings.get(known - 1).at();
        List<Instant> open = instants.stream()
                .filter(at -> at.isBefore(until) && !at.isBefore(lastRead) && !at.isBefore(free))
                .toList();
        open.forEach(at -> readings.add(Reading.nothing(at)));
        List<Read> reads =
                bench.run(going.visits(), going.found().withReadings(readings)).reads();
        List<Moment> moments = new ArrayList<>();
        for (int i = 0; i < open.size(); i++) moments.add(new Moment(open.get(i), reads.get(known + i)));
        return new Ahead(from, free, moments, hours);
    }

    /** The moments at which one person can go on for so long. */
    List<Moment> fitting(int workMinutes) {
        return moments.stream()
                .filter(moment -> hours.workableUntil(moment.at())
                        .filter(until -> !moment.at()
                                .plus(Duration.ofMinutes(workMinutes))
                                .isAfter(until))
                        .isPresent())
                .toList();
    }

    /** Until when somebody stays near from that instant on; the instant itself when nobody is there. */
    Instant attendedUntil(Instant at) {
        return hours.attendedUntil(at).orElse(at);
    }

    /** Until when somebody stays near who is there now, or else who comes next; empty when nobody ever comes. */
    Optional<Instant> firstLeave() {
        return hours.attendedUntil(from).or(() -> first().map(moment -> attendedUntil(moment.at())));
    }

    Optional<Moment> first() {
        return moments.stream().findFirst();
    }
}
