package piecewright.calendar;

import java.time.Instant;
import java.time.ZonedDateTime;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import piecewright.plan.Act;
import piecewright.plan.Check;
import piecewright.plan.Phase;
import piecewright.plan.Plan;

/** The words of a calendar, in the person's language and units; made elsewhere. Same arguments, same words. */
public interface EventTexts {
    /** Short, such as "Drain, rinse, weigh"; cut at 120 characters. */
    String actTitle(Plan.Subject subject, Act act);

    /** What to do and decide first, then when it may be done, what to find, cautions; cut at 2,000 characters together. */
    List<String> actLines(Plan.Subject subject, Act act, Optional<Instant> staysUntil);

    /** Of an act that was done: marked so, with what was measured. */
    String doneTitle(Plan.Subject subject, Act act, Done done);

    List<String> doneLines(Plan.Subject subject, Act act, Done done);

    String checkTitle(Plan.Subject subject, Check check);

    List<String> checkLines(Plan.Subject subject, Check check);

    String phaseTitle(Plan.Subject subject, Phase phase);

    List<String> phaseLines(Plan.Subject subject, Phase phase);

    /** A wall time without its offset, which is added behind it, such as "Sun 28 Mar 05:00". */
    default String moment(ZonedDateTime at) {
        return DateTimeFormatter.ofPattern("EEE d MMM HH:mm", Locale.ENGLISH).format(at);
    }
}
