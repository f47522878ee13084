package piecewright.learn;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.ArrayList;
import java.util.List;
import java.util.UUID;
import org.junit.jupiter.api.Test;
import piecewright.belief.Trait;
import piecewright.belief.Unknown;
import piecewright.plan.ActKind;
import piecewright.plan.ModelParameters;
import piecewright.plan.Timetable.Visit;

/** What nobody wrote down is inferred for learning as it is for a re-plan. */
class ForgottenDrainTest {
    private static final Unknown RATE = new Unknown(Trait.STEEP_RATE, MadeUpBatch.LOT.name());

    private static Visit visit(double hours, String id, ActKind kind, int number) {
        return new Visit(id, kind, number, MadeUpBatch.ORIGIN.plusSeconds(Math.round(hours * 3600)));
    }

    private static List<Visit> planned() {
        List<Visit> planned = new ArrayList<>();
        planned.add(visit(18, "steep-1.soak", ActKind.SOAK, 1));
        planned.add(visit(26, "steep-1.drain", ActKind.DRAIN, 1));
        planned.add(visit(38, "steep-2.soak", ActKind.SOAK, 2));
        planned.add(visit(46, "steep-2.drain", ActKind.DRAIN, 2));
        planned.add(visit(70, "floor.spread", ActKind.FLOOR, 0));
        return planned;
    }

    private static double rate(MadeUpBatch told) {
        Lessons.Batch batch = new Lessons.Batch(new UUID(1, 1), MadeUpBatch.REQUEST, 5, planned(), told.journal());
        Lessons.Outcome outcome = new Lessons(ModelParameters.defaults())
                .of(batch, new Lessons.Known(Learned.nothing(), Learned.nothing()), MadeUpBatch.END);
        return ((Lessons.Outcome.Taught) outcome).estimate().posterior().value(RATE);
    }

    @Test
    void aDrainThatWasForgottenTeachesTheSameUptake() {
        MadeUpBatch whole = new MadeUpBatch()
                .did(18, ActKind.SOAK)
                .did(26, ActKind.DRAIN)
                .did(38, ActKind.SOAK)
                .weighed(46, 7.45)
                .did(46, ActKind.DRAIN);
        MadeUpBatch forgotten = new MadeUpBatch()
                .did(18, ActKind.SOAK)
                .did(38, ActKind.SOAK)
                .weighed(46, 7.45)
                .did(46, ActKind.DRAIN);
        assertEquals(rate(whole), rate(forgotten), 1e-9);
    }
}
