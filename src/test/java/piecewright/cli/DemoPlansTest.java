package piecewright.cli;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import piecewright.calendar.IcsChecks;
import piecewright.calendar.ReadBack;
import piecewright.house.House;
import piecewright.plan.Availability;
import piecewright.store.HouseFile;
import piecewright.store.StoreException;
import piecewright.text.OnePage;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** Five wishes of four households from wish to calendar, with the real planner. */
class DemoPlansTest {
    @TempDir
    private Path folder;

    private enum Demo {
        GARAGE("pale", "two-row-barley", "cool-garage", "--malt", "4 kg", "--ready-by", "2027-05-01"),
        FARM("wheat-pale", "winter-wheat", "farmhouse", "--malt", "6 kg", "--ready-by", "2027-04-10"),
        FLAT("pale-ale", "water-sensitive-barley", "warm-flat", "--grain", "6 lb", "--start", "2027-10-08"),
        TERRACE("amber", "two-row-barley", "terrace-kitchen", "--malt", "4 kg", "--ready-by", "2027-05-01"),
        FLAT_STEWING("crystal-light", "two-row-barley", "warm-flat", "--malt", "2.5 kg", "--start", "2027-10-08");

        private final List<String> wish;
        private final Path house;

        Demo(String style, String lot, String house, String... more) {
            this.wish = Run.plan(style, lot, house, more);
            this.house = Path.of("demo-data", "houses", house + ".json");
        }

        House house() throws StoreException {
            return HouseFile.read(house);
        }
    }

    @Test
    void aHeaterThatRampsItselfIsTaughtWhatToDoAndWhen() {
        String page = run(Demo.FARM).out().replaceAll("\\s+", " ");
        assertTrue(page.contains("can change its heat by itself: set it to go to "), page);
        assertFalse(run(Demo.GARAGE).out().contains("change its heat by itself"));
    }

    @Test
    void whatEachActCostsAndWhyTheNextBestPlanLostIsSaidOnThePageAndInTheDocument() {
        String page = run(Demo.GARAGE, "--explain").out();
        assertTrue(page.contains("\nWHAT THIS PLAN COSTS, STEP BY STEP\n"), page);
        assertTrue(page.contains("Next best: begin on "), page);

        JsonNode plan = JsonMapper.shared()
                .readTree(run(Demo.GARAGE, "--explain", "--json").out())
                .get("plan");
        double sum = 0;
        for (JsonNode act : plan.get("costs").get("acts"))
            for (JsonNode rule : act.get("rules")) sum += rule.doubleValue();
        assertEquals(plan.get("costs").get("minutes").doubleValue(), sum, 0.5);
        double more = 0;
        for (JsonNode rule : plan.get("costs").get("runnerUp").get("payingMoreFor")) more += rule.doubleValue();
        double next = plan.get("costs").get("runnerUp").get("minutes").doubleValue();
        assertEquals(next - plan.get("costs").get("minutes").doubleValue(), more, 2);
    }

    @Test
    void howSureIsSaidOnThePageAndInTheDocument() {
        String page = run(Demo.GARAGE, Run.NOW, "--sure", "--ways", "40").out();
        assertTrue(page.contains("\nHOW SURE THIS PLAN IS\n") && page.contains("Eight in ten: "), page);
        JsonNode plan = new JsonMapper()
                .readTree(run(Demo.GARAGE, Run.NOW, "--sure", "--ways", "40", "--json")
                        .out())
                .get("plan");
        assertEquals(40, plan.get("sureness").get("members").intValue());
        for (JsonNode act : plan.get("acts")) {
            JsonNode band = act.get("expect").get("massKgBand");
            assertTrue(
                    band.get(0).doubleValue() < band.get(2).doubleValue(),
                    act.get("id").stringValue());
        }
    }

