package piecewright.desktop.couch;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import piecewright.desktop.batch.BatchViewModel.Shown;
import piecewright.desktop.timeline.Trace;
import piecewright.journal.Entry;
import piecewright.journal.Report;
import piecewright.plan.Phase;
import piecewright.plan.PhaseKind;
import piecewright.plan.Plan;

/** Takes the forecast from the plan as it stands now, which goes on from the last reading, and the readings from the journal. */
public final class PlannedCouch implements ForetellsCouch {
    @Override
    public Optional<CouchCurve> of(Shown shown) {
        Plan plan = shown.plan();
        Optional<Phase> couching = plan.phases().stream()
                .filter(phase -> phase.kind() == PhaseKind.COUCHING)
                .findFirst();
        var schedule = shown.batch().request().style().couches().hot();
        if (couching.isEmpty() || schedule.isEmpty()) return Optional.empty();
        Phase phase = couching.get();
        List<Trace.Point> points = new ArrayList<>();
        for (Plan.Sample sample : plan.course()) {
            boolean inside = !sample.at().isBefore(phase.from()) && !sample.at().isAfter(phase.until());
            if (inside) points.add(new Trace.Point(sample.at(), sample.state().grainC()));
        }
        if (points.size() < 2) return Optional.empty();
        List<Trace.Point> read = new ArrayList<>();
        for (Entry entry : shown.batch().journal().effective()) {
            boolean inside = !entry.at().isBefore(phase.from()) && !entry.at().isAfter(phase.until());
            boolean grain = entry.report() instanceof Report.TemperatureRead reading
                    && reading.spot().inGrain();
            if (inside && grain) {
                read.add(new Trace.Point(entry.at(), ((Report.TemperatureRead) entry.report()).readC()));
            }
        }
        return Optional.of(new CouchCurve(
                new Trace(points),
                read,
                schedule.get().spreadAboveC(),
                shown.where().help().couch().map(foretold -> foretold.peak())));
    }
}
