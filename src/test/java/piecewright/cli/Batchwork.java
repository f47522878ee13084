package piecewright.cli;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.OffsetDateTime;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.ObjectMapper;

/** One batch driven from the terminal, by its name in a workspace of its own. */
final class Batchwork {
    private static final DateTimeFormatter CLOCK = DateTimeFormatter.ofPattern("HH:mm", Locale.ROOT);
    private static final Path SCENARIOS = Path.of("src/test/resources/scenarios");

    private final Path workspace;
    private final String name;
    private JsonNode plan = new ObjectMapper().createObjectNode();

    /** An act as the plan has it. */
    record Planned(String id, String kind, OffsetDateTime at, double massKg, JsonNode node) {}

    Batchwork(Path workspace, String name) {
        this.workspace = workspace;
        this.name = name;
    }

    /** A copy of a scenario's lot or house, for what is learned of it lies beside it. */
    String file(String scenario) {
        Path copy = workspace.resolveSibling(scenario + ".json");
        try {
            if (!Files.exists(copy)) Files.copy(SCENARIOS.resolve(scenario + ".json"), copy);
        } catch (IOException failed) {
            throw new UncheckedIOException(failed);
        }
        return copy.toString();
    }

    private Run run(List<String> words) {
        List<String> all = new ArrayList<>(words);
        all.addAll(List.of("--workspace", workspace.toString()));
        return Run.of(Run.REAL, Run.NOW, all);
    }

    /** Runs a command about the batch at a moment; it must end well. */
    String said(String command, OffsetDateTime now, String... words) {
        List<String> all = new ArrayList<>(List.of(command, name));
        all.addAll(List.of(words));
        all.addAll(List.of("--now", now.toString()));
        Run run = run(all);
        if (run.code() != 0) throw new AssertionError(all + " ended with " + run.code() + ": " + run.out() + run.err());
        return run.out();
    }

    /** Runs a command that must end with 2; what it said as JSON. */
    JsonNode refused(String command, OffsetDateTime now, String... words) {
        List<String> all = new ArrayList<>(List.of(command, name));
        all.addAll(List.of(words));
        all.addAll(List.of("--now", now.toString()));
        Run run = run(all);
        if (run.code() != 2) throw new AssertionError(all + " ended with " + run.code() + ": " + run.out() + run.err());
        return new ObjectMapper().readTree(run.out());
    }

    JsonNode json(String command, OffsetDateTime now, String... words) {
        List<String> all = new ArrayList<>(List.of(words));
        all.add("--json");
        return new ObjectMapper().readTree(said(command, now, all.toArray(String[]::new)));
    }

    /** Plans and keeps it. */
    void planned(String... wish) {
        List<String> all = new ArrayList<>(List.of("plan", "--into", name, "--skip-checks", "--json"));
        all.addAll(List.of(wish));
        Run run = run(all);
        if (run.code() != 0) throw new AssertionError(run.out() + run.err());
        plan = new ObjectMapper().readTree(run.out()).get("plan");
    }

    JsonNode plan() {
        return plan;
    }

    List<Planned> acts() {
        List<Planned> acts = new ArrayList<>();
        for (JsonNode act : plan.get("acts")) {
            acts.add(new Planned(
                    act.get("id").stringValue(),
                    act.get("kind").stringValue(),
                    OffsetDateTime.parse(act.get("startsAt").stringValue()),
                    act.get("expect").get("massKg").doubleValue(),
                    act));
        }
        return acts;
    }

    Planned act(String id) {
        return acts().stream().filter(act -> act.id().equals(id)).findFirst().orElseThrow();
    }

    /** Writes the act down ten minutes after its time, in the words somebody would use. */
    void did(Planned act) {
        String time = act.at().format(CLOCK);
        String weight = String.format(Locale.ROOT, "%.3f kg", act.massKg());
        String line = switch (act.kind()) {
            case "soak" -> "soaked " + time;
            case "drain" -> "drained " + weight + " " + time;
            case "floor" -> "floored " + time;
            case "sprinkle" -> "sprinkled 0.3 L " + time;
            case "wither" -> "withering " + time;
            case "load" -> "loaded " + weight + " " + time;
            case "off" -> "off the kiln " + weight + " " + time;
            case "deroot" -> "derooted " + time;
            default -> act.kind() + " " + time;
        };
        said("record", act.at().plus(Duration.ofMinutes(10)), line);
    }

    /** Everything by plan before this act. */
    void didAllBefore(String id) {
        for (Planned act : acts()) {
            if (act.id().equals(id)) return;
            did(act);
        }
        throw new AssertionError("no such act: " + id);
    }
}