    private static Run run(Demo demo, Instant now, String... more) {
        List<String> arguments = new ArrayList<>(demo.wish);
        arguments.addAll(List.of(more));
        return Run.of(Run.REAL, now, arguments);
    }

    private static Run run(Demo demo, String... more) {
        return run(demo, Run.NOW, more);
    }

    private static JsonNode plan(Demo demo) {
        return JsonMapper.builder().build().readTree(run(demo, "--json").out()).get("plan");
    }

    private static Instant instant(JsonNode node, String key) {
        return OffsetDateTime.parse(node.get(key).stringValue()).toInstant();
    }

    @ParameterizedTest
    @EnumSource
    void thePageShowsEveryActWithItsWeightWindowAndReason(Demo demo) {
        Run run = run(demo);
        assertEquals(0, run.code(), run.out() + run.err());
        assertEquals("", run.err());
        for (JsonNode act : plan(demo).get("acts")) {
            String row = "(?m)^  [0-9]{2}:[0-9]{2}.* " + act.get("minutes").intValue() + "  "
                    + Pattern.quote(act.get("title").stringValue()) + " .* "
                    + Math.round(act.get("expect").get("massKg").doubleValue() * 1000) + " g .* %  .*°C";
            assertTrue(Pattern.compile(row).matcher(run.out()).find(), row);
        }
        run.out().lines().forEach(line -> assertTrue(line.length() <= 110, line));
        assertTrue(run.out().contains("oo late after"));
        assertTrue(run.out().contains("WHERE THE WEIGHTS COME FROM"));
    }

    @ParameterizedTest
    @EnumSource
    void withoutMoreTheWholePlanIsOnOnePageWithChanceAndWorstTroubleOnTop(Demo demo) {
        for (String units : List.of("metric", "us")) {
            List<String> asked = new ArrayList<>(demo.wish);
            asked.remove("--full");
            asked.addAll(List.of("--units", units));
            Run run = Run.of(Run.REAL, Run.NOW, asked);
            assertEquals(0, run.code(), run.out() + run.err());
            List<String> lines = run.out().lines().toList();
            assertTrue(lines.size() <= OnePage.MOST_LINES, run.out());
            lines.forEach(line -> assertTrue(line.length() <= 120, line));
            String top = String.join(" ", lines.subList(0, 5));
            assertTrue(top.matches(".*Chance that all goes well: [0-9]+ %.*Most likely problem: .*"), top);
            for (JsonNode act : plan(demo).get("acts")) {
                String title = act.get("title").stringValue();
                boolean repeats = title.matches("(Turn|Look at|Stir).*");
                assertTrue(repeats || run.out().contains("  " + title + " "), title + run.out());
            }
            assertFalse(units.equals("us") && run.out().matches("(?s).*( kg|°C| cm| g)\\b.*"), run.out());
        }
    }

    @ParameterizedTest
    @EnumSource
    void aPageInPoundsAndFahrenheitHoldsNoOtherUnits(Demo demo) {
        String page = run(demo, "--units", "us").out();
        var metric = Pattern.compile(".*[0-9] ?(°C|kg|g|cm|mL|L|litres?|m³/h|m²)\\b.*")
                .matcher(page);
        assertFalse(metric.find(), () -> metric.group());
    }

    @ParameterizedTest
    @EnumSource
    void cautionsAreSpelledOutOnce(Demo demo) {
        String page = run(demo).out().replaceAll("\\s+", " ");
        Set<String> cautions = new HashSet<>();
        plan(demo).get("acts").forEach(act -> act.get("cautions").forEach(text -> cautions.add(text.stringValue())));
        assertFalse(cautions.isEmpty());
        for (String caution : cautions) {
            int first = page.indexOf(caution);
            assertTrue(first >= 0, caution);
            assertEquals(-1, page.indexOf(caution, first + 1), caution);
        }
    }

