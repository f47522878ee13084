package piecewright.ensemble;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import piecewright.ensemble.Breach.Severity;
import piecewright.ensemble.Script.Line;
import piecewright.plan.ActKind;
import piecewright.plan.Rules;
import piecewright.plan.Slip;
import piecewright.plan.Timetable.Visit;

/** Follows the kiln: heat rises not before the plan says, not before the malt weighs dry enough, not with nobody there. */
final class KilnFollower {
    /** Judgement: somebody waiting for a gate weighs again after half an hour. */
    private static final int LOOK_MINUTES = 30;
    /** Judgement: malt that loses less than 0.3 % of its weight in an hour is as dry as that heat makes it; practice. */
    private static final double CONSTANT_PER_HOUR = 0.003;
    /** Judgement: and only below this moisture does constant weight mean dry rather than stuck. */
    private static final double CONSTANT_BELOW_FRACTION = 0.15;
    /** Judgement: nobody waits longer for a gate than this. */
    private static final int LONGEST_WAIT_MINUTES = 8 * 24 * 60;

    private final Script script;
    private final UnderWay piece;
    private final List<Line> stirs;
    private final Line off;
    private int shiftMinutes;

    KilnFollower(Script script, UnderWay piece) {
        this.script = script;
        this.piece = piece;
        this.stirs = new ArrayList<>(script.of(ActKind.STIR));
        this.off = script.first(ActKind.OFF);
    }

    void follow() {
        shiftMinutes = piece.minute() - script.first(ActKind.LOAD).minute();
        for (Line line : script.lines()) {
            switch (line.visit().kind()) {
                case RAISE, CURE -> raise(line);
                case LOWER -> lower(line);
                default -> {}
            }
        }
        unload();
        deroot();
    }

    /** Whoever turned the heat up stays until it is turned down again. */
    private void lower(Line line) {
        int at = Math.max(piece.minute() + 1, line.minute() + Math.min(0, shiftMinutes));
        stirUntil(at);
        piece.walkTo(at);
        piece.meet(new Visit(line.id(), ActKind.LOWER, line.visit().number(), script.instant(at)));
    }

    /** The cure that is followed by taking off the kiln. */
    private Line cure() {
        List<Line> cures = script.of(ActKind.CURE);
        return cures.get(cures.size() - 1);
    }

    private void raise(Line line) {
        int giveUp = line.minute() + Math.max(0, shiftMinutes) + LONGEST_WAIT_MINUTES;
        int at = Math.max(piece.minute() + 1, line.minute() + Math.min(0, shiftMinutes));
        if (at != line.minute()) at = next(line, at);
        piece.watchFor(line.act().setting().gateFraction().orElse(1));
        if (at > giveUp) at = script.moments().next(piece.minute() + 1, line.workMinutes());
        stirUntil(at);
        piece.walkTo(at);
        while (!isOpen(line)) {
            int later = next(line, at + LOOK_MINUTES);
            if (later > giveUp || later >= Moments.NEVER) {
                piece.breach(line.id(), Fault.TOO_WET, Severity.HARD);
                break;
            }
            at = later;
            stirUntil(at);
            piece.walkTo(at);
        }
        double open = piece.dry().happened() ? piece.dry().atMinutes() : 0;
        double lateHours = (at - Math.max(open, line.minute() + Math.max(0, shiftMinutes))) / 60;
        piece.checkLate(line.id(), lateHours, Rules.KILN_WAIT.softHours(), Rules.KILN_WAIT.hardHours());
        piece.meet(new Visit(line.id(), line.visit().kind(), line.visit().number(), script.instant(at)));
    }

    /** Next moment this heat may be set: somebody there, to stay or to come back when the cure is over. */
    private int next(Line line, int fromMinute) {
        int at = script.moments().nextAttended(fromMinute, line.workMinutes(), stayMinutes(line));
        boolean cures = line.visit().kind() == ActKind.CURE && !mustBeWatched(line);
        for (int tries = 0; cures && at < Moments.NEVER && unloading(at) == Moments.NEVER && tries < 300; tries++) {
            at = script.moments().nextAttended(at + LOOK_MINUTES, line.workMinutes(), line.workMinutes());
        }
        return at;
    }

