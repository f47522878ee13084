package piecewright.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** More than one batch of the cool garage at once, whose one person cannot be in two places. */
class SeveralBatchesTest {
    @TempDir
    Path folder;

    private record Work(String batch, OffsetDateTime from, OffsetDateTime until) {}

    private static JsonNode json(Run run) {
        assertEquals(0, run.code(), run.err() + run.out());
        return new JsonMapper().readTree(run.out());
    }

    private static void add(List<Work> work, String batch, JsonNode acts) {
        for (JsonNode act : acts) {
            OffsetDateTime from = OffsetDateTime.parse(act.get("startsAt").asString());
            work.add(new Work(batch, from, from.plusMinutes(act.get("minutes").asLong())));
        }
    }

    private static void apart(List<Work> work) {
        work.sort(Comparator.comparing(Work::from));
        for (int i = 1; i < work.size(); i++) {
            assertFalse(work.get(i).from().isBefore(work.get(i - 1).until()), work.get(i - 1) + " and " + work.get(i));
        }
    }

    private Run planned(String amount, String... more) {
        List<String> words = new ArrayList<>(List.of("--malt", amount, "--ready-by", "2027-05-15", "--skip-checks"));
        words.addAll(List.of(more));
        return Run.of(
                Run.REAL, Run.NOW, Run.plan("pale", "two-row-barley", "cool-garage", words.toArray(String[]::new)));
    }

    @Test
    void aWishLargerThanTheKitIsPlannedInBatchesThatShareIt() {
        Path kept = folder.resolve("big.json");
        JsonNode plans =
                json(planned("16 kg", "--into", kept.toString(), "--json")).get("plans");
        assertEquals(2, plans.size());
        List<Work> work = new ArrayList<>();
        double maltKg = 0;
        List<Work> kiln = new ArrayList<>();
        for (JsonNode plan : plans) {
            maltKg += plan.get("finishedMaltKg").asDouble();
            add(work, plan.get("startsAt").asString(), plan.get("acts"));
            kiln.add(inTheKiln(plan.get("acts")));
        }
        assertEquals(16, maltKg, 0.05);
        apart(work);
        apart(kiln);
        assertTrue(Files.exists(folder.resolve("big-1.json")) && Files.exists(folder.resolve("big-2.json")));
        assertFalse(Files.exists(kept), "two batches never lie in one file");
    }

    private static Work inTheKiln(JsonNode acts) {
        List<Work> loaded = new ArrayList<>();
        for (JsonNode act : acts) {
            if (act.get("id").asString().matches("kiln\\.(load|off)")) add(loaded, "kiln", List.of(act));
        }
        return new Work("kiln", loaded.get(0).from(), loaded.get(1).until());
    }

    private static void add(List<Work> work, String batch, List<JsonNode> acts) {
        add(work, batch, new JsonMapper().createArrayNode().addAll(acts));
    }

    @Test
    void whatNoNumberOfBatchesHoldsIsRefusedWithWhatIsTooSmall() {
        Run run = planned("900 kg");
        assertEquals(1, run.code());
        assertTrue(run.out().contains("the largest vessel holds"), run.out());
    }

    @Test
    void aBatchBesideAnotherIsOnOneListWithItAndNothingMeets() {
        Path first = folder.resolve("first.json");
        Path second = folder.resolve("second.json");
        assertEquals(0, planned("4 kg", "--into", first.toString()).code());
        Run beside = planned("3 kg", "--into", second.toString(), "--beside", first.toString());
        assertEquals(0, beside.code(), beside.err());
        JsonNode acts = json(Run.of(
                        Run.NEVER,
                        "agenda",
                        first.toString(),
                        second.toString(),
                        "--now",
                        "2027-03-01T00:00",
                        "--days",
                        "90",
                        "--json"))
                .get("acts");
        List<Work> work = new ArrayList<>();
        add(work, "both", acts);
        assertTrue(work.size() > 30, "steps of both: " + work.size());
        apart(work);
        List<OffsetDateTime> starts = new ArrayList<>();
        for (JsonNode act : acts) {
            if (act.get("id").asString().equals("steep-1.soak")) {
                starts.add(OffsetDateTime.parse(act.get("startsAt").asString()));
            }
        }
        assertEquals(2, starts.size());
        Duration between = Duration.between(starts.get(0), starts.get(1)).abs();
        assertTrue(between.compareTo(Duration.ofDays(14)) < 0, "side by side, not weeks apart: " + starts);
    }

    @Test
    void aKeptBatchRemembersBesideWhatItWasPlanned() {
        Path first = folder.resolve("first.json");
        Path second = folder.resolve("second.json");
        planned("4 kg", "--into", first.toString());
        planned("3 kg", "--into", second.toString(), "--beside", first.toString());
        Run again = Run.of(Run.NEVER, "where", second.toString(), "--now", "2027-03-02T00:00");
        assertEquals(0, again.code(), again.err());
        String besides = new JsonMapper()
                .readTree(second.toFile())
                .at("/request/wish/besides")
                .asString();
        assertTrue(besides.contains("plywood box kiln"), besides);
    }

    @Test
    void aBatchIsNotPlannedBesideItself() {
        Path first = folder.resolve("first.json");
        planned("4 kg", "--into", first.toString());
        Run again = planned("4 kg", "--into", first.toString(), "--beside", first.toString());
        assertEquals(2, again.code());
        assertTrue(again.err().contains("name only others"), again.err());
    }

    @Test
    void aBatchOfAnotherHouseTakesNothingHere() {
        Path other = folder.resolve("other.json");
        Run run = Run.of(
                Run.REAL,
                Run.NOW,
                Run.plan(
                        "pale",
                        "two-row-barley",
                        "workshop",
                        "--malt",
                        "3 kg",
                        "--ready-by",
                        "2027-05-15",
                        "--skip-checks",
                        "--into",
                        other.toString()));
        assertEquals(0, run.code(), run.out() + run.err());
        Run beside = planned("3 kg", "--beside", other.toString());
        assertEquals(2, beside.code());
        assertTrue(beside.err().contains("leave it out, or plan with its house"), beside.err());
    }
}
