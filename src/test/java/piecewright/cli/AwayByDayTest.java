package piecewright.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalTime;
import java.time.OffsetDateTime;
import java.time.ZoneId;
import java.time.ZonedDateTime;
import java.util.List;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import tools.jackson.databind.JsonNode;

/**
 * A farmer who is away on weekdays from 07:30 to 17:30, and a heater nobody may leave alone over 60 °C: whatever kiln
 * earlier batches told of, no plan of the rest has such heat run alone. The oracle judges every plan here too.
 */
class AwayByDayTest {
    private static final ZoneId BERLIN = ZoneId.of("Europe/Berlin");
    private static final LocalTime LEAVES = LocalTime.of(7, 30);
    private static final LocalTime IS_BACK = LocalTime.of(17, 30);
    private static final double ALONE_AT_MOST_C = 60;

    @TempDir
    private Path folder;

    private Batchwork planned(String name) throws IOException {
        Path air = folder.resolve("shed.csv");
        if (!Files.exists(air)) Files.copy(Path.of("src/test/resources/scenarios/shed.csv"), air);
        Batchwork batch = new Batchwork(folder.resolve("workspace"), name);
        batch.planned(
                "--style",
                "pale",
                "--lot",
                batch.file("away-barley"),
                "--house",
                batch.file("away-farm"),
                "--grain",
                "8 kg",
                "--start",
                "2027-10-15",
                "--today",
                "2027-10-10");
        return batch;
    }

    private static OffsetDateTime at(String local) {
        return ZonedDateTime.parse(local + "+02:00[Europe/Berlin]").toOffsetDateTime();
    }

    private static void upToTheKiln(Batchwork batch) {
        batch.said("record", at("2027-10-15T20:00"), "soaked");
        batch.said("record", at("2027-10-16T07:00"), "drained");
        batch.said("record", at("2027-10-23T07:10"), "really loaded 11.0 kg");
    }

    @ParameterizedTest
    @CsvSource({"no other batch, '', ''", "a fast kiln, 8.60 kg, 7.10 kg", "a slow kiln, 10.40 kg, 9.70 kg"})
    void noHeatRunsAloneWhateverTheHouseHasLearned(String house, String evening, String morning) throws IOException {
        if (!evening.isEmpty()) {
            Batchwork first = planned("first");
            upToTheKiln(first);
            first.said("record", at("2027-10-23T18:00"), evening);
            first.said("record", at("2027-10-24T08:00"), morning);
            first.said("learn", at("2027-10-24T08:05"));
        }
        assertEquals(!evening.isEmpty(), Files.exists(folder.resolve("away-farm.learned.json")), house);
        Batchwork batch = planned("second");
        upToTheKiln(batch);
        OffsetDateTime monday = at("2027-10-25T06:45");
        batch.said("record", monday, "6.94 kg");
        for (OffsetDateTime now :
                List.of(monday, monday.plusMinutes(1), at("2027-10-25T17:35"), at("2027-10-26T06:45"))) {
            JsonNode plan = batch.json("replan", now).get("plan");
            judge(plan, now, house);
        }
        JsonNode accepted = batch.json("replan", monday, "--accept").get("plan");
        judge(accepted, monday, house);
    }

    /** Set-points from the plan, hours as the house file has them; nothing of it from the program. */
    private static void judge(JsonNode plan, OffsetDateTime now, String house) {
        int hot = 0;
        JsonNode acts = plan.get("acts");
        for (int i = 0; i + 1 < acts.size(); i++) {
            JsonNode set = acts.get(i);
            OffsetDateTime from = OffsetDateTime.parse(set.get("startsAt").stringValue());
            boolean heats = set.has("setC") && set.get("id").stringValue().startsWith("kiln.");
            if (!heats || from.isBefore(now) || set.get("setC").doubleValue() <= ALONE_AT_MOST_C) continue;
            hot++;
            OffsetDateTime until = until(acts, i);
            for (OffsetDateTime one = from; one.isBefore(until); one = one.plusMinutes(1)) {
                ZonedDateTime local = one.atZoneSameInstant(BERLIN);
                boolean away = local.getDayOfWeek().getValue() <= 5
                        && !local.toLocalTime().isBefore(LEAVES)
                        && local.toLocalTime().isBefore(IS_BACK);
                boolean asleep = local.getHour() >= 23 || local.getHour() < 6;
                assertTrue(!away && !asleep, house + ": " + set + " runs alone at " + local + " until " + until);
            }
        }
        assertTrue(hot > 0, "the malt is cured: " + plan);
    }

    /** The next setting of the kiln's heat, or its end. */
    private static OffsetDateTime until(JsonNode acts, int set) {
        for (int i = set + 1; i < acts.size(); i++) {
            String id = acts.get(i).get("id").stringValue();
            boolean setting = id.startsWith("kiln.") && (acts.get(i).has("setC") || id.equals("kiln.off"));
            if (setting) return OffsetDateTime.parse(acts.get(i).get("startsAt").stringValue());
        }
        throw new AssertionError("no end of the heat: " + acts);
    }
}
