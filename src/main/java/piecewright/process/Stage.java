package piecewright.process;

/**
 * One passive phase of malting as a pure function of state and time: deterministic, no clock, no files. Times are
 * hours since the origin of the {@link Surroundings} the stage was built with.
 */
public interface Stage {
    /** Length of the reference integrator's step, hours. Judgement: 5 min, held in tests against an adaptive one. */
    double STEP_HOURS = 5.0 / 60;

    /** What entering the phase changes at once (an immersion wets the husk, a turning cools the bed). */
    default PieceState entered(PieceState before) {
        return before;
    }

    /** The state one integrator step later; beyond STEP_HOURS the caller answers for the error. */
    PieceState step(PieceState start, double atHours, double stepHours);

    /** The state at untilHours when the phase is entered at fromHours, fromHours at most untilHours. */
    default PieceState run(PieceState start, double fromHours, double untilHours, Observer observer) {
        PieceState now = entered(start);
        observer.saw(fromHours, now);
        double atHours = fromHours;
        while (untilHours - atHours > 1e-9) {
            double stepHours = Math.min(STEP_HOURS, untilHours - atHours);
            now = step(now, atHours, stepHours);
            atHours += stepHours;
            observer.saw(atHours, now);
        }
        return now;
    }

    default PieceState run(PieceState start, double fromHours, double untilHours) {
        return run(start, fromHours, untilHours, (atHours, state) -> {});
    }

    /** Told the state after entry and after each step. */
    interface Observer {
        void saw(double atHours, PieceState state);
    }
}
