package piecewright.cli;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.time.Clock;
import java.util.Locale;
import java.util.Objects;
import java.util.UUID;
import java.util.function.Function;
import java.util.function.Supplier;
import piecewright.plan.Continuation;
import piecewright.plan.PlanRequest;
import piecewright.plan.PlanResult;

/**
 * What a command needs from outside.
 *
 * @param streams where it speaks
 * @param clock says what day it is and stamps calendars
 * @param locale whose decimal sign and names of days are meant unless an option says otherwise
 * @param newId gives each new batch its identity
 * @param planner makes plans
 * @param secrets where passwords come from
 * @param continuation goes on with them
 * @param workspace where lots, houses and batches are kept unless an option says otherwise
 */
public record Surroundings(
        Streams streams,
        Clock clock,
        Locale locale,
        Supplier<UUID> newId,
        Function<PlanRequest, PlanResult> planner,
        Secrets secrets,
        Continuation continuation,
        Path workspace) {
    public Surroundings {
        Objects.requireNonNull(streams);
        Objects.requireNonNull(clock);
        Objects.requireNonNull(locale);
        Objects.requireNonNull(newId);
        Objects.requireNonNull(planner);
        Objects.requireNonNull(secrets);
        Objects.requireNonNull(continuation);
        Objects.requireNonNull(workspace);
    }

    /** Answers go out, refusals to err; nothing that is written there drives a terminal. */
    public record Streams(PrintWriter out, PrintWriter err) {
        public Streams {
            out = new TerminalWriter(Objects.requireNonNull(out));
            err = new TerminalWriter(Objects.requireNonNull(err));
        }
    }
}