    @ParameterizedTest
    @EnumSource
    void everyActLiesInSomebodysHoursAndInItsWindow(Demo demo) throws StoreException {
        House house = demo.house();
        JsonNode plan = plan(demo);
        Instant from = instant(plan, "startsAt").minus(Duration.ofDays(1));
        Availability hours = Availability.of(house, from, instant(plan, "readyAt"));
        int nights = 0;
        for (JsonNode act : plan.get("acts")) {
            Instant at = instant(act, "startsAt");
            Instant ends = at.plus(Duration.ofMinutes(act.get("minutes").intValue()));
            Optional<Instant> until = hours.workableUntil(at);
            if (until.isEmpty()) {
                nights++;
                assertTrue(hours.nightUntil(at).isPresent(), () -> "nobody there: " + act);
            } else {
                assertFalse(ends.isAfter(until.get()), () -> "not done in time: " + act);
            }
            assertFalse(at.isBefore(instant(act, "earliest")), () -> "too early: " + act);
            assertFalse(at.isAfter(instant(act, "hardLatest")), () -> "too late: " + act);
            double massKg = act.get("expect").get("massKg").doubleValue();
            double moisture = act.get("expect").get("moistureWetBasisFraction").doubleValue();
            assertTrue(massKg > 0.5 && moisture > 0.005 && moisture < 0.55, act::toString);
        }
        assertTrue(nights <= house.nights().most(), nights + " night steps");
    }

    @ParameterizedTest
    @EnumSource
    void theCalendarSaysWhatTheJsonSays(Demo demo) throws IOException {
        Path calendar = folder.resolve("plan.ics");
        Path batch = folder.resolve("batch.json");
        assertEquals(
                0,
                run(demo, "--calendar", calendar.toString(), "--into", batch.toString())
                        .code());
        byte[] file = Files.readAllBytes(calendar);
        assertEquals(List.of(), new IcsChecks().faultsOf(file));
        assertEquals(List.of(), ReadBack.faultsByIcal4j(file));
        assertEquals(List.of(), ReadBack.faultsByBiweekly(file));
        assertEquals(ReadBack.byIcal4j(file), ReadBack.byBiweekly(file));

        JsonNode uids =
                JsonMapper.builder().build().readTree(Files.readString(batch)).get("calendarUids");
        Map<String, String> wanted = new HashMap<>();
        for (JsonNode act : plan(demo).get("acts")) {
            Instant at = instant(act, "startsAt");
            // no calendar entry is shorter than a quarter of an hour
            int minutes = Math.max(15, act.get("minutes").intValue());
            wanted.put(
                    uids.get(act.get("id").stringValue()).stringValue(),
                    at + " " + at.plus(Duration.ofMinutes(minutes)));
        }
        Map<String, String> read = ReadBack.byIcal4j(file);
        wanted.forEach((uid, times) -> assertEquals(times, read.get(uid)));
        JsonNode plan = plan(demo);
        Set<String> inCalendar = new HashSet<>();
        String before = "";
        for (JsonNode phase : plan.get("phases")) {
            String kind = phase.get("kind").stringValue();
            boolean goesOn = kind.equals("resting") && before.equals(kind); // the rest is one entry
            if (!goesOn) inCalendar.add(phase.get("id").stringValue());
            before = kind;
        }
        assertEquals(wanted.size() + inCalendar.size() + plan.get("checks").size(), read.size());
    }

    @ParameterizedTest
    @EnumSource
    void aSecondExportHasTheSameBytes(Demo demo) throws IOException {
        Path calendar = folder.resolve("plan.ics");
        assertTrue(run(demo, "--calendar", calendar.toString()).out().contains(": 0 moved, 0 dropped, "));
        byte[] first = Files.readAllBytes(calendar);
        Run second = run(demo, Run.NOW.plus(Duration.ofHours(5)), "--calendar", calendar.toString());
        assertTrue(second.out().contains("nothing changed"), second.out());
        assertArrayEquals(first, Files.readAllBytes(calendar));
    }
}
