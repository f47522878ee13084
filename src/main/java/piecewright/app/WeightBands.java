package piecewright.app;

import java.time.Instant;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import piecewright.ensemble.ActBands;
import piecewright.ensemble.Band;
import piecewright.ensemble.Members;
import piecewright.plan.Act;
import piecewright.plan.Plan;
import piecewright.plan.PlanRequest;
import piecewright.sheet.MassBand;

/**
 * Between which weights a piece is to be expected at each act in eight cases of ten: from the ensemble; at an act that
 * only a re-plan put there by the spread of the one before it.
 */
record WeightBands(PlanRequest request, HowSure howSure) {
    /** Judgement: above this moisture a piece keeps the spread of its water, wet basis; below it all dry alike. */
    private static final double WET_FRACTION = 0.20;
    /** Judgement: standard deviation of the dry matter left at the end, as a share of it; practice estimates 2 to 3 %. */
    private static final double DRY_MATTER_SD = 0.025;
    /** Source: standard normal distribution, P90. */
    private static final double P90_SD = 1.2816;

    /** The bands of a plan, by act id. */
    Map<String, MassBand> of(Plan plan, Instant now) {
        return of(plan, plan, now);
    }

    /**
     * The bands of a piece under way, by act id: as far to either side of what is expected now as they were before
     * anything was measured. Too wide rather than too narrow, for every weighing narrows them.
     */
    Map<String, MassBand> of(Plan before, Plan expected, Instant now) {
        Map<String, Band> ratios = new HashMap<>();
        for (ActBands act : howSure.chances(request, before, now, Members.USUAL).acts()) {
            before.acts().stream()
                    .filter(each -> each.id().equals(act.actId()))
                    .forEach(each -> ratios.put(
                            act.actId(), ratio(act.weighedKg(), each.expect().massKg())));
        }
        Map<String, MassBand> bands = new HashMap<>();
        Optional<Band> last = Optional.empty();
        for (Act act : expected.acts()) {
            Optional<Band> known = Optional.ofNullable(ratios.get(act.id()));
            if (known.isPresent()) last = known;
            Optional<Band> ratio = known.isPresent() ? known : carried(last, act);
            ratio.ifPresent(band -> bands.put(act.id(), band(act.expect().massKg(), band)));
        }
        return bands;
    }

    private static Band ratio(Band weighedKg, double middleKg) {
        return new Band(weighedKg.p10() / middleKg, weighedKg.p50() / middleKg, weighedKg.p90() / middleKg);
    }

    private static Optional<Band> carried(Optional<Band> last, Act act) {
        if (act.expect().moisture().wetBasisFraction() > WET_FRACTION) return last;
        double reach = P90_SD * DRY_MATTER_SD;
        return Optional.of(new Band(1 - reach, 1, 1 + reach));
    }

    /** The ensemble may soak once more than the plan, so that the plan's own weight can lie at the edge. */
    private static MassBand band(double massKg, Band ratio) {
        return new MassBand(massKg * Math.min(1, ratio.p10()), massKg * Math.max(1, ratio.p90()));
    }
}
