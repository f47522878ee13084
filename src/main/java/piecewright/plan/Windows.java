package piecewright.plan;

import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import piecewright.plan.Simulation.Station;
import piecewright.plan.search.Stops;
import piecewright.plan.search.UnderWay;
import piecewright.process.Metabolism;
import piecewright.process.PieceState;

/** When each act may happen, given what came before it: the same rules the search paid by, told as instants. */
final class Windows {
    /** Judgement: the first steep may begin this much later at little cost. */
    private static final Duration START_LATEST = Duration.ofHours(1);
    /** Judgement: and this much at most before the rest of the plan has to move. */
    private static final Duration START_HARD = Duration.ofHours(3);
    /** Judgement: turning again within this time does nothing. */
    private static final double TURN_EARLY_HOURS = 3;

    /** Judgement: practice, a covered stew may run a quarter of an hour over without a thought. */
    private static final double STEW_LATEST_HOURS = 0.25;
    /** Judgement: practice, and an hour at most. */
    private static final double STEW_HARD_HOURS = 1;

    private final Optional<RoastBlock> roast;
    private final Setup setup;
    private final Rules rules;
    private final List<Station> stations;

    Windows(Setup setup, List<Station> stations) {
        this.setup = setup;
        this.roast = RoastBlock.of(setup);
        this.rules = new Rules(setup.style(), setup.lot().waterSensitiveFraction());
        this.stations = stations;
    }

    /** The window of the act at this place in the list of stations. */
    Window of(int index) {
        Station station = stations.get(index);
        Station before = stations.get(Math.max(0, index - 1));
        Instant at = station.visit().at();
        Instant since = before.visit().at();
        double meanC = station.meanC();
        return switch (station.visit().kind()) {
            case SOAK ->
                index == 0
                        ? new Window(at, at.plus(START_LATEST), at.plus(START_HARD))
                        : after(since, rules.restSlip(meanC), at);
            case DRAIN -> after(since, rules.immersionSlip(station.visit().number(), meanC), at);
            case HEAP -> after(since, HEAP_SLIP, at);
            case LOOK -> after(since, HeapRules.of(setup).lookSlip(meanC), at);
            case FLOOR -> before(index).visit().kind() == ActKind.HEAP ? spread(index) : casting(index);
            case TURN, SPRINKLE -> after(since, turnSlip(meanC), at);
            case STIR -> after(since, STIR_SLIP, at);
            case WITHER, PACK, STEW -> grown(index);
            case LOAD -> loaded(before, index, at);
            case CHECK -> after(since, couchWindows().checkSlip(packedHours(index)), at);
            case BREAK -> couchWindows().broken(stations, index);
            case RAISE, CURE -> opened(at);
            case LOWER ->
                new Window(before.visit().at().isBefore(at) ? before.visit().at() : at, at, at);
            case OFF -> after(since, rules.cureSlip(), at);
            case DEROOT -> after(since, rules.derootSlip(), at);
            case ROAST -> after(since, rules.roastSlip(busyMinutes(before)), at);
        };
    }

    private double packedHours(int index) {
        Instant packed = before(index).visit().at();
        return Duration.between(packed, stations.get(index).visit().at()).toMinutes() / 60.0;
    }

    private Window loaded(Station before, int index, Instant at) {
        if (setup.couching().isPresent()) return after(before.visit().at(), CouchRules.loadSlip(), at);
        return before.visit().kind() == ActKind.STEW ? stewed(index) : grown(index);
    }

    private CouchWindows couchWindows() {
        return new CouchWindows(setup.couching().orElseThrow());
    }

    /** Judgement: practice, stir every 4 h while wet, 8 softly, 12 at most. */
    private static final Slip STIR_SLIP = new Slip(0, 1, 4, 8, 12);

    private Slip turnSlip(double meanC) {
        double depthCm = setup.outfit().growing().depthCm();
        Limits limits = Practice.turning(depthCm);
        double soft = limits.softHours(meanC);
        double latest = Math.min(Practice.preferredTurnHours(depthCm), soft);
        return new Slip(0, Math.min(TURN_EARLY_HOURS, latest), latest, soft, limits.hardHours(meanC));
    }

