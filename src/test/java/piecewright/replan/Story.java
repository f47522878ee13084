package piecewright.replan;

import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import piecewright.journal.Entry;
import piecewright.journal.Journal;
import piecewright.journal.Report;
import piecewright.journal.Report.Did;
import piecewright.journal.Report.Observed;
import piecewright.journal.Report.Tare;
import piecewright.journal.Sign;
import piecewright.plan.Act;
import piecewright.plan.ActKind;
import piecewright.plan.Continuation;
import piecewright.plan.Households;
import piecewright.plan.ModelParameters;
import piecewright.plan.Plan;
import piecewright.plan.PlanRequest;
import piecewright.plan.PlanRequest.Amount;
import piecewright.plan.PlanRequest.When;
import piecewright.plan.PlanResult;
import piecewright.plan.Planner;
import piecewright.plan.Timetable;
import piecewright.replan.ReplanResult.Replanned;

/** A batch told entry by entry, beside the plan it was begun with. */
record Story(PlanRequest wish, Plan plan, Journal journal) {
    static final Tare TUB = new Tare("blue tub", 1.84);
    private static final Continuation CONTINUATION = new Continuation(ModelParameters.defaults());

    /** Five kilograms of barley in a cool garage, pale. */
    static final Story PALE = of(new PlanRequest(
            Households.pale(),
            Households.barley(),
            Households.garage(9, 14),
            new Amount.RawGrain(5),
            new When.ReadyBy(LocalDate.of(2031, 5, 1), LocalDate.of(2031, 1, 1))));

    static Story of(PlanRequest wish) {
        PlanResult result = new Planner(ModelParameters.defaults()).plan(wish);
        Plan plan = result.match(PlanResult.Planned::plan, not -> {
            throw new AssertionError(not.obstacles().toString());
        });
        return new Story(wish, plan, Journal.empty());
    }

    Act act(String id) {
        return plan.acts().stream()
                .filter(act -> act.id().equals(id))
                .findFirst()
                .orElseThrow();
    }

    Story tells(Instant at, Report report) {
        return tells(at, Optional.empty(), report);
    }

    private Story tells(Instant at, Optional<String> actId, Report report) {
        return new Story(wish, plan, journal.with(new Entry(journal.nextNumber(), at, at, actId, report)));
    }

    Story saw(Instant at, Sign sign) {
        return tells(at, new Observed(sign, ""));
    }

    Story did(String id, Duration later) {
        Act act = act(id);
        Report did = act.kind() == ActKind.SPRINKLE
                ? new Did(ActKind.SPRINKLE, act.setting().waterL())
                : Did.of(act.kind());
        return tells(act.startsAt().plus(later), Optional.of(id), did);
    }

    /** Everything before this act was done by plan. */
    Story byPlanUntil(String id) {
        Story story = this;
        for (Act act : plan.acts()) {
            if (act.id().equals(id)) return story;
            story = story.did(act.id(), Duration.ZERO);
        }
        throw new AssertionError("no such act: " + id);
    }

    Batch batch() {
        return new Batch(wish, plan.outcome().rawGrainKg(), Timetable.of(plan).visits(), 0, journal);
    }

    Where where(Instant now) {
        return new Position(CONTINUATION).of(batch(), List.of(TUB), now).orElseThrow();
    }

    ReplanResult result(Instant now) {
        return new Replanner(CONTINUATION).replan(batch(), List.of(TUB), now);
    }

    Replanned replanned(Instant now) {
        return result(now).match(replanned -> replanned, not -> {
            throw new AssertionError(not.obstacles().toString());
        });
    }

    /** One line per move, for reading. */
    static String told(List<Move> moves) {
        List<String> lines = new ArrayList<>();
        for (Move move : moves) {
            lines.add(move.actId() + " " + move.from().map(Instant::toString).orElse("new") + " -> "
                    + move.to().map(Instant::toString).orElse("dropped") + " " + move.because());
        }
        return String.join("\n", lines);
    }
}
