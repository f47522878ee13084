package piecewright.app;

import java.time.ZoneId;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import piecewright.chart.CouchChart;
import piecewright.chart.PlanChart;
import piecewright.ensemble.Sureness;
import piecewright.plan.Obstacle;
import piecewright.plan.Plan;
import piecewright.plan.PlanRequest;
import piecewright.remedy.Remedy;
import piecewright.sheet.BenchSheet;
import piecewright.store.PlanJson;
import piecewright.text.DisplayUnits;
import piecewright.text.OnePage;
import piecewright.text.PlanPage;
import piecewright.text.RemedyWords;
import piecewright.text.Wording;

/** A plan, or why there is none, as documents in one person's units. */
public final class PlanPapers {
    private final DisplayUnits units;

    public PlanPapers(DisplayUnits units) {
        this.units = units;
    }

    /** The whole plan on one page. */
    public String onePage(PlanRequest request, Plan plan, Sureness sureness) {
        return OnePage.of(request, plan, sureness, units);
    }

    /** The page to follow at the bucket, with all detail. */
    public String page(PlanRequest request, Plan plan) {
        return PlanPage.of(request, plan, units);
    }

    /** The bench sheet: one HTML file to print or to open on a phone. */
    public String sheet(Papers papers) {
        return BenchSheet.of(papers.request(), papers.plan(), units, papers.known());
    }

    /** The plan along its days as an SVG picture, with what was measured so far. */
    public String chart(Papers papers) {
        return PlanChart.of(
                papers.request(), papers.plan(), units, papers.known().followed());
    }

    /** The hot couch as an SVG picture; empty for a plan without one. */
    public Optional<String> couchChart(Papers papers) {
        return papers.heaps().map(heaps -> CouchChart.of(papers.plan(), heaps, units));
    }

    /** The same with a band at each act and a verdict. */
    public String page(PlanRequest request, Plan plan, Sureness sureness) {
        return PlanPage.of(request, plan, sureness, units);
    }

    /** The JSON document with bands, format 1. */
    public String json(Plan plan, Sureness sureness) {
        return new PlanJson(new Wording(units, plan.subject().zone())).write(plan, sureness);
    }

    /** The JSON document, format 1. */
    public String json(Plan plan) {
        return new PlanJson(new Wording(units, plan.subject().zone())).write(plan);
    }

    /** Why there is no plan and what would help, a sentence or two each. */
    public List<String> sentences(ZoneId zone, List<Obstacle> obstacles, List<Remedy> remedies) {
        Wording wording = new Wording(units, zone);
        return Stream.concat(
                        obstacles.stream().map(wording::obstacle),
                        new RemedyWords(units, zone).lines(remedies).stream())
                .toList();
    }

    /** The same as a JSON document, format 1. */
    public String json(ZoneId zone, List<Obstacle> obstacles, List<Remedy> remedies) {
        RemedyWords words = new RemedyWords(units, zone);
        return new PlanJson(new Wording(units, zone))
                .refusal(obstacles, remedies.stream().map(words::sentence).toList());
    }
}
