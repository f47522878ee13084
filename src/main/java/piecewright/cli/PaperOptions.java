package piecewright.cli;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Option;
import piecewright.app.Printing;

/** Which papers to take to the garage are written. */
final class PaperOptions {
    @Option(
            names = "--sheet",
            paramLabel = "FILE.html",
            description = "Write the bench sheet: one page file to print or to open on a phone.")
    private @Nullable Path sheet;

    @Option(names = "--chart", paramLabel = "FILE.svg", description = "Draw the plan along its days as a picture.")
    private @Nullable Path chart;

    /**
     * @param others files that are read or written already, which no paper may replace
     */
    Printing.Targets targets(List<Path> others) throws OptionException {
        List<Path> taken = new ArrayList<>(others);
        if (sheet != null) mustDiffer("--sheet", sheet, taken);
        if (sheet != null) taken.add(sheet);
        if (chart != null) mustDiffer("--chart", chart, taken);
        return new Printing.Targets(Optional.ofNullable(sheet), Optional.ofNullable(chart));
    }

    private static void mustDiffer(String option, Path file, List<Path> taken) throws OptionException {
        for (Path other : taken) {
            if (file.toAbsolutePath().normalize().equals(other.toAbsolutePath().normalize())) {
                throw new OptionException(option, file + " is named by another option too; name another");
            }
        }
    }
}