    /** When malt whose cure began then comes off with nobody watching it; NEVER when nobody comes in time. */
    private int unloading(int curedMinute) {
        int planned = curedMinute + off.minute() - cure().minute();
        int soft = curedMinute + (int) (60 * script.rules().cureSlip().softHours());
        int at = planned == off.minute() ? planned : script.moments().next(planned, off.workMinutes());
        if (at <= soft) return at;
        int shortest =
                curedMinute + (int) Math.ceil(60 * script.rules().cureSlip().shortestHours());
        return script.moments().last(shortest, soft, off.workMinutes());
    }

    private boolean isOpen(Line line) {
        double weighed = piece.weighedFraction(line.dryKg());
        double gate = line.act().setting().gateFraction().orElse(1);
        return weighed <= gate || weighed <= CONSTANT_BELOW_FRACTION && piece.lossPerHour() < CONSTANT_PER_HOUR;
    }

    /** How long somebody must stay once this heat is set: until unloading where the heater may not be left. */
    private int stayMinutes(Line line) {
        if (!mustBeWatched(line)) return line.workMinutes();
        Optional<Line> down = script.of(ActKind.LOWER).stream()
                .filter(lower -> lower.minute() > line.minute())
                .findFirst();
        if (down.isPresent()) return down.get().minute() - line.minute();
        int planned = off.minute() - line.minute();
        int cure = off.minute() - cure().minute();
        int shortest = (int) Math.ceil(60 * script.rules().cureSlip().shortestHours());
        return Math.max(line.workMinutes(), planned - Math.max(0, cure - shortest)) + off.workMinutes();
    }

    private boolean mustBeWatched(Line line) {
        var drying = script.blueprint().setup().outfit().drying();
        var heater = line.visit().kind() == ActKind.CURE ? drying.curer() : drying.dryer();
        return Rules.needsSomebody(heater.control(), line.act().setting().setC().orElse(0));
    }

    private void stirUntil(int minute) {
        while (!stirs.isEmpty() && stirs.get(0).minute() + shiftMinutes < minute) {
            Line stir = stirs.remove(0);
            int at = stir.minute() + shiftMinutes;
            if (at <= piece.minute() || shiftMinutes != 0 && script.moments().next(at, stir.workMinutes()) != at) {
                continue;
            }
            piece.walkTo(at);
            piece.meet(new Visit(stir.id(), ActKind.STIR, 0, script.instant(at)));
        }
    }

    private void unload() {
        Line cure = cure();
        int cured = piece.minute();
        int at = cured + off.minute() - cure.minute();
        if (mustBeWatched(cure)) {
            int until = script.moments().attendedUntil(cured) - off.workMinutes();
            if (until > cured) at = Math.min(at, until);
        } else if (unloading(cured) != Moments.NEVER) {
            at = unloading(cured);
        }
        piece.walkTo(at);
        Slip slip = script.rules().cureSlip();
        double hours = (at - cured) / 60.0;
        piece.checkLate(off.id(), hours, slip.softHours(), slip.hardHours());
        if (hours < slip.shortestHours() - 1e-6) piece.breach(off.id(), Fault.EARLY, Severity.HARD);
        boolean tooLate = script.readyBy()
                .filter(by -> !script.has(ActKind.ROAST) && off.minute() <= by && piece.minute() > by)
                .isPresent();
        if (tooLate) piece.breach(off.id(), Fault.LATE, Severity.HARD);
        piece.meet(new Visit(off.id(), ActKind.OFF, 0, script.instant(at)));
    }

    private void deroot() {
        Line deroot = script.first(ActKind.DEROOT);
        int offAt = piece.minute();
        int shift = offAt - off.minute();
        int earliest = Math.max(offAt + (int) (60 * Rules.DEROOT_SHORTEST_HOURS), deroot.minute() + Math.min(0, shift));
        int at = shift == 0 ? deroot.minute() : script.moments().next(earliest, deroot.workMinutes());
        piece.walkTo(at);
        Slip slip = script.rules().derootSlip();
        piece.checkLate(deroot.id(), (at - offAt) / 60.0, slip.softHours(), slip.hardHours());
        piece.meet(new Visit(deroot.id(), ActKind.DEROOT, 0, script.instant(at)));
    }
}
