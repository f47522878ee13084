package piecewright.cli;

import java.nio.file.Path;
import picocli.AutoComplete;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Help.Ansi;
import piecewright.app.NotWrittenException;
import piecewright.store.StoreException;

/** The command line as a whole. */
@Command(
        name = "piecewright",
        mixinStandardHelpOptions = true,
        version = "piecewright 0.1.0",
        description = "Plans the malting of grain at home: every step with its time, its weight and its reason.",
        footer = {"", "Begin with: piecewright plan --help"})
public final class Piecewright {
    private Piecewright() {}

    /** Runs one command and returns its exit code. */
    public static int run(Surroundings surroundings, String... arguments) {
        Surroundings.Streams streams = surroundings.streams();
        CommandLine line = new CommandLine(new Piecewright())
                .addSubcommand(new PlanCommand(surroundings))
                .addSubcommand(new CalendarCommand(surroundings))
                .addSubcommand(new AgendaCommand(surroundings))
                .addSubcommand(new RecordCommand(surroundings))
                .addSubcommand(new WhereCommand(surroundings))
                .addSubcommand(new PapersCommand(surroundings))
                .addSubcommand(new ReplanCommand(surroundings))
                .addSubcommand(new FinishCommand(surroundings))
                .addSubcommand(new CompareCommand(surroundings))
                .addSubcommand(new StylesCommand(surroundings))
                .addSubcommand(new JudgeCommand(surroundings))
                .addSubcommand(new BuyCommand(surroundings))
                .addSubcommand(new ColourCommand(surroundings))
                .addSubcommand(new LearnCommand(surroundings))
                .addSubcommand(new LearnedCommand(surroundings))
                .addSubcommand(new PackCommand(surroundings))
                .addSubcommand(new UnpackCommand(surroundings))
                .addSubcommand(new WindowCommand(surroundings))
                .addSubcommand(new CommandLine.HelpCommand())
                .addSubcommand("completion", new AutoComplete.GenerateCompletion())
                .setExpandAtFiles(false)
                .setOut(streams.out())
                .setErr(streams.err())
                .setColorScheme(CommandLine.Help.defaultColorScheme(Ansi.OFF))
                .setUsageHelpWidth(100)
                .setParameterExceptionHandler((failure, words) -> Ending.of(failure, streams.err()))
                .setExecutionExceptionHandler((failure, command, parsed) -> Ending.of(failure, streams.err()));
        if (arguments.length == 0) line.usage(streams.out());
        int code = arguments.length == 0 ? Ending.DONE : line.execute(arguments);
        if (streams.out().checkError()) code = Ending.of(outputClosed(), streams.err());
        streams.err().flush();
        return code;
    }

    private static NotWrittenException outputClosed() {
        return new NotWrittenException(new StoreException(
                Path.of("standard output"), "cannot be written; check the disk or program it is led to"));
    }
}
