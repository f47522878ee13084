package piecewright.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import biweekly.Biweekly;
import biweekly.component.VEvent;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.ObjectMapper;

/**
 * While heat is on that may not be left, somebody's calendar is busy: heaters and their safety are read from the house's
 * file, set-points from the plan's document, busy time from the calendar file by another library.
 */
class AttendedHeatBusyTest {
    /** Common practice, no source: over 60 °C nobody leaves a heater without an independent cut-out. */
    private static final double HOT_C = 60;

    @TempDir
    private Path folder;

    private record Stretch(Instant from, Instant until) {}

    @ParameterizedTest
    @CsvSource({
        "pale, two-row-barley, cool-garage, true",
        "pale, two-row-barley, cool-garage, false",
        "pale-ale, two-row-barley, warm-flat, true",
        "amber, two-row-barley, terrace-kitchen, true",
    })
    void somebodyIsBusyWhileHeatMayNotBeLeft(String style, String lot, String house, boolean holds) throws IOException {
        Path houseFile = house(house, holds);
        Path calendar = folder.resolve("c.ics");
        List<String> words = new ArrayList<>(Run.plan(style, lot, house, "--malt", "2 kg", "--ready-by", "2027-05-20"));
        words.set(words.indexOf("--house") + 1, houseFile.toString());
        words.addAll(List.of("--skip-checks", "--json", "--no-phases", "--calendar", calendar.toString()));
        Run run = Run.of(Run.REAL, Run.NOW, words);
        assertEquals(0, run.code(), run.out() + run.err());
        JsonNode plan = new ObjectMapper().readTree(run.out()).get("plan");
        List<Stretch> hot = hot(plan, new ObjectMapper().readTree(Files.readString(houseFile)));
        assertFalse(hot.isEmpty(), "nothing was to be watched, so nothing was checked");
        List<Stretch> busy = busy(Files.readString(calendar));
        for (Stretch heat : hot) assertTrue(covered(heat, busy), heat + " is not inside " + busy);
    }

    private Path house(String name, boolean holds) throws IOException {
        Path house = folder.resolve(name + ".json");
        String text = Files.readString(Path.of("demo-data/houses", name + ".json"));
        Files.writeString(house, holds ? text : text.replace("\"holdsSetPoint\": true", "\"holdsSetPoint\": false"));
        for (String csv : List.of("cool-garage-2027-03.csv", "warm-flat-2027-10.csv")) {
            Files.copy(Path.of("demo-data/houses", csv), folder.resolve(csv));
        }
        return house;
    }

    /** From each act that sets heat that may not be left to the next that sets any, or takes the malt off. */
    private static List<Stretch> hot(JsonNode plan, JsonNode house) {
        List<Stretch> hot = new ArrayList<>();
        Optional<Instant> since = Optional.empty();
        for (JsonNode act : plan.get("acts")) {
            Instant at = at(act);
            switch (act.get("kind").stringValue()) {
                case "load", "raise", "cure", "off" -> {
                    since.ifPresent(from -> hot.add(new Stretch(from, at)));
                    since = mayNotBeLeft(act, house) ? Optional.of(at) : Optional.empty();
                }
                case "roast", "stew" ->
                    hot.add(new Stretch(
                            at, at.plusSeconds(60 * act.get("minutes").asLong())));
                default -> {}
            }
        }
        return hot;
    }

    private static boolean mayNotBeLeft(JsonNode act, JsonNode house) {
        if (!act.has("setC")) return false;
        for (JsonNode heater : house.get("kit").get("heaters")) {
            if (!heater.get("name").equals(act.get("place"))) continue;
            boolean hot = act.get("setC").asDouble() > HOT_C;
            return !heater.get("holdsSetPoint").asBoolean()
                    || hot && !heater.get("safeUnattended").asBoolean();
        }
        throw new AssertionError("no such heater: " + act.get("place"));
    }

    private static List<Stretch> busy(String calendar) {
        return Biweekly.parse(calendar).first().getEvents().stream()
                .filter(event -> !event.getTransparency().isTransparent())
                .map(AttendedHeatBusyTest::stretch)
                .sorted(Comparator.comparing(Stretch::from))
                .toList();
    }

    private static Stretch stretch(VEvent event) {
        return new Stretch(
                event.getDateStart().getValue().toInstant(),
                event.getDateEnd().getValue().toInstant());
    }

    private static boolean covered(Stretch heat, List<Stretch> busy) {
        Instant reached = heat.from();
        for (Stretch one : busy) {
            if (!one.from().isAfter(reached) && one.until().isAfter(reached)) reached = one.until();
        }
        return !reached.isBefore(heat.until());
    }

    private static Instant at(JsonNode act) {
        return OffsetDateTime.parse(act.get("startsAt").stringValue()).toInstant();
    }

    /** The entry that begins it says until when to stay, and so does the list of what is to do, page and document. */
    @Test
    void whoeverBeginsItIsToldUntilWhenToStay() throws IOException {
        Path batch = folder.resolve("b.json");
        List<String> words = Run.plan(
                "pale",
                "two-row-barley",
                "cool-garage",
                "--malt",
                "2 kg",
                "--ready-by",
                "2027-05-20",
                "--skip-checks",
                "--into",
                batch.toString(),
                "--calendar",
                folder.resolve("c.ics").toString());
        assertEquals(0, Run.of(Run.REAL, Run.NOW, words).code());
        VEvent cure = Biweekly.parse(Files.readString(folder.resolve("c.ics"))).first().getEvents().stream()
                .filter(event -> "kiln.cure"
                        .equals(event.getExperimentalProperty("X-PIECEWRIGHT-ACT")
                                .getValue()))
                .findFirst()
                .orElseThrow();
        assertTrue(cure.getDescription().getValue().contains("Stay near until "), cure.toString());
        Run page = Run.of(Run.NEVER, "agenda", batch.toString(), "--days", "60", "--now", "2027-04-01T08:00");
        assertTrue(page.out().lines().anyMatch(line -> line.contains("Start curing, stay until ")), page.out());
        Run json = Run.of(Run.NEVER, "agenda", batch.toString(), "--days", "60", "--now", "2027-04-01T08:00", "--json");
        for (JsonNode act : new ObjectMapper().readTree(json.out()).get("acts")) {
            boolean cures = act.get("id").stringValue().equals("kiln.cure");
            if (cures) assertTrue(act.has("stayUntil"), act.toString());
        }
    }
}
