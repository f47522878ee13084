package piecewright.desktop;

import java.nio.file.Path;
import java.time.Clock;
import java.util.Objects;
import java.util.UUID;
import java.util.function.Supplier;
import piecewright.app.HowSure;
import piecewright.plan.Continuation;
import piecewright.plan.Plans;
import piecewright.text.DisplayUnits;

/**
 * What the window needs from outside.
 *
 * @param folder the workspace; made with a demo when there is none
 * @param units whose units and language are shown
 * @param clock says what day it is and moves the now-line
 * @param newId gives each new batch its identity
 * @param planner makes plans
 * @param continuation goes on with them
 * @param sure says how sure they are
 */
public record Setting(
        Path folder,
        DisplayUnits units,
        Clock clock,
        Supplier<UUID> newId,
        Plans planner,
        Continuation continuation,
        HowSure sure) {
    public Setting {
        Objects.requireNonNull(folder);
        Objects.requireNonNull(units);
        Objects.requireNonNull(clock);
        Objects.requireNonNull(newId);
        Objects.requireNonNull(planner);
        Objects.requireNonNull(continuation);
        Objects.requireNonNull(sure);
    }
}
