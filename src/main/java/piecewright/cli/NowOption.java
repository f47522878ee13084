package piecewright.cli;

import java.time.DateTimeException;
import java.time.Instant;
import java.time.LocalDateTime;
import java.time.OffsetDateTime;
import java.time.ZoneId;
import java.util.List;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Option;
import piecewright.text.Quoted;

/** The moment taken for the present. */
final class NowOption {
    @Option(
            names = "--now",
            paramLabel = "MOMENT",
            description = "Take this for the present, such as 2027-03-20T14:00 by the house's clock. Left out: now.")
    private @Nullable String now;

    Instant now(Surroundings surroundings, ZoneId zone) throws OptionException {
        if (now == null) return surroundings.clock().instant();
        String typed = now.strip();
        try {
            if (typed.matches(".*([zZ]|[+-]\\d{2}:\\d{2})$"))
                return OffsetDateTime.parse(typed).toInstant();
            LocalDateTime local = LocalDateTime.parse(typed.replace(' ', 'T'));
            List<java.time.ZoneOffset> offsets = zone.getRules().getValidOffsets(local);
            if (offsets.size() == 1) return local.toInstant(offsets.get(0));
        } catch (DateTimeException noMoment) {
            throw new OptionException(
                    "--now", "\"" + Quoted.shortly(typed) + "\" is no moment; write it like 2027-03-20T14:00");
        }
        throw new OptionException(
                "--now", typed + " is not one moment in " + zone + "; add the offset, such as 2027-10-31T02:30+01:00");
    }
}
