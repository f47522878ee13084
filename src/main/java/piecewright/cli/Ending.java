package piecewright.cli;

import java.io.PrintWriter;
import picocli.CommandLine;
import picocli.CommandLine.MissingParameterException;
import picocli.CommandLine.OverwrittenOptionException;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.UnmatchedArgumentException;
import piecewright.app.NotWrittenException;
import piecewright.store.StoreException;

/** How a run ends: the only place where failures become exit codes and lines on the error stream. */
final class Ending {
    static final int DONE = 0;
    static final int NOT_POSSIBLE = 1;
    static final int BAD_INPUT = 2;
    static final int NOT_WRITTEN = 3;
    static final int FAULT = 70;

    private Ending() {}

    /** Says the failure in one line and gives its exit code. */
    static int of(Exception failure, PrintWriter err) {
        err.println("piecewright: " + sentence(failure));
        err.flush();
        return code(failure);
    }

    private static int code(Exception failure) {
        if (failure instanceof NotWrittenException) return NOT_WRITTEN;
        boolean input = failure instanceof StoreException
                || failure instanceof OptionException
                || failure instanceof ParameterException;
        return input ? BAD_INPUT : FAULT;
    }

    private static String sentence(Exception failure) {
        if (failure instanceof ParameterException parameter) return oneLine(sentence(parameter));
        if (code(failure) != FAULT) return oneLine(String.valueOf(failure.getMessage()));
        return oneLine("this is a fault of the program, not yours; please report it: " + failure);
    }

    private static String sentence(ParameterException failure) {
        if (failure instanceof UnmatchedArgumentException unmatched) {
            String word = unmatched.getUnmatched().get(0);
            boolean atTheTop = failure.getCommandLine().getParent() == null;
            String noOption = atTheTop ? "there is no such command" : "this word belongs to no option; quote values";
            String what = word.startsWith("-") ? "there is no such option" : noOption;
            String near = unmatched.getSuggestions().stream()
                    .filter(suggestion -> word.startsWith("-") || !suggestion.startsWith("-"))
                    .findFirst()
                    .map(suggestion -> "did you mean " + suggestion + "?")
                    .orElse("see " + command(failure.getCommandLine()) + " --help");
            return word + ": " + what + "; " + near;
        }
        if (failure instanceof MissingParameterException missing) {
            return missing.getMissing().get(0).paramLabel().isEmpty()
                    ? String.valueOf(missing.getMessage())
                    : name(missing) + ": its value is missing; write it behind the option, in quotes if it has blanks";
        }
        if (failure instanceof OverwrittenOptionException twice) {
            return name(twice) + ": stands there twice; keep one";
        }
        if (String.valueOf(failure.getMessage()).contains("unmappable characters")) {
            return "a file's name holds letters that this terminal's language settings cannot pass on; set them to UTF-8,"
                    + " such as LC_ALL=C.UTF-8, or name the file in plain letters";
        }
        return String.valueOf(failure.getMessage()) + "; see " + command(failure.getCommandLine()) + " --help";
    }

    private static String name(MissingParameterException missing) {
        return missing.getMissing().get(0) instanceof CommandLine.Model.OptionSpec option
                ? option.longestName()
                : missing.getMissing().get(0).paramLabel();
    }

    private static String name(OverwrittenOptionException twice) {
        return twice.getOverwritten() instanceof CommandLine.Model.OptionSpec option
                ? option.longestName()
                : twice.getOverwritten().paramLabel();
    }

    private static String command(CommandLine line) {
        return line.getCommandSpec().qualifiedName();
    }

    private static String oneLine(String text) {
        return text.replaceAll("[\\p{Cntrl}\\u2028\\u2029]+", " ").strip();
    }
}
