package piecewright.campaign;

import com.sun.management.OperatingSystemMXBean;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.lang.management.ManagementFactory;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.UUID;
import piecewright.cli.Piecewright;
import piecewright.cli.Secrets;
import piecewright.cli.Surroundings;
import piecewright.plan.Continuation;
import piecewright.plan.ModelParameters;
import piecewright.plan.Planner;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.ObjectMapper;

/** The command line inside this process, wired as the program wires it, with a clock that stands where it is put. */
final class Terminal {
    private static final int FAULT = 70;

    private static final OperatingSystemMXBean CPU =
            (OperatingSystemMXBean) ManagementFactory.getOperatingSystemMXBean();

    private final Path workspace;
    private final List<String> manners;
    private final Verdicts verdicts;
    private long ids;

    /** @param manners options that everybody of this house gives, such as units */
    Terminal(Path workspace, List<String> manners, Verdicts verdicts) {
        this.workspace = workspace;
        this.manners = manners;
        this.verdicts = verdicts;
    }

    /** What a command ended with and said. */
    record Said(int code, String out, String err) {
        boolean well() {
            return code == 0;
        }

        JsonNode json() {
            return new ObjectMapper().readTree(out);
        }
    }

    Path workspace() {
        return workspace;
    }

    Said run(Instant now, String... words) {
        return run(now, List.of(words));
    }

    /** Runs a command; a fault of the program, whatever was typed, is one of the batch. */
    Said run(Instant now, List<String> words) {
        List<String> all = new ArrayList<>(words.subList(0, 1));
        all.addAll(manners);
        all.addAll(List.of("--workspace", workspace.toString()));
        all.addAll(words.subList(1, words.size()));
        StringWriter out = new StringWriter();
        StringWriter err = new StringWriter();
        Said said;
        long began = CPU.getProcessCpuTime();
        try {
            int code = Piecewright.run(around(now, out, err), all.toArray(String[]::new));
            said = new Said(code, out.toString(), err.toString());
        } catch (RuntimeException | Error thrown) {
            said = new Said(FAULT, out.toString(), err + " thrown: " + thrown);
            verdicts.wrote(now, all, said);
            verdicts.found("an exception left the program", words.get(0), thrown.toString());
            return said;
        }
        verdicts.wrote(now, all, said);
        verdicts.took(words.get(0), (CPU.getProcessCpuTime() - began) / 1e9);
        if (said.code() == FAULT) verdicts.found("a fault of the program", words.get(0), said.err());
        if (said.code() == 3) verdicts.found("a file could not be written", words.get(0), said.err());
        boolean raw = (said.out() + said.err()).chars().anyMatch(c -> c < ' ' && c != '\n' && c != '\t' && c != '\r');
        if (raw) verdicts.found("a control character reached the terminal", words.get(0), "");
        return said;
    }

    private Surroundings around(Instant now, StringWriter out, StringWriter err) {
        return new Surroundings(
                new Surroundings.Streams(new PrintWriter(out), new PrintWriter(err)),
                Clock.fixed(now, ZoneOffset.UTC),
                Locale.ENGLISH,
                () -> new UUID(workspace.hashCode(), ids++),
                new Planner(ModelParameters.defaults())::plan,
                Secrets.none(),
                new Continuation(ModelParameters.defaults()),
                workspace);
    }
}
