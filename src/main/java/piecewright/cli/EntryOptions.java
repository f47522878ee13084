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

    @Option(names = "--no-phases", description = "No entries for what the grain does by itself between acts.")
    private boolean noPhases;

    @Option(
            names = "--alarm",
            paramLabel = "MINUTES|none",
            description = "An alarm so long before each act; up to two. Left out: one of 30 minutes.")
    private List<String> alarms = new ArrayList<>();

    @Option(
            names = "--quiet",
            paramLabel = "HH:MM-HH:MM",
            description = "No alarm in these hours; it rings before they begin instead.")
    private @Nullable String quiet;

    CalendarManner manner(DisplayUnits units) throws OptionException {
        PassivePhases phases = noPhases ? PassivePhases.LEFT_OUT : PassivePhases.SHOWN;
        return new CalendarManner(units, new ExportOptions(phases, alarms(), quietHours()));
    }

    private List<Duration> alarms() throws OptionException {
        if (alarms.isEmpty()) return ExportOptions.usual().alarms();
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

    private Optional<QuietHours> quietHours() throws OptionException {
        if (quiet == null) return Optional.empty();
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