    private static Window after(Instant since, Slip slip, Instant at) {
        return enclosing(
                plus(since, slip.earlyHours()), plus(since, slip.latestHours()), plus(since, slip.hardHours()), at);
    }

    private static Instant plus(Instant since, double hours) {
        return since.plusSeconds(Math.round(hours * 60) * 60);
    }

    /** A window that takes in the planned instant even where it was put before the free part. */
    static Window enclosing(Instant earliest, Instant latest, Instant hard, Instant at) {
        Instant from = at.isBefore(earliest) ? at : earliest;
        Instant until = latest.isBefore(from) ? from : latest;
        Instant last = hard.isBefore(at) ? at : hard;
        return new Window(from, until, last.isBefore(until) ? until : last);
    }

    /** Judgement: practice, into the heap within 8 h of draining, 10 at most; half an hour drips it dry. */
    private static final Slip HEAP_SLIP = new Slip(0.5, 0.5, 8, 8, HeapRules.LATEST_HEAP_HOURS);

    /** The act that began the phase which the act at this place ends. */
    private Station before(int index) {
        int at = Math.max(0, index - 1);
        while (at > 0 && !UnderWay.bounds(stations.get(at).visit().kind())) at--;
        return stations.get(at);
    }

    /** A wet couch is spread once ripe, and before its roots mat or its hours are over. */
    private Window spread(int index) {
        Station station = stations.get(index);
        Instant heaped = before(index).visit().at();
        Slip lies = HeapRules.of(setup).liesSlip(station.meanC());
        Instant earliest = plus(station.visit().at(), -ripeHours(station.before()));
        Instant soonest = plus(heaped, lies.earlyHours());
        return enclosing(
                earliest.isBefore(soonest) ? soonest : earliest,
                plus(heaped, lies.latestHours()),
                plus(heaped, lies.hardHours()),
                station.visit().at());
    }

    private Window casting(int index) {
        Station station = stations.get(index);
        Instant at = station.visit().at();
        PieceState state = station.before();
        Instant drained = stations.get(index - 1).visit().at();
        Instant ripe = plus(at, -ripeHours(state));
        Instant earliest = ripe.isBefore(drained) ? drained : ripe;
        double soft = Practice.CASTING.softHours(state.grainC());
        return enclosing(
                earliest, plus(earliest, soft / 2), plus(earliest, Practice.CASTING.hardHours(state.grainC())), at);
    }

    /** For how long a piece has been ripe to cast, hours. */
    private double ripeHours(PieceState state) {
        Metabolism metabolism = setup.models().metabolism();
        double chitPerHour = metabolism.chitPerHour(state.grainC());
        double hours = 0;
        while (hours < 48 && rules.ripe(metabolism.chittedFraction(state.steep().chitRatio() - hours * chitPerHour))) {
            hours += 0.25;
        }
        return hours;
    }

    private Window grown(int index) {
        Station station = stations.get(index);
        Instant at = station.visit().at();
        PieceState state = station.before();
        double perHour = Math.max(
                1e-4,
                setup.models()
                        .metabolism()
                        .growthPerHour(state.grainC(), state.mass().moisture().wetBasisFraction()));
        var growth = setup.style().growth();
        double low = growth.acceptable().lowFraction();
        double high = growth.acceptable().highFraction();
        double middle = (growth.acrospireFraction() + high) / 2;
        double now = state.growth().growthRatio();
        Instant since = stations.get(index - 1).visit().at();
        Instant earliest = plus(at, Math.min(0, (low - now) / perHour));
        return enclosing(
                earliest.isBefore(since) ? since : earliest,
                plus(at, (middle - now) / perHour),
                plus(at, (high - now) / perHour),
                at);
    }

    private Window stewed(int index) {
        Instant at = stations.get(index).visit().at();
        return enclosing(at, plus(at, STEW_LATEST_HOURS), plus(at, STEW_HARD_HOURS), at);
    }

    private int busyMinutes(Station before) {
        boolean roasts = before.visit().kind() == ActKind.ROAST;
        return roasts ? roast.orElseThrow().minutes() : Stops.DEROOT_MINUTES;
    }

    private static Window opened(Instant at) {
        return enclosing(at, plus(at, Rules.KILN_WAIT.latestHours()), plus(at, Rules.KILN_WAIT.hardHours()), at);
    }
}
