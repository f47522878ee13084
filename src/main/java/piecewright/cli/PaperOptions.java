package piecewright.cli;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Option;
import piecewright.app.Printing;
import piecewright.style.MaltStyle;

/** Which papers to take to the garage are written. */
final class PaperOptions {
    @Option(
            names = "--sheet",
            paramLabel = "FILE.html",
            description = "Write the bench sheet: one page file to print or to open on a phone.")
    private @Nullable Path sheet;

    @Option(
            names = "--chart",
            paramLabel = "FILE",
            description = "Draw the plan along its days as a picture: FILE.svg or FILE.png.")
    private @Nullable Path chart;

    @Option(
            names = "--couch-chart",
            paramLabel = "FILE",
            description = "Draw the hot couch hour by hour as a picture: FILE.svg or FILE.png.")
    private @Nullable Path couch;

    /** Whether any paper is asked for. */
    boolean isAsked() {
        return sheet != null || chart != null || couch != null;
    }

    /** Refuses a picture of the couch for a style that has none. */
    void mustSuit(MaltStyle style) throws OptionException {
        if (couch != null && style.couches().hot().isEmpty()) {
            throw new OptionException("--couch-chart", style.title() + " has no hot couch; leave the option out");
        }
    }

    /**
     * @param others files that are read or written already, which no paper may replace
     */
    Printing.Targets targets(List<Path> others) throws OptionException {
        List<Path> taken = new ArrayList<>(others);
        return new Printing.Targets(
                taken("--sheet", sheet, taken), taken("--chart", chart, taken), taken("--couch-chart", couch, taken));
    }

    private static Optional<Path> taken(String option, @Nullable Path file, List<Path> taken) throws OptionException {
        if (file == null) return Optional.empty();
        for (Path other : taken) {
            if (file.toAbsolutePath().normalize().equals(other.toAbsolutePath().normalize())) {
                throw new OptionException(option, file + " is named by another option too; name another");
            }
        }
        taken.add(file);
        return Optional.of(file);
    }

    /** What was written, for a person to read. */
    static String written(Printing.Targets targets) {
        StringBuilder lines = new StringBuilder();
        targets.sheet()
                .ifPresent(
                        file -> lines.append("\nBench sheet in ").append(file).append('\n'));
        targets.chart()
                .ifPresent(file -> lines.append("\nPicture in ").append(file).append('\n'));
        targets.couch()
                .ifPresent(file ->
                        lines.append("\nPicture of the couch in ").append(file).append('\n'));
        return lines.toString();
    }
}
