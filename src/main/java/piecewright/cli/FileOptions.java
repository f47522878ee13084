package piecewright.cli;

import java.nio.file.Path;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Option;
import piecewright.app.Keeping;
import piecewright.app.PlanWish;

/** Which files are written. */
final class FileOptions {
    @Option(
            names = "--calendar",
            paramLabel = "FILE",
            description = "Write the acts as an iCalendar file; the same file again updates it.")
    private @Nullable Path calendar;

    @Option(
            names = "--into",
            paramLabel = "FILE",
            description = "Keep the batch in this file, with what its calendar entries are called.")
    private @Nullable Path into;

    Keeping.Targets targets(PlanWish wish) throws OptionException {
        mustDiffer("--calendar", calendar, "--lot", wish.lotFile());
        mustDiffer("--calendar", calendar, "--house", wish.houseFile());
        mustDiffer("--into", into, "--lot", wish.lotFile());
        mustDiffer("--into", into, "--house", wish.houseFile());
        mustDiffer("--into", into, "--calendar", calendar);
        return new Keeping.Targets(Optional.ofNullable(into), Optional.ofNullable(calendar));
    }

    private static void mustDiffer(String option, @Nullable Path file, String other, @Nullable Path otherFile)
            throws OptionException {
        if (file == null || otherFile == null) return;
        if (file.toAbsolutePath().normalize().equals(otherFile.toAbsolutePath().normalize())) {
            throw new OptionException(option, file + " is the file of " + other + "; name another");
        }
    }
}
