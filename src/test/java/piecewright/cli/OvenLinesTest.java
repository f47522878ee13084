package piecewright.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import piecewright.cli.Batchwork.Planned;
import tools.jackson.databind.JsonNode;

/** Stews that are interrupted and roasts of several loads, as somebody types them at the oven. */
class OvenLinesTest {
    @TempDir
    private Path folder;

    private Batchwork batch(String name, String... wish) throws IOException {
        for (String file : List.of("lots/two-row-barley.json", "houses/terrace-kitchen.json")) {
            Path copy = folder.resolve(Path.of(file).getFileName());
            if (!Files.exists(copy)) Files.copy(Path.of("demo-data").resolve(file), copy);
        }
        Batchwork batch = new Batchwork(folder.resolve("workspace"), name);
        List<String> all = new ArrayList<>(List.of(
                "--lot",
                folder.resolve("two-row-barley.json").toString(),
                "--house",
                folder.resolve("terrace-kitchen.json").toString(),
                "--start",
                "2027-03-27",
                "--today",
                "2027-03-20"));
        all.addAll(List.of(wish));
        batch.planned(all.toArray(String[]::new));
        return batch;
    }

    /** When a re-plan has a step, or the kept plan where it does not move. */
    private static OffsetDateTime at(JsonNode replanned, String id) {
        for (JsonNode act : replanned.get("plan").get("acts")) {
            if (act.get("id").stringValue().equals(id))
                return OffsetDateTime.parse(act.get("startsAt").stringValue());
        }
        throw new AssertionError(id + " is not in " + replanned);
    }

    private static List<String> done(JsonNode where) {
        List<String> ids = new ArrayList<>();
        where.get("done").forEach(done -> ids.add(done.get("act").stringValue()));
        return ids;
    }

    @Test
    void anInterruptedStewGoesOnForTheMinutesItLacks() throws IOException {
        Batchwork crystal = batch("crystal", "--style", "crystal-light", "--grain", "4 kg");
        Planned stew = crystal.act("oven.stew");
        Duration whole =
                Duration.between(stew.at(), crystal.act("kiln.load-stewed").at());
        crystal.didAllBefore("oven.stew");
        OffsetDateTime cut = stew.at().plusMinutes(45);
        crystal.said("record", stew.at(), "stewing");
        crystal.said("record", cut, "stew interrupted, power out");
        OffsetDateTime dark = cut.plusMinutes(20);
        String where = crystal.said("where", dark).replaceAll("\\s+", " ");
        assertTrue(where.contains("Stewed for 45 min so far"), where);
        OffsetDateTime load = at(crystal.json("replan", dark), "kiln.load-stewed");
        assertFalse(load.isBefore(dark.plus(whole).minusMinutes(45)), "loaded " + load + " before it was stewed");
        crystal.said("record", dark, "power back");
        OffsetDateTime again = dark.plusMinutes(10);
        crystal.said("record", again, "stewing again");
        load = at(crystal.json("replan", again.plusMinutes(5), "--accept"), "kiln.load-stewed");
        assertFalse(load.isBefore(again.plus(whole).minusMinutes(45)), "loaded " + load + " before it was stewed");
        OffsetDateTime over = again.plus(whole).minusMinutes(45);
        crystal.said("record", over, "finished stewing");
        where = crystal.said("where", over);
        assertFalse(where.contains("so far"), where);
        crystal.said("record", over.plusMinutes(10), "loaded");
        JsonNode stands = crystal.json("where", over.plusMinutes(10));
        assertEquals(0, stands.get("questions").size(), stands.toString());
        assertEquals(1, done(stands).stream().filter("oven.stew"::equals).count(), stands.toString());
        assertTrue(done(stands).contains("kiln.load-stewed"), stands.toString());
        assertFalse(at(crystal.json("replan", over.plusMinutes(15)), "kiln.cure-stewed")
                .isBefore(over));
    }

    /** "roasting" as a load goes in and "roasted" as it comes out are one load, however many there are. */
    @Test
    void aRoastOfSeveralLoadsIsWrittenLoadByLoad() throws IOException {
        Batchwork amber = batch("amber", "--style", "amber", "--grain", "7 kg");
        List<Planned> loads =
                amber.acts().stream().filter(act -> act.kind().equals("roast")).toList();
        assertTrue(loads.size() >= 2, "the test needs several loads");
        amber.didAllBefore(loads.get(0).id());
        for (int load = 0; load < loads.size(); load++) {
            OffsetDateTime in = loads.get(load).at().plusMinutes(20);
            amber.said("record", in, "roasting");
            List<String> running = done(amber.json("where", in.plusMinutes(5)));
            assertEquals(
                    load + 1,
                    running.stream().filter(id -> id.startsWith("oven.roast")).count(),
                    running.toString());
            OffsetDateTime out = in.plusMinutes(95);
            amber.said("record", out, load == 0 ? "roasted" : "out of the oven");
            JsonNode stands = amber.json("where", out);
            assertEquals(0, stands.get("questions").size(), stands.toString());
            assertEquals(
                    load + 1,
                    done(stands).stream()
                            .filter(id -> id.startsWith("oven.roast"))
                            .count(),
                    stands.toString());
            boolean last = load == loads.size() - 1;
            assertEquals(last, stands.get("next").isEmpty(), stands.toString());
        }
    }

    @Test
    void oneWordForAllLoadsIsTheLastOfThem() throws IOException {
        Batchwork amber = batch("amber", "--style", "amber", "--grain", "7 kg");
        List<Planned> loads =
                amber.acts().stream().filter(act -> act.kind().equals("roast")).toList();
        amber.didAllBefore(loads.get(0).id());
        OffsetDateTime out = loads.get(loads.size() - 1).at().plusMinutes(110);
        amber.said("record", out, "roasted");
        JsonNode stands = amber.json("where", out);
        assertEquals(
                loads.size(),
                done(stands).stream().filter(id -> id.startsWith("oven.roast")).count(),
                stands.toString());
        assertTrue(stands.get("next").isEmpty(), stands.toString());
    }
}
