package piecewright.cli;

import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import piecewright.plan.Continuation;
import piecewright.plan.DemoPlan;
import piecewright.plan.ModelParameters;
import piecewright.plan.PlanRequest;
import piecewright.plan.PlanResult;
import piecewright.plan.Planner;

/** One run of the command line inside this process, with what it said. */
record Run(int code, String out, String err) {
    static final Instant NOW = Instant.parse("2027-02-15T10:00:00Z");
    static final UUID BATCH = UUID.fromString("5b0e86a1-6f1c-4b5e-9d5a-0a6c1d1c9b33");

    static final Continuation GOING_ON = new Continuation(ModelParameters.defaults());

    /** Where nothing is kept: tests name the files they mean. */
    static final Path NO_WORKSPACE = Path.of("target", "no-workspace");

    private static final Map<PlanRequest, PlanResult> PLANNED = new ConcurrentHashMap<>();

    /** The real planner, asked once for each wish in a whole test run. */
    static final Function<PlanRequest, PlanResult> REAL =
            request -> PLANNED.computeIfAbsent(request, new Planner(ModelParameters.defaults())::plan);

    /** Stands where nothing may be planned, because something before it must refuse. */
    static final Function<PlanRequest, PlanResult> NEVER = request -> {
        throw new AssertionError("the planner must not be asked");
    };

    static Run of(Function<PlanRequest, PlanResult> planner, Instant now, List<String> arguments) {
        return of(planner, now, Secrets.none(), arguments);
    }

    /** With somebody at the keys, who gives this answer to whatever is asked. */
    static Run answered(Instant now, String answer, List<String> arguments) {
        return of(REAL, now, Secrets.none(), Optional.of(prompt -> answer), arguments);
    }

    static Run of(Function<PlanRequest, PlanResult> planner, Instant now, Secrets secrets, List<String> arguments) {
        return of(planner, now, secrets, Optional.empty(), arguments);
    }

    private static Run of(
            Function<PlanRequest, PlanResult> planner,
            Instant now,
            Secrets secrets,
            Optional<Function<String, @Nullable String>> keys,
            List<String> arguments) {
        StringWriter out = new StringWriter();
        StringWriter err = new StringWriter();
        Surroundings surroundings = new Surroundings(
                new Surroundings.Streams(new PrintWriter(out), new PrintWriter(err), keys),
                Clock.fixed(now, ZoneOffset.UTC),
                Locale.ENGLISH,
                () -> BATCH,
                planner::apply,
                secrets,
                GOING_ON,
                NO_WORKSPACE);
        int code = Piecewright.run(surroundings, arguments.toArray(String[]::new));
        return new Run(code, out.toString(), err.toString());
    }

    static Run of(Function<PlanRequest, PlanResult> planner, String... arguments) {
        return of(planner, NOW, List.of(arguments));
    }

    /** Keeps the plan of the README in this file. */
    static void keepDemo(Path batch) {
        Run run = of(
                request -> new PlanResult.Planned(DemoPlan.plan()),
                NOW,
                plan(
                        "pale",
                        "two-row-barley",
                        "cool-garage",
                        "--malt",
                        "4 kg",
                        "--ready-by",
                        "2027-05-01",
                        "--into",
                        batch.toString()));
        if (run.code() != 0) throw new AssertionError(run.err());
    }

    /** The plan command with these options behind the usual ones, with all detail, which needs no bands. */
    static List<String> plan(String style, String lot, String house, String... more) {
        List<String> all = new ArrayList<>(List.of(
                "plan",
                "--style",
                style,
                "--lot",
                Path.of("demo-data", "lots", lot + ".json").toString(),
                "--house",
                Path.of("demo-data", "houses", house + ".json").toString(),
                "--full"));
        all.addAll(List.of(more));
        return all;
    }
}
