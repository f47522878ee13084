package piecewright.plan;

import java.time.Duration;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.IntStream;
import piecewright.house.Heater;
import piecewright.plan.Ahead.Moment;
import piecewright.plan.Timetable.Visit;
import piecewright.plan.search.Stops;
import piecewright.plan.search.UnderWay;

/** The way on in the kiln: hotter when the gate is open and somebody stays; turned down before nobody is there. */
final class KilnOn {
    /** Judgement: and turned down so long before nobody is there any more, to see that it took. */
    private static final Duration BEFORE_LEAVING = Duration.ofMinutes(10);
    /** Judgement: minutes to weigh and set the heat. */
    private static final int RAISE_MINUTES = 10;
    /** Judgement: minutes to unload. */
    private static final int OFF_MINUTES = 20;
    /** Judgement: a hotter rung that saves less is not worth the visit, hours. */
    private static final double WORTH_HOURS = 12;
    /** Judgement: the bed is stirred every six hours while it is wet. */
    private static final double STIR_HOURS = 6;
    /** Judgement: and left alone from this moisture on, wet basis. */
    static final double LOOSE_FRACTION = 0.23;

    private final Setup setup;
    private final Begun going;
    private final Stops stops;
    private final Ahead ahead;
    private final Visit began;
    private final boolean cured;
    private final Slip cure;

    KilnOn(Setup setup, Begun going, Stops stops, Ahead ahead) {
        this.setup = setup;
        this.going = going;
        this.stops = stops;
        this.ahead = ahead;
        this.began = UnderWay.began(going.visits());
        this.cured = going.visits().stream().anyMatch(visit -> visit.kind() == ActKind.CURE);
        this.cure = new Rules(setup.style(), 0).cureSlip();
    }

    List<Visit> next() {
        if (began.kind() == ActKind.CURE) return afterCure();
        boolean watched = began.kind() != ActKind.LOWER
                && Rules.needsSomebody(HeatLeft.heater(setup, cured).control(), setup.dryingC(level()));
        return watched ? watched() : unwatched();
    }

    /** The rung that is on; 0 where the heat was switched off. */
    private int level() {
        if (began.kind() == ActKind.LOWER) return lowered().orElse(0);
        int rungs = setup.style().kiln().ladder().size();
        return Math.min(began.kind() == ActKind.RAISE ? began.number() : 0, rungs - 1);
    }

    private OptionalInt lowered() {
        return HeatLeft.hottestRung(setup, HeatLeft.heater(setup, cured));
    }

    private boolean cureNeedsSomebody() {
        Outfit.Drying drying = setup.outfit().drying();
        return Rules.needsSomebody(drying.curer().control(), drying.cureC());
    }

    /** Heat that somebody watches: on to the cure while they stay, else down before they go. */
    private List<Visit> watched() {
        Optional<Instant> leaves = ahead.firstLeave();
        if (leaves.isEmpty()) return List.of();
        Instant until = leaves.get();
        Optional<Moment> cures = ahead.fitting(RAISE_MINUTES).stream()
                .filter(moment -> moment.at().isBefore(until) && open(moment) && stays(moment) >= neededHours())
                .findFirst();
        return cures.map(moment -> List.of(cureAt(moment.at()))).orElseGet(() -> lower(until));
    }

    private double neededHours() {
        return cureNeedsSomebody() ? cure.shortestHours() + OFF_MINUTES / 60.0 : 0;
    }

    private double stays(Moment moment) {
        return Duration.between(moment.at(), ahead.attendedUntil(moment.at())).toMinutes() / 60.0;
    }

    private boolean open(Moment moment) {
        return moment.read().slowFraction() <= setup.cureGateFraction();
    }

    /** Shortly before nobody is there any more, at once where that is sooner. */
    private List<Visit> lower(Instant until) {
        int number = 1
                + (int) going.visits().stream()
                        .filter(visit -> visit.kind() == ActKind.LOWER)
                        .count();
        Instant from = ahead.hours().attendedUntil(ahead.from()).isPresent()
                ? ahead.from()
                : ahead.first().map(Moment::at).orElse(ahead.from());
        Instant now = (from.isBefore(ahead.free()) ? ahead.free() : from)
                .plusSeconds(59)
                .truncatedTo(ChronoUnit.MINUTES);
        Instant last = until.minus(BEFORE_LEAVING);
        Instant at = last.isBefore(now) ? now : last;
        return at.isBefore(until) ? List.of(new Visit("kiln.lower-" + number, ActKind.LOWER, number, at)) : List.of();
    }

