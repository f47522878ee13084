package piecewright.desktop.batch;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import piecewright.desktop.timeline.PieceChart.Dot;
import piecewright.desktop.timeline.PieceChart.DotKind;
import piecewright.journal.Entry;
import piecewright.journal.Journal;
import piecewright.journal.Report;
import piecewright.plan.Plan;

/** What the journal measured, as points of the timeline. */
final class Dots {
    private Dots() {}

    static List<Dot> of(Journal journal, Plan plan) {
        List<Dot> dots = new ArrayList<>();
        for (Entry entry : journal.effective()) dot(entry, plan).ifPresent(dots::add);
        return dots;
    }

    private static Optional<Dot> dot(Entry entry, Plan plan) {
        if (entry.report() instanceof Report.Weighed weighed) {
            return dryKg(plan, entry)
                    .filter(dryKg -> dryKg < weighed.netKg())
                    .map(dryKg -> new Dot(DotKind.WEIGHED, entry.at(), 100 * (1 - dryKg / weighed.netKg())));
        }
        if (entry.report() instanceof Report.SampleDried sample) {
            return Optional.of(
                    new Dot(DotKind.WEIGHED, entry.at(), sample.moisture().wetBasisPercent()));
        }
        if (entry.report() instanceof Report.TemperatureRead read) {
            return Optional.of(new Dot(DotKind.READ, entry.at(), read.readC()));
        }
        if (entry.report() instanceof Report.AcrospiresCounted counted) {
            return Optional.of(
                    new Dot(DotKind.COUNTED, entry.at(), counted.count().meanFraction()));
        }
        return Optional.empty();
    }

    /** Dry matter of the forecast nearest before the entry. */
    private static Optional<Double> dryKg(Plan plan, Entry entry) {
        Optional<Double> dryKg = Optional.empty();
        for (Plan.Sample sample : plan.course()) {
            if (sample.at().isAfter(entry.at()) && dryKg.isPresent()) break;
            dryKg = Optional.of(sample.state().mass().dryMatterKg());
        }
        return dryKg;
    }
}
