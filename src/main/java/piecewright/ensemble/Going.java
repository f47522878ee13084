package piecewright.ensemble;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import piecewright.plan.PhaseKind;
import piecewright.plan.Simulation.Passing;
import piecewright.process.PieceState;
import piecewright.process.Stage;

/**
 * What goes on between two acts, in strides; a stride that was foreseen is walked without working it out again.
 * Scratch space of one run, mutable, used by one thread.
 */
final class Going {
    /** Judgement: half an hour before the heat; {@code RehearsalTest} holds it against the five minutes of the reference. */
    private static final double STRIDE_HOURS = 0.5;
    /** Judgement: a quarter of an hour in couch and kiln; the same test. A pile near its peak takes the reference's step. */
    private static final double HEATED_STRIDE_HOURS = 0.25;
    /** Judgement: from here on a pile's heat is cut within minutes, °C. */
    private static final double STIFF_C = 40;

    private static final Set<PhaseKind> HEATED =
            EnumSet.of(PhaseKind.COUCHING, PhaseKind.COOLING, PhaseKind.DRYING, PhaseKind.CURING);

    private final PhaseKind kind;
    private final Optional<Stage> stage;
    private final boolean heated;
    /** States whole strides apart, foreseen from the first of them; empty once the piece is past or beside them. */
    private final List<PieceState> foreseen = new ArrayList<>();

    private int here;

    Going(Passing passing) {
        this.kind = passing.kind();
        this.stage = passing.expected();
        this.heated = HEATED.contains(kind);
    }

    /** Told of every step that is walked. */
    interface Watcher {
        void saw(PieceState before, PieceState after, double fromMinute, double stepMinutes);
    }

    PhaseKind kind() {
        return kind;
    }

    /** What beginning this phase changes at once. */
    PieceState entered(PieceState before) {
        return stage.map(each -> each.entered(before)).orElse(before);
    }

    /** The piece at a later minute. */
    PieceState walked(PieceState start, double fromMinute, double untilMinute, Watcher watcher) {
        if (stage.isEmpty()) return start;
        PieceState now = start;
        double from = fromMinute;
        while (untilMinute - from > 1e-6) {
            double stride = strideMinutes(now);
            double step = Math.min(stride, untilMinute - from);
            PieceState before = now;
            if (step == stride && here + 1 < foreseen.size() && foreseen.get(here) == before) {
                now = foreseen.get(++here);
            } else {
                now = stage.get().step(before, from / 60, step / 60);
            }
            watcher.saw(before, now, from, step);
            from += step;
        }
        return now;
    }

    /** The same foreseen: nothing happens. */
    PieceState ahead(PieceState start, double fromMinute, double untilMinute) {
        if (stage.isEmpty()) return start;
        if (here >= foreseen.size() || foreseen.get(here) != start) {
            foreseen.clear();
            foreseen.add(start);
            here = 0;
        }
        PieceState then = start;
        double from = fromMinute;
        for (int i = here + 1; untilMinute - from > 1e-6; i++) {
            double stride = strideMinutes(then);
            double step = Math.min(stride, untilMinute - from);
            if (step < stride) return stage.get().step(then, from / 60, step / 60);
            if (i == foreseen.size()) foreseen.add(stage.get().step(then, from / 60, step / 60));
            then = foreseen.get(i);
            from += step;
        }
        return then;
    }

    private double strideMinutes(PieceState state) {
        if (!heated) return 60 * STRIDE_HOURS;
        boolean stiff = kind == PhaseKind.COUCHING && state.grainC() > STIFF_C;
        return 60 * (stiff ? Stage.STEP_HOURS : HEATED_STRIDE_HOURS);
    }
}
