package piecewright;

import java.io.Console;
import java.io.FileDescriptor;
import java.io.FileOutputStream;
import java.io.OutputStreamWriter;
import java.io.PrintWriter;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Clock;
import java.util.Locale;
import java.util.Optional;
import java.util.UUID;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import piecewright.app.WorkspacePlace;
import piecewright.cli.Piecewright;
import piecewright.cli.ReaderMayLeave;
import piecewright.cli.Secrets;
import piecewright.cli.Surroundings;
import piecewright.plan.Continuation;
import piecewright.plan.ModelParameters;
import piecewright.plan.Planner;

/** Starts the program and gives it what belongs to this machine: streams, clock, locale, random identities. */
public final class Main {
    private Main() {}

    public static void main(String[] arguments) {
        Charset charset = charset(System.console());
        Surroundings surroundings = new Surroundings(
                new Surroundings.Streams(
                        writer(FileDescriptor.out, charset),
                        writer(FileDescriptor.err, charset),
                        Optional.ofNullable(System.console()).map(Main::keys)),
                Clock.systemDefaultZone(),
                Locale.getDefault(),
                UUID::randomUUID,
                new Planner(ModelParameters.defaults()),
                new Secrets(System.getenv(), Main::password),
                new Continuation(ModelParameters.defaults()),
                WorkspacePlace.usual(
                        System.getenv(),
                        System.getProperty("os.name", ""),
                        Path.of(System.getProperty("user.home", "."))));
        int code = Piecewright.run(surroundings, arguments);
        if (code != 0) System.exit(code);
    }

    /** Asks whoever sits there for a line. */
    private static Function<String, @Nullable String> keys(Console console) {
        return prompt -> console.readLine("%s", prompt);
    }

    /** Asked of whoever sits there, without showing it. */
    private static Optional<char[]> password() {
        Console console = System.console();
        return console == null ? Optional.empty() : Optional.ofNullable(console.readPassword("App password: "));
    }

    /** What a terminal wants; UTF-8 into files, pipes and terminals of which the machine knows nothing. */
    private static Charset charset(@Nullable Console console) {
        return console == null || console.charset().equals(StandardCharsets.US_ASCII)
                ? StandardCharsets.UTF_8
                : console.charset();
    }

    private static PrintWriter writer(FileDescriptor descriptor, Charset charset) {
        return new PrintWriter(new OutputStreamWriter(new ReaderMayLeave(new FileOutputStream(descriptor)), charset));
    }
}
