package piecewright.app;

import java.time.ZoneId;
import java.util.List;
import java.util.stream.Stream;
import piecewright.plan.Obstacle;
import piecewright.plan.Plan;
import piecewright.plan.PlanRequest;
import piecewright.remedy.Remedy;
import piecewright.store.PlanJson;
import piecewright.text.DisplayUnits;
import piecewright.text.PlanPage;
import piecewright.text.RemedyWords;
import piecewright.text.Wording;

/** A plan, or why there is none, as documents in one person's units. */
public final class PlanPapers {
    private final DisplayUnits units;

    public PlanPapers(DisplayUnits units) {
        this.units = units;
    }

    /** The page to follow at the bucket. */
    public String page(PlanRequest request, Plan plan) {
        return PlanPage.of(request, plan, units);
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
