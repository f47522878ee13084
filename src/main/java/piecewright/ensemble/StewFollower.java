package piecewright.ensemble;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import piecewright.ensemble.Breach.Severity;
import piecewright.ensemble.Script.Line;
import piecewright.plan.ActKind;
import piecewright.plan.InnerSchedule;
import piecewright.plan.Timetable.Visit;
import piecewright.process.PieceState;
import piecewright.process.Stage;
import piecewright.process.kiln.CoveredStew;
import piecewright.style.StewSchedule;

/** Follows a stew: corns are squeezed as planned and on, and it ends when they are liquid, as long as somebody can stay. */
final class StewFollower {
    /** Judgement: corns are squeezed again after as long. */
    private static final int AGAIN_MINUTES = 15;
    /** Judgement: nine corns in ten without a white core; the last ones do no harm. */
    private static final double LIQUID_RATIO = 0.95;
    /** Judgement: a piece left so far from liquid is brown malt in many corns. */
    private static final double WHITE_RATIO = 0.6;

    private static final Set<InnerSchedule.Kind> SQUEEZED =
            EnumSet.of(InnerSchedule.Kind.SAMPLE, InnerSchedule.Kind.STOP);

    private final Script script;
    private final UnderWay piece;
    private final Line stew;
    private final Line load;
    private final StewSchedule schedule;

    StewFollower(Script script, UnderWay piece) {
        this.script = script;
        this.piece = piece;
        this.stew = script.first(ActKind.STEW);
        this.load = script.first(ActKind.LOAD);
        this.schedule = script.style().oven().stew().orElseThrow();
    }

    /** From green malt until it is spread to dry; minutes under the cover. */
    int follow() {
        InnerSchedule inner = stew.act().inner().orElseThrow();
        int prepare = (int) inner.first(InnerSchedule.Kind.GOES_IN).at().toMinutes();
        CoveredStew stage = piece.reality().stew();
        PieceState malt = piece.now();
        double done = 0;
        int under = 0;
        for (int look : looks(inner, prepare)) {
            for (int at = under; at < look; at += step(at, look)) {
                double hours = step(at, look) / 60.0;
                PieceState next = stage.step(malt, at / 60.0, hours);
                done += hours * stage.progressPerHour((malt.grainC() + next.grainC()) / 2);
                malt = next;
            }
            under = look;
            if (look >= schedule.shortestMinutes() && done >= LIQUID_RATIO) break;
        }
        if (done < LIQUID_RATIO) {
            piece.breach(stew.id(), Fault.UNDERGROWN, done < WHITE_RATIO ? Severity.HARD : Severity.SOFT);
        }
        int end = piece.minute() + prepare + under;
        Visit visit = new Visit(stew.id(), ActKind.STEW, 0, script.instant(piece.minute()));
        piece.meetAtTheOven(visit, malt, end);
        piece.meet(new Visit(load.id(), ActKind.LOAD, 0, script.instant(end)));
        return under;
    }

    private static int step(int at, int look) {
        return Math.min((int) Math.round(60 * Stage.STEP_HOURS), look - at);
    }

    /** Minutes under the cover after which corns are squeezed. */
    private List<Integer> looks(InnerSchedule inner, int prepare) {
        List<Integer> looks = new ArrayList<>();
        for (InnerSchedule.InnerStep step : inner.steps()) {
            if (SQUEEZED.contains(step.kind())) looks.add((int) step.at().toMinutes() - prepare);
        }
        int look = looks.get(looks.size() - 1) + AGAIN_MINUTES;
        while (look <= schedule.longestMinutes() && canStay(prepare + look + load.workMinutes())) {
            looks.add(look);
            look += AGAIN_MINUTES;
        }
        return looks;
    }

    private boolean canStay(int minutes) {
        return script.moments().next(piece.minute(), minutes) == piece.minute();
    }
}
