package piecewright.calendar;

import java.time.Duration;
import java.util.List;
import java.util.Objects;
import java.util.Optional;

/**
 * What a person may choose about their calendar.
 *
 * @param alarms how long before each act an alarm rings: whole minutes, 0 up to 24 hours (exclusive), at most two, all different
 * @param quietHours hours in which none may ring
 */
public record ExportOptions(PassivePhases phases, List<Duration> alarms, Optional<QuietHours> quietHours) {
    public ExportOptions {
        Objects.requireNonNull(phases);
        Objects.requireNonNull(quietHours);
        alarms = List.copyOf(alarms);
        CalendarEvent.mustBeAlarms(alarms);
    }

    /** Whether the stretches between acts are events too; those in which somebody must stay always are. */
    public enum PassivePhases {
        SHOWN,
        LEFT_OUT
    }

    /** Phases shown, one alarm half an hour before each act, no quiet hours. */
    public static ExportOptions usual() {
        return new ExportOptions(PassivePhases.SHOWN, List.of(Duration.ofMinutes(30)), Optional.empty());
    }
}
