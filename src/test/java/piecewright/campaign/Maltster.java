package piecewright.campaign;

import java.time.Duration;
import java.time.Instant;
import java.time.LocalTime;
import java.time.ZoneId;
import piecewright.oracle.Told;

/** Somebody who follows a plan as people do: late, early, forgetful, with wet hands. */
final class Maltster {
    private final Dice dice;
    private final Temper temper;
    private final Lines lines;
    private final Slips slips;
    private final ZoneId zone;

    Maltster(Dice dice, Temper temper, Lines lines, ZoneId zone) {
        this.dice = dice;
        this.temper = temper;
        this.lines = lines;
        this.slips = new Slips(dice, lines);
        this.zone = zone;
    }

    /** When the step is really taken in hand. */
    Instant comesTo(Told.Step step, Instant now) {
        Instant at = step.at().plus(Duration.ofMinutes(dice.from(-5, 12)));
        if (dice.once(temper.late())) at = at.plus(Duration.ofMinutes(dice.from(30, dice.once(0.2) ? 1500 : 420)));
        else if (dice.once(temper.early())) at = at.minus(Duration.ofMinutes(dice.from(20, 240)));
        return at.isBefore(now) ? now : at;
    }

    /** Does the step or leaves it, writes it down or forgets to; gives back the moment after it. */
    Instant sees(Batch batch, Told.Step step, Instant now) {
        if (dice.once(temper.skips())) {
            batch.passOver(step);
            return now;
        }
        if (dice.once(temper.mistypes())) slip(batch, step, now);
        if (dice.once(temper.forgets())) {
            batch.passOver(step);
            return now;
        }
        Instant at = now;
        LocalTime clock = null;
        if (dice.once(0.3)) {
            clock = LocalTime.ofInstant(now, zone);
            at = now.plus(Duration.ofMinutes(dice.from(1, 180)));
        }
        String line = lines.did(step, clock);
        boolean kept = batch.record(at, line);
        if (!kept) batch.passOver(step);
        if (dice.once(temper.repeats()) && batch.record(at.plusSeconds(90), line)) strikeLast(batch, at);
        if (kept && dice.once(temper.corrects())) secondThought(batch, step, at);
        return at;
    }

    /** Types what was not meant, and mostly strikes it when it was kept. */
    private void slip(Batch batch, Told.Step step, Instant now) {
        int before = batch.diary().lastNumber();
        if (!batch.record(now, slips.instead(step))) return;
        if (batch.diary().lastNumber() == before) return;
        if (dice.once(0.15)) batch.slipStands();
        else
            for (int entry = batch.diary().lastNumber(), first = before; entry > first; entry--)
                if (batch.diary().has(entry)) strike(batch, entry, now);
    }

    private void strikeLast(Batch batch, Instant now) {
        strike(batch, batch.diary().lastNumber(), now);
    }

    private void strike(Batch batch, int entry, Instant now) {
        if (!batch.record(now.plusSeconds(60), "strike " + entry)) batch.strikeRefused(entry);
    }

    private void secondThought(Batch batch, Told.Step step, Instant at) {
        if (batch.record(at.plusSeconds(120), slips.secondThought(batch.diary().lastNumber(), step)))
            batch.slipStands();
    }

    /** Looks at the grain between two steps. */
    void idles(Batch batch, Told.Step next, Instant now) {
        if (dice.once(temper.measures())) batch.record(now, lines.measured(next));
    }

    /** Whether this is the moment for a new plan. */
    boolean wantsANewPlan() {
        return dice.once(temper.replans());
    }

    boolean isCurious() {
        return dice.once(temper.curious());
    }

    boolean hasTrouble() {
        return dice.once(temper.trouble());
    }
}