    /** Heat that may be left: the cure as soon as it may begin and somebody stays, or before it a hotter rung. */
    private List<Visit> unwatched() {
        List<Moment> fitting = ahead.fitting(RAISE_MINUTES);
        List<Moment> open = fitting.stream().filter(this::open).toList();
        Optional<Moment> cures = open.stream()
                .filter(moment -> stays(moment) >= neededHours())
                .findFirst()
                .or(() -> open.stream().reduce((one, other) -> stays(other) > stays(one) ? other : one));
        Optional<Visit> hotter = hotter(fitting);
        boolean sooner = hotter.isPresent()
                && cures.filter(moment -> moment.hoursSince(hotter.get().at()) < WORTH_HOURS)
                        .isEmpty();
        Optional<Visit> next = sooner ? hotter : cures.map(moment -> cureAt(moment.at()));
        return next.map(this::stirred).orElse(List.of());
    }

    /** The hottest rung that may be left on and opens before the cure does; any rung at all where the heat is off. */
    private Optional<Visit> hotter(List<Moment> fitting) {
        boolean off = began.kind() == ActKind.LOWER && lowered().isEmpty();
        if (off) {
            return fitting.stream()
                    .reduce((one, other) -> stays(other) > stays(one) ? other : one)
                    .map(moment -> raise(0, moment.at()));
        }
        Heater heater = HeatLeft.heater(setup, cured);
        return IntStream.range(level() + 1, stops.rungs().size())
                .filter(rung -> !Rules.needsSomebody(heater.control(), setup.dryingC(rung)))
                .boxed()
                .sorted(Comparator.reverseOrder())
                .flatMap(rung -> fitting.stream()
                        .filter(moment -> moment.read().slowFraction()
                                <= stops.rungs().get(rung).belowMoistureFraction())
                        .findFirst()
                        .map(moment -> raise(rung, moment.at()))
                        .stream())
                .findFirst();
    }

    private Visit raise(int rung, Instant at) {
        return new Visit(named("kiln.raise-" + rung), ActKind.RAISE, rung, at);
    }

    private Visit cureAt(Instant at) {
        return new Visit(named(stops.id(cureStop())), ActKind.CURE, 0, at);
    }

    private int cureStop() {
        return IntStream.rangeClosed(0, stops.last())
                .filter(stop -> stops.kind(stop) == ActKind.CURE)
                .findFirst()
                .orElseThrow();
    }

    private String named(String id) {
        return Stops.own(id, going.visits());
    }

    private List<Visit> stirred(Visit next) {
        boolean wet = ahead.first()
                .filter(moment -> moment.read().held().mass().moisture().wetBasisFraction() > LOOSE_FRACTION)
                .isPresent();
        List<Visit> visits = new ArrayList<>();
        if (wet) {
            Instant dry = ahead.moments().stream()
                    .filter(moment -> moment.read().held().mass().moisture().wetBasisFraction() <= LOOSE_FRACTION)
                    .map(Moment::at)
                    .findFirst()
                    .orElse(next.at());
            visits.addAll(Overdue.Tending.of(going, ahead, ActKind.STIR, STIR_HOURS)
                    .until(dry.isBefore(next.at()) ? dry : next.at()));
        }
        visits.add(next);
        return visits;
    }

    /** Off when it is done; before nobody is there any more off, or down to be cured again where that can be. */
    private List<Visit> afterCure() {
        List<Moment> fitting = ahead.fitting(OFF_MINUTES);
        if (fitting.isEmpty()) return List.of();
        Instant until = cureNeedsSomebody() ? ahead.firstLeave().orElseThrow() : Instant.MAX;
        double middle = (cure.earlyHours() + cure.latestHours()) / 2;
        Optional<Moment> done = fitting.stream()
                .filter(moment -> moment.at().isBefore(until) && moment.hoursSince(began.at()) >= cure.shortestHours())
                .min(Comparator.comparingDouble(moment -> Math.abs(moment.hoursSince(began.at()) - middle)));
        if (done.isPresent()) return List.of(off(done.get().at()));
        boolean later = fitting.stream().anyMatch(moment -> stays(moment) >= neededHours());
        Optional<Moment> last =
                fitting.stream().filter(moment -> moment.at().isBefore(until)).max(Comparator.comparing(Moment::at));
        return later || last.isEmpty() ? lower(until) : List.of(off(last.get().at()));
    }

    private static Visit off(Instant at) {
        return new Visit("kiln.off", ActKind.OFF, 0, at);
    }
}
