package piecewright.cli;

import java.nio.file.Path;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Option;
import piecewright.app.Keeping;
import piecewright.app.PlanWish;
import piecewright.store.StoreException;

/** Which files are written. */
final class FileOptions {
    @Option(
            names = "--calendar",
            paramLabel = "FILE",
            description = "Write the steps as an iCalendar file; the same file again updates it.")
    private @Nullable Path calendar;

    @Option(
            names = "--into",
            paramLabel = "NAME|FILE",
            description = "Keep the batch under this name in the workspace, or in this file.")
    private @Nullable Path into;

    Keeping.Targets targets(PlanWish wish, WorkspaceOptions workspace, Surroundings surroundings)
            throws OptionException, StoreException {
        mustDiffer("--calendar", calendar, "--lot", wish.lotFile());
        mustDiffer("--calendar", calendar, "--house", wish.houseFile());
        mustDiffer("--into", into, "--lot", wish.lotFile());
        mustDiffer("--into", into, "--house", wish.houseFile());
        mustDiffer("--into", into, "--calendar", calendar);
        Optional<Path> batch = into == null ? Optional.empty() : Optional.of(workspace.batchToKeep(into, surroundings));
        return new Keeping.Targets(batch, Optional.ofNullable(calendar));
    }

    private static void mustDiffer(String option, @Nullable Path file, String other, @Nullable Path otherFile)
            throws OptionException {
        if (file == null || otherFile == null) return;
        if (file.toAbsolutePath().normalize().equals(otherFile.toAbsolutePath().normalize())) {
            throw new OptionException(option, file + " is the file of " + other + "; name another");
        }
    }
}
