package piecewright.ensemble;

import java.time.Duration;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import piecewright.ensemble.Breach.Severity;
import piecewright.ensemble.Script.Line;
import piecewright.plan.ActKind;
import piecewright.plan.InnerSchedule;
import piecewright.plan.InnerSchedule.InnerStep;
import piecewright.plan.RoastBlock;
import piecewright.plan.Slip;
import piecewright.plan.Timetable.Visit;
import piecewright.process.PieceState;
import piecewright.process.kiln.RoastCourse;

/**
 * Follows a roast: the first load comes out at the sample that looks most like the colour kept for comparison, never
 * after the latest minute; the others as the first one showed.
 */
final class RoastFollower {
    /** Judgement: crushed malt told by eye from a kept sample of its colour; ln. A seventh more or less passes unseen. */
    private static final double EYE_SD = 0.15;

    private static final Set<InnerSchedule.Kind> SAMPLED = EnumSet.of(
            InnerSchedule.Kind.SAMPLE,
            InnerSchedule.Kind.STOP,
            InnerSchedule.Kind.SAMPLE_AGAIN,
            InnerSchedule.Kind.LATEST);

    private final Script script;
    private final UnderWay piece;
    private final List<Line> roasts;
    private final PieceState malt;
    private final double seenRatio;

    RoastFollower(Script script, UnderWay piece) {
        this.script = script;
        this.piece = piece;
        this.roasts = script.of(ActKind.ROAST);
        this.malt = piece.now();
        this.seenRatio = Math.exp(EYE_SD * piece.luck().nextGaussian());
    }

    /**
     * What came out of the oven.
     *
     * @param inOven for how long each load was in
     * @param hot the malt before it is cooled
     */
    record Out(Duration inOven, PieceState hot) {}

    /** From loose malt until the last load is cool. */
    Out follow() {
        Out out = out(roasts.get(0));
        Line deroot = script.first(ActKind.DEROOT);
        int since = piece.minute();
        int busy = deroot.workMinutes();
        boolean asPlanned = since == deroot.minute();
        for (int load = 1; load <= roasts.size(); load++) {
            Line line = roasts.get(load - 1);
            int at = asPlanned ? line.minute() : script.moments().next(since + busy, line.workMinutes());
            piece.walkTo(at);
            Slip slip = script.rules().roastSlip(busy);
            piece.checkLate(line.id(), (at - since) / 60.0, slip.softHours(), slip.hardHours());
            PieceState mixed = RoastBlock.mixed(malt, out.hot(), load / (double) roasts.size())
                    .withGrainC(malt.grainC());
            Visit visit = new Visit(line.id(), ActKind.ROAST, load, script.instant(at));
            piece.meetAtTheOven(visit, mixed, at + line.workMinutes());
            since = at;
            busy = line.workMinutes();
        }
        checkRest();
        return out;
    }

    private Out out(Line first) {
        InnerSchedule inner = first.act().inner().orElseThrow();
        Duration in = inner.first(InnerSchedule.Kind.GOES_IN).at();
        List<InnerStep> samples = inner.steps().stream()
                .filter(step -> SAMPLED.contains(step.kind()))
                .toList();
        List<Duration> times = samples.stream().map(step -> step.at().minus(in)).toList();
        RoastCourse course = piece.reality().roast();
        List<PieceState> states = course.at(malt, times);
        int taken = taken(first, inner, samples, states);
        return new Out(times.get(taken), states.get(taken));
    }

    /** The sample that looks nearest to the colour wanted, by the pace at which the plan expects it to darken. */
    private int taken(Line first, InnerSchedule inner, List<InnerStep> samples, List<PieceState> states) {
        double wantedEbc = inner.first(InnerSchedule.Kind.STOP).expect().colourEbc();
        for (int i = 0; i + 1 < samples.size(); i++) {
            double seen = Math.log(seenRatio * states.get(i).kiln().colourEbc() / wantedEbc);
            double pace = pace(samples, i);
            if (Math.abs(seen) > Math.abs(seen + pace)) continue;
            if (i == 0) checkEnd(first, Fault.EARLY, seen / pace);
            return i;
        }
        int last = samples.size() - 1;
        double seen = Math.log(seenRatio * states.get(last).kiln().colourEbc() / wantedEbc);
        checkEnd(first, Fault.LATE, -seen / pace(samples, last - 1));
        return last;
    }

    /** By how much the logarithm of the colour is to rise until the next sample, more than 0. */
    private static double pace(List<InnerStep> samples, int at) {
        double ratio = samples.get(at + 1).expect().colourEbc()
                / samples.get(at).expect().colourEbc();
        return Math.max(1e-6, Math.log(ratio));
    }

    /** Samples lie as far apart as the end may slip softly; twice that is its hard limit. */
    private void checkEnd(Line first, Fault fault, double samplesOff) {
        if (samplesOff > 2) piece.breach(first.id(), fault, Severity.HARD);
        else if (samplesOff > 1) piece.breach(first.id(), fault, Severity.SOFT);
    }

    private void checkRest() {
        Line last = roasts.get(roasts.size() - 1);
        boolean tooLate = script.readyBy()
                .filter(by -> last.minute() + last.workMinutes() <= by && piece.minute() > by)
                .isPresent();
        if (tooLate) piece.breach(last.id(), Fault.LATE, Severity.HARD);
    }
}
