package piecewright.cli;

import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.function.Supplier;

/**
 * Where passwords come from.
 *
 * @param environment variables of the environment
 * @param asked types it in, unseen; empty when there is nobody to ask. The caller wipes what it gets
 */
public record Secrets(Map<String, String> environment, Supplier<Optional<char[]>> asked) {
    public Secrets {
        environment = Map.copyOf(environment);
        Objects.requireNonNull(asked);
    }

    /** No variables and nobody to ask. */
    public static Secrets none() {
        return new Secrets(Map.of(), Optional::empty);
    }

    @Override
    public String toString() {
        return "Secrets[]";
    }
}
