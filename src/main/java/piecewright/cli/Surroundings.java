package piecewright.cli;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.time.Clock;
import java.util.Locale;
import java.util.Objects;
import java.util.Optional;
import java.util.UUID;
import java.util.function.Function;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;
import piecewright.plan.Continuation;
import piecewright.plan.Plans;

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
        Plans planner,
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

    /**
     * Answers go out, refusals to err, and nothing written there drives a terminal; keys asks whoever sits there, and is
     * empty where nobody does.
     */
    public record Streams(PrintWriter out, PrintWriter err, Optional<Function<String, @Nullable String>> keys) {
        public Streams {
            out = new TerminalWriter(Objects.requireNonNull(out));
            err = new TerminalWriter(Objects.requireNonNull(err));
            Objects.requireNonNull(keys);
        }

        /** Streams with nobody behind them. */
        public Streams(PrintWriter out, PrintWriter err) {
            this(out, err, Optional.empty());
        }

        /** Whether a person sees them as they are written. */
        public boolean terminal() {
            return keys.isPresent();
        }

        /** What is typed after a prompt; empty where nobody sits there or the input is at its end. */
        Optional<String> answer(String prompt) {
            return keys.map(ask -> ask.apply(prompt));
        }

        /** Writes over the line that stands where refusals go, with words of the program's own. */
        void printOver(String words) {
            ((TerminalWriter) err).printOver(words);
        }
    }
}
