package piecewright.plan;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import piecewright.plan.Finding.Quantity;
import piecewright.plan.Simulation.Course;
import piecewright.plan.Simulation.Station;
import piecewright.style.MaltStyle;

/** What the rest of a piece under way gives up of what its style and its wish ask, where nothing keeps it all. */
final class Losses {
    /** Judgement: figures nearer to a limit than this are at it: the stages differ by as much, share. */
    private static final double UNTOLD_FRACTION = 0.011;
    /** Judgement: nobody tells less of a cure, hours. */
    private static final double UNTOLD_HOURS = 0.1;

    private final MaltStyle style;
    private final List<Finding> findings = new ArrayList<>();

    private Losses(MaltStyle style) {
        this.style = style;
    }

    /**
     * @param done so many acts happened; what they cost is no news
     * @param wanted when the malt was to be ready; the end of time for no such wish
     */
    static List<Finding> of(PlanRequest request, Plan plan, Course course, int done, Instant wanted) {
        Losses losses = new Losses(request.style());
        List<Station> toCome = course.stations().subList(done, course.stations().size());
        first(toCome, ActKind.PACK)
                .ifPresentOrElse(
                        losses::packed,
                        () -> first(toCome, ActKind.STEW, ActKind.LOAD)
                                .filter(load -> request.style().couches().hot().isEmpty())
                                .ifPresent(losses::grown));
        first(toCome, ActKind.BREAK).ifPresent(losses::broken);
        first(toCome, ActKind.OFF).ifPresent(off -> losses.cured(course, off));
        losses.roasted(request, plan);
        Instant rested = plan.subject().readyAt();
        if (rested.isAfter(wanted)) {
            losses.findings.add(new Finding.ReadyLate("plan", Duration.between(wanted, rested)));
        }
        return losses.findings;
    }

    private static Optional<Station> first(List<Station> stations, ActKind... kinds) {
        return stations.stream()
                .filter(station -> List.of(kinds).contains(station.visit().kind()))
                .findFirst();
    }

    private void grown(Station end) {
        var range = style.growth().acceptable();
        missed(end, Quantity.ACROSPIRE, end.before().growth().growthRatio(), new double[] {
            range.lowFraction(), range.highFraction(), UNTOLD_FRACTION
        });
    }

    private void packed(Station pack) {
        grown(pack);
        style.couches()
                .hot()
                .ifPresent(hot -> missed(
                        pack,
                        Quantity.PACKING_MOISTURE,
                        pack.before().mass().moisture().wetBasisFraction(),
                        new double[] {hot.packing().lowFraction(), hot.packing().highFraction(), UNTOLD_FRACTION}));
    }

    private void broken(Station broken) {
        style.couches().hot().ifPresent(hot -> {
            var range = hot.acceptableIndex();
            missed(broken, Quantity.COUCH_INDEX_HOURS, broken.before().couch().indexHours(), new double[] {
                range.lowHours(), range.highHours(), 0.1 * hot.indexHours()
            });
        });
    }

    private void cured(Course course, Station off) {
        Optional<Station> cure = course.stations().stream()
                .filter(station -> station.visit().kind() == ActKind.CURE)
                .reduce((one, other) -> other);
        if (cure.isEmpty()) return;
        Slip slip = new Rules(style, 0).cureSlip();
        double hours =
                Duration.between(cure.get().visit().at(), off.visit().at()).toMinutes() / 60.0;
        missed(off, Quantity.CURE_HOURS, hours, new double[] {slip.shortestHours(), slip.hardHours(), UNTOLD_HOURS});
    }

    private void roasted(PlanRequest request, Plan plan) {
        boolean roasts = plan.acts().stream().anyMatch(act -> act.kind() == ActKind.ROAST);
        if (request.style().oven().roast().isPresent() && !roasts) {
            findings.add(new Finding.NotRoasted("finish.deroot"));
        }
    }

    /** @param range low, high and what nobody can tell */
    private void missed(Station station, Quantity quantity, double is, double[] range) {
        if (is >= range[0] - range[2] && is <= range[1] + range[2]) return;
        findings.add(new Finding.OffStyle(station.visit().id(), quantity, is, range[0], range[1]));
    }
}
