package piecewright.cli;

import picocli.CommandLine.Option;
import piecewright.ensemble.Members;

/** Whether to work out how sure a plan is. */
final class SureOptions {
    private static final int MOST_MEMBERS = 5000;

    @Option(
            names = "--sure",
            description = "Work out how sure the plan is: a band for each step, its chance to hold, what would help.")
    private boolean sure;

    @Option(
            names = "--ways",
            paramLabel = "NUMBER",
            description = "With --sure: follow the plan through so many ways it may go. Left out: ${DEFAULT-VALUE}.")
    private int ways = Members.USUAL;

    boolean sure() {
        return sure;
    }

    int members() throws OptionException {
        if (ways < 20 || ways > MOST_MEMBERS) {
            throw new OptionException("--ways", "must be a number from 20 to " + MOST_MEMBERS + ", not " + ways);
        }
        return ways;
    }
}
