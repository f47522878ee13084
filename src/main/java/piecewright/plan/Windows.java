package piecewright.plan;

import java.time.Duration;
import java.time.Instant;
import java.util.List;
import piecewright.plan.Simulation.Station;
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

    private final Setup setup;
    private final Rules rules;
    private final List<Station> stations;

    Windows(Setup setup, List<Station> stations) {
        this.setup = setup;
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
            case FLOOR -> casting(index);
            case TURN, SPRINKLE -> after(since, turnSlip(meanC), at);
            case STIR -> after(since, STIR_SLIP, at);
            case WITHER, PACK -> grown(index);
            case LOAD -> setup.couching().isPresent() ? after(since, CouchRules.loadSlip(), at) : grown(index);
            case CHECK -> after(since, couchWindows().checkSlip(), at);
            case BREAK -> couchWindows().broken(stations, index);
            case RAISE, CURE -> opened(at);
            case OFF -> after(since, rules.cureSlip(), at);
            case DEROOT -> after(since, rules.derootSlip(), at);
        };
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

    private Window casting(int index) {
        Station station = stations.get(index);
        Instant at = station.visit().at();
        PieceState state = station.before();
        Metabolism metabolism = setup.models().metabolism();
        double chitPerHour = metabolism.chitPerHour(state.grainC());
        double ripeHours = 0;
        while (ripeHours < 48
                && rules.ripe(metabolism.chittedFraction(state.steep().chitRatio() - ripeHours * chitPerHour))) {
            ripeHours += 0.25;
        }
        Instant drained = stations.get(index - 1).visit().at();
        Instant ripe = plus(at, -ripeHours);
        Instant earliest = ripe.isBefore(drained) ? drained : ripe;
        double soft = Practice.CASTING.softHours(state.grainC());
        return enclosing(
                earliest, plus(earliest, soft / 2), plus(earliest, Practice.CASTING.hardHours(state.grainC())), at);
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

    private static Window opened(Instant at) {
        return enclosing(at, plus(at, Rules.KILN_WAIT.latestHours()), plus(at, Rules.KILN_WAIT.hardHours()), at);
    }
}
