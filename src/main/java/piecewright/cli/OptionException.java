package piecewright.cli;

/** An option is missing, doubled or cannot be read. The message is one line: option, what is wrong, how to mend. */
final class OptionException extends Exception {
    private static final long serialVersionUID = 1L;

    OptionException(String option, String whatAndMend) {
        super((option + ": " + whatAndMend).replaceAll("[\\p{Cntrl}\\u2028\\u2029]+", " "));
    }
}
