package piecewright.cli;

import java.time.Duration;
import java.time.LocalTime;
import java.time.format.DateTimeParseException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Option;
import piecewright.app.CalendarManner;
import piecewright.calendar.ExportOptions;
import piecewright.calendar.ExportOptions.PassivePhases;
import piecewright.calendar.QuietHours;
import piecewright.text.DisplayUnits;
import piecewright.text.Quoted;

/** How calendar entries are wanted. */
final class EntryOptions {
    private static final int MINUTES_PER_DAY = 24 * 60;

    @Option(
            names = "--phases",
            negatable = true,
            description = "Entries for what the grain does by itself between steps, or none. What is chosen here, by"
                    + " --alarm and by --quiet is kept with the batch.")
    private @Nullable Boolean phases;

    @Option(
            names = "--alarm",
            paramLabel = "MINUTES|none",
            description =
                    "An alarm so long before each step; up to two. Left out: as chosen before, at first 30 minutes.")
    private List<String> alarms = new ArrayList<>();

    @Option(
            names = "--quiet",
            paramLabel = "HH:MM-HH:MM|none",
            description = "No alarm in these hours; it rings before they begin instead.")
    private @Nullable String quiet;

    /** Whether anything was chosen. */
    boolean given() {
        return phases != null || !alarms.isEmpty() || quiet != null;
    }

    /** What is chosen here; the rest as it was chosen before, or as usual. */
    CalendarManner manner(DisplayUnits units, Optional<ExportOptions> before) throws OptionException {
        ExportOptions known = before.orElseGet(ExportOptions::usual);
        PassivePhases shown = phases == null ? known.phases() : phases ? PassivePhases.SHOWN : PassivePhases.LEFT_OUT;
        return new CalendarManner(
                units, new ExportOptions(shown, alarms(known.alarms()), quietHours(known.quietHours())));
    }

    private List<Duration> alarms(List<Duration> before) throws OptionException {
        if (alarms.isEmpty()) return before;
        if (alarms.equals(List.of("none"))) return List.of();
        if (alarms.size() > 2) throw new OptionException("--alarm", "stands there too often; two alarms at most");
        List<Duration> leads = new ArrayList<>();
        for (String typed : alarms) {
            boolean whole = typed.matches("[0-9]{1,4}") && Integer.parseInt(typed) < MINUTES_PER_DAY;
            if (!whole) {
                throw new OptionException(
                        "--alarm", "must be whole minutes from 0 to 1439, or none alone, not " + quoted(typed));
            }
            Duration lead = Duration.ofMinutes(Integer.parseInt(typed));
            if (leads.contains(lead)) throw new OptionException("--alarm", "stands there twice alike; keep one");
            leads.add(lead);
        }
        return leads;
    }

    private Optional<QuietHours> quietHours(Optional<QuietHours> before) throws OptionException {
        if (quiet == null) return before;
        if (quiet.equals("none")) return Optional.empty();
        String[] ends = quiet.split("[-–]", -1);
        try {
            if (ends.length == 2) {
                LocalTime from = LocalTime.parse(ends[0].strip());
                LocalTime until = LocalTime.parse(ends[1].strip());
                if (!from.equals(until)) return Optional.of(new QuietHours(from, until));
            }
        } catch (DateTimeParseException notATime) {
            // told below
        }
        throw new OptionException("--quiet", quoted(quiet) + " is no stretch of hours; write it like 22:00-06:30");
    }

    private static String quoted(String typed) {
        return "\"" + Quoted.shortly(typed) + "\"";
    }
}
