package piecewright.campaign;

/**
 * How somebody is, each a chance a step.
 *
 * @param late hours late
 * @param early hours early
 * @param forgets does it and writes nothing
 * @param skips never does it
 * @param mistypes types something else first
 * @param repeats types it again
 * @param corrects mends or strikes what was written
 * @param curious asks for pages, calendars, the agenda
 * @param replans asks for a new plan
 * @param measures reads thermometers, counts shoots
 * @param trouble the power fails, the clock is wrong
 */
record Temper(
        double late,
        double early,
        double forgets,
        double skips,
        double mistypes,
        double repeats,
        double corrects,
        double curious,
        double replans,
        double measures,
        double trouble) {
    static Temper any(Dice dice) {
        double sloppy = dice.between(0, 1);
        return new Temper(
                0.05 + 0.35 * sloppy,
                0.15 * dice.between(0, 1),
                0.15 * sloppy,
                0.08 * sloppy,
                0.25 * dice.between(0, 1),
                0.1 * dice.between(0, 1),
                0.15 * dice.between(0, 1),
                0.15,
                dice.between(0.15, 0.6),
                0.5 * dice.between(0, 1),
                0.06 * dice.between(0, 1));
    }
}
