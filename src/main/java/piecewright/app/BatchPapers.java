package piecewright.app;

import java.time.Instant;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import piecewright.chart.CouchChart;
import piecewright.chart.Followed;
import piecewright.chart.Measured;
import piecewright.history.Contradiction;
import piecewright.journal.Entry;
import piecewright.journal.Report.AcrospiresCounted;
import piecewright.journal.Report.SampleDried;
import piecewright.journal.Report.TemperatureRead;
import piecewright.journal.Report.Weighed;
import piecewright.journal.Spot;
import piecewright.plan.HeapCurve;
import piecewright.plan.ModelParameters;
import piecewright.plan.Plan;
import piecewright.plan.Timetable.Visit;
import piecewright.replan.Where;
import piecewright.sheet.Known;
import piecewright.store.StoreException;

/** The papers of a kept batch as its journal tells it: done acts ticked, what was found over what was forecast. */
public final class BatchPapers {
    private final BatchAtHand batch;
    private final Instant now;

    public BatchPapers(BatchAtHand batch, Instant now) {
        this.batch = batch;
        this.now = now;
    }

    /** What papers are made of; a refusal when the house has no kit for the batch any more. */
    public Papers papers() throws StoreException {
        Where where = batch.where(now).orElseThrow(batch::noKit);
        Plan before = batch.asPlanned(now).orElseThrow(batch::noKit);
        Set<String> done = new HashSet<>();
        for (Visit visit : where.account().visits()) done.add(visit.id());
        boolean begun = !done.isEmpty();
        Plan plan = begun ? where.plan() : before;
        Followed followed = begun
                ? new Followed(measured(where, Spot.values()), Optional.of(before), Optional.of(now))
                : Followed.nothing();
        WeightBands bands = new WeightBands(batch.request(), new HowSure(ModelParameters.defaults()));
        Known known = new Known(bands.of(before, plan, now), done, followed);
        return new Papers(batch.request(), plan, known, heaps(where, plan, before));
    }

    /** Figures nobody questions, as they are drawn; thermometers only where they were held at one of these spots. */
    private List<Measured> measured(Where where, Spot... spots) {
        Set<Integer> doubted = new HashSet<>();
        for (Contradiction question : where.account().contradictions()) doubted.add(question.entry());
        List<Measured> all = new ArrayList<>();
        for (Entry entry : batch.journal().effectiveUntil(now)) {
            if (!doubted.contains(entry.number()))
                measured(entry, where.plan(), Set.of(spots)).ifPresent(all::add);
        }
        return all;
    }

    private static Optional<Measured> measured(Entry entry, Plan plan, Set<Spot> spots) {
        if (entry.report() instanceof Weighed weighed) {
            double moistureFraction = 1 - dryKg(plan, entry.at()) / weighed.netKg();
            return moistureFraction > 0
                    ? Optional.of(new Measured(entry.at(), Measured.Kind.WEIGHED, moistureFraction))
                    : Optional.empty();
        }
        if (entry.report() instanceof SampleDried dried) {
            double fraction = dried.moisture().wetBasisFraction();
            return Optional.of(new Measured(entry.at(), Measured.Kind.WEIGHED, fraction));
        }
        if (entry.report() instanceof TemperatureRead read && read.spot().inGrain() && spots.contains(read.spot())) {
            return Optional.of(new Measured(entry.at(), Measured.Kind.READ, read.readC()));
        }
        if (entry.report() instanceof AcrospiresCounted counted) {
            double fraction = counted.count().meanFraction();
            return Optional.of(new Measured(entry.at(), Measured.Kind.COUNTED, fraction));
        }
        return Optional.empty();
    }

    /** Dry matter the piece is held to have at a moment, kg. */
    private static double dryKg(Plan plan, Instant at) {
        Plan.Sample held = plan.course().get(0);
        for (Plan.Sample sample : plan.course()) if (!sample.at().isAfter(at)) held = sample;
        return held.state().mass().dryMatterKg();
    }

    /** The couch before any reading and by what its readings taught so far. */
    private Optional<CouchChart.Heaps> heaps(Where where, Plan plan, Plan before) throws StoreException {
        ModelParameters parameters = ModelParameters.defaults();
        Optional<HeapCurve> first = HeapCurve.of(parameters, batch.request(), before);
        boolean packed = first.isPresent() && where.account().did("couch.pack");
        if (!packed) return first.map(heap -> new CouchChart.Heaps(heap, Optional.empty(), List.of()));
        List<Measured> readings = measured(where, Spot.CORE, Spot.GRAIN);
        return HeapCurve.of(parameters, batch.requestSoFar(), plan)
                .map(heap -> new CouchChart.Heaps(heap, first, readings));
    }
}
