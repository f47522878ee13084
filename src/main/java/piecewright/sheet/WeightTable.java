package piecewright.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import piecewright.plan.Act;
import piecewright.plan.ActKind;
import piecewright.plan.Plan;

/**
 * What weights of this batch mean: one column for the weigh-ins that share their dry matter, one row for each whole
 * percent of moisture near a weigh-in and each second one between. Weight is dry matter divided by what is not water; the dry matter shrinks on the way.
 */
record WeightTable(List<Column> columns) {
    /** Judgement: a difference of dry matter this small moves the moisture less than a third of a point. */
    private static final double SAME_DRY_MATTER_RATIO = 0.003;
    /** Judgement: how far from the forecast a weigh-in is still the same batch, points of moisture. */
    private static final int REACH_PERCENT = 5;

    private static final int DRIEST_PERCENT = 1;

    WeightTable {
        columns = List.copyOf(columns);
    }

    /** Weigh-ins with one dry matter, kg. */
    record Column(List<Act> acts, double dryKg) {
        Column {
            acts = List.copyOf(acts);
        }

        double weightKg(int percent) {
            return dryKg / (1 - percent / 100.0);
        }

        /** The weight at that moisture; empty where this column need not be read. */
        Optional<Double> entryKg(int percent) {
            boolean near = acts.stream()
                    .mapToDouble(act -> act.expect().moisture().wetBasisPercent())
                    .anyMatch(expected -> Math.abs(expected - percent) <= REACH_PERCENT);
            return near || between(percent) ? Optional.of(weightKg(percent)) : Optional.empty();
        }

        private boolean between(int percent) {
            return percent % 2 == 0
                    && percent > acts.get(acts.size() - 1).expect().moisture().wetBasisPercent()
                    && percent < acts.get(0).expect().moisture().wetBasisPercent();
        }

        boolean expects(int percent) {
            return acts.stream()
                    .anyMatch(act -> Math.round(act.expect().moisture().wetBasisPercent()) == percent);
        }

        /** Drained grain carries a film of water that differs from drain to drain. */
        boolean drained() {
            return acts.get(0).kind() == ActKind.DRAIN;
        }
    }

    static WeightTable of(Plan plan) {
        List<Column> columns = new ArrayList<>();
        for (Act act : plan.acts()) {
            if (!Blank.of(act.kind()).contains(Blank.WEIGHT)) continue;
            double dryKg = dryKg(act);
            int last = columns.size() - 1;
            if (last >= 0 && Math.abs(columns.get(last).dryKg() / dryKg - 1) < SAME_DRY_MATTER_RATIO) {
                List<Act> acts = new ArrayList<>(columns.get(last).acts());
                acts.add(act);
                columns.set(last, new Column(acts, columns.get(last).dryKg()));
            } else {
                columns.add(new Column(List.of(act), dryKg));
            }
        }
        return new WeightTable(columns);
    }

    static double dryKg(Act act) {
        return act.expect().massKg() * (1 - act.expect().moisture().wetBasisFraction());
    }

    /** Moistures, whole percent, wettest first, that some column gives a weight for. */
    List<Integer> percents() {
        return IntStream.rangeClosed(DRIEST_PERCENT, 60)
                .map(i -> 60 + DRIEST_PERCENT - i)
                .filter(percent -> columns.stream()
                        .anyMatch(column -> column.entryKg(percent).isPresent()))
                .boxed()
                .toList();
    }
}
